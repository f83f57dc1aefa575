package loomwright.conductor;

import java.util.Locale;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Entries;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * One stretch of a circuit, out and back, for calculators of any subject: the fields that ask for it and the steps to its resistance.
 *
 * <p>Several stretches of one calculator share the kind of conductor and its temperature; each has a size and a route length.
 */
public final class ConductorRun {
    /** Resistance of one metre, as {@link #perMetre} gives it. */
    public static final Symbol PER_METRE = Symbols.PER_METRE;

    /** Route length, one way. */
    public static final Symbol ROUTE_LENGTH = Symbols.ROUTE_LENGTH;

    /** Length out and back. */
    public static final Symbol CIRCUIT_LENGTH = Symbols.CIRCUIT_LENGTH;

    /** Resistance out and back. */
    public static final Symbol CIRCUIT_RESISTANCE = Symbols.CIRCUIT_RESISTANCE;

    /** Resistance of the length out and back. */
    public static final Formula RESISTANCE = DropFormulas.CIRCUIT_RESISTANCE;

    private final QuantityField size;
    private final QuantityField routeLength;

    private ConductorRun(QuantityField size, QuantityField routeLength) {
        this.size = size;
        this.routeLength = routeLength;
    }

    /** The only stretch of a calculator; its fields are {@code size} and {@code route-length}. */
    public static ConductorRun only() {
        return new ConductorRun(ConductorFields.size(), DropFields.ROUTE_LENGTH);
    }

    /**
     * A stretch that may be left out, by leaving both its fields empty.
     *
     * @param keyPrefix goes before the keys of its fields, such as {@code feed-}
     * @param name goes before their labels, such as {@code Feed}
     */
    public static ConductorRun optional(String keyPrefix, String name) {
        return new ConductorRun(
                named(ConductorFields.size(), keyPrefix, name).optional(), named(DropFields.ROUTE_LENGTH, keyPrefix, name).optional());
    }

    private static QuantityField named(QuantityField field, String keyPrefix, String name) {
        String label = name + ": " + field.label().substring(0, 1).toLowerCase(Locale.ROOT) + field.label().substring(1);
        return new QuantityField(keyPrefix + field.key(), label, field.help(), field.units(), field.limits(), field.usual());
    }

    /** The field {@code conductor}, which asks for the kind of conductor. */
    public static ChoiceField conductorField() {
        return ConductorKind.field();
    }

    /** The field {@code temperature}, usually 20 °C. */
    public static QuantityField temperatureField() {
        return ConductorFields.temperature();
    }

    /** The field that asks for the size. */
    public QuantityField sizeField() {
        return size;
    }

    /** The field that asks for the length one way. */
    public QuantityField routeLengthField() {
        return routeLength;
    }

    /**
     * Whether the stretch is there.
     *
     * @throws Refusal if only one of its two fields was filled
     */
    public boolean isEntered(Entries entries) {
        boolean sized = entries.has(size.key());
        if (sized != entries.has(routeLength.key())) {
            QuantityField missing = sized ? routeLength : size;
            QuantityField there = sized ? size : routeLength;
            throw new Refusal(
                    missing.key(), missing.label() + " is empty although " + there.label() + " is not: fill both, or empty both");
        }
        return sized;
    }

    /** Works out the resistance of one metre at the temperature entered, with its steps, in mΩ/m. */
    public Quantity perMetre(Entries entries, WorkingBuilder working) {
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        Quantity perMetre = perMetre(entries, working, kind, entries.quantity("temperature"));
        ConductorFindings.sayIfFromMemory(working, kind, entries.quantity(size.key()), perMetre);
        return perMetre;
    }

    /**
     * Works out the least resistance of one metre to be reckoned with, with its steps, in mΩ/m: copper of the full area of its size, at
     * 20 °C or as cold as was entered. The tables of the standards give the highest resistance.
     */
    public Quantity leastPerMetre(Entries entries, WorkingBuilder working) {
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        Quantity cold = Quantity.of(Math.min(20, entries.quantity("temperature").in(Units.CELSIUS).value()), Units.CELSIUS);
        return perMetre(entries, working, kind.givesArea() ? kind : ConductorKind.COPPER_BY_AREA, cold);
    }

    private Quantity perMetre(Entries entries, WorkingBuilder working, ConductorKind kind, Quantity temperature) {
        Quantity wanted = entries.required(size);
        try {
            return ResistancePerMetre.at(working, kind, wanted, temperature);
        } catch (Refusal refusal) {
            throw new Refusal(size.key(), refusal.getMessage());
        }
    }

    /** Works out the resistance out and back, with its steps, in mΩ. */
    public Quantity resistance(Entries entries, WorkingBuilder working, Quantity perMetre) {
        return resistance(working, perMetre, outAndBack(entries, working));
    }

    /** Works out the length out and back, with its steps, in metres. */
    public Quantity outAndBack(Entries entries, WorkingBuilder working) {
        Quantity oneWay = working.convert(
                "Turn the length into metres", entries.required(routeLength), Units.METRE, "The resistance is known for one metre.");
        return working.compute(
                "Count the way out and the way back", DropFormulas.CIRCUIT_LENGTH, Values.of(ROUTE_LENGTH, oneWay), Units.METRE,
                "The current comes back through a second conductor.");
    }

    /** Works out the resistance of a length, with its step, in mΩ. */
    public static Quantity resistance(WorkingBuilder working, Quantity perMetre, Quantity length) {
        return working.compute(
                "Multiply by the length", RESISTANCE, Values.of(PER_METRE, perMetre).with(CIRCUIT_LENGTH, length), Units.MILLIOHM,
                "Each metre adds the same resistance again.");
    }
}
