package loomwright.conductor;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.WorkingBuilder;

/**
 * Resistance of a length of conductor.
 *
 * <p>R = r × L, with r from the table of the kind of conductor, brought to the working temperature by
 * r = r_t × (234.5 °C + θ)/(234.5 °C + θ_t).
 *
 * @source table of the kind chosen; temperature rule FAA AC 43.13-1B, par. 11-66
 */
public final class ConductorResistance implements Calculator {
    static final Formula RESISTANCE = new Formula(Symbols.RESISTANCE, Symbols.PER_METRE.times(Symbols.LENGTH));

    private static final Formula TEMPERATURE_UPSIDE_DOWN = new Formula(
            Symbols.RESISTANCE,
            Symbols.PER_METRE_TABLE
                    .times(Expression.fixed(Quantity.of(234.5, Units.CELSIUS)).plus(Symbols.TABLE_TEMPERATURE)
                            .over(Expression.fixed(Quantity.of(234.5, Units.CELSIUS)).plus(Symbols.TEMPERATURE)))
                    .times(Symbols.LENGTH));

    private static final Formula OUT_AND_BACK =
            new Formula(Symbols.RESISTANCE, Expression.number(2).times(Symbols.PER_METRE).times(Symbols.LENGTH));

    private static final QuantityField LENGTH = QuantityField.of(
            "length",
            "Length of conductor",
            "The length of one conductor. A circuit out and back needs two.",
            0.01, 1000, Units.METRE, Units.FEET, Units.CENTIMETRE);

    private static final Description DESCRIPTION = new Description(
            "conductor-resistance",
            "Resistance of a conductor",
            "What resistance does this length of cable have?",
            List.of(
                    "Copper. The tables of the standards give the highest resistance allowed, so a sound cable has a little less.",
                    "One conductor only, without joints or terminals.",
                    "No reading between the rows of a table."),
            List.of(ConductorKind.field(), ConductorFields.size(), LENGTH, ConductorFields.temperature()),
            List.of(
                    new Output("resistance-per-metre-20", "Resistance of one metre at 20 °C", Units.MILLIOHM_PER_METRE),
                    new Output("resistance-per-metre", "Resistance of one metre at its temperature", Units.MILLIOHM_PER_METRE),
                    new Output("resistance", "Resistance of the whole length", Units.OHM)),
            List.of(
                    new NamedFormula("resistance", RESISTANCE),
                    new NamedFormula("by-area", ResistancePerMetre.BY_AREA),
                    new NamedFormula("at-temperature", ResistancePerMetre.AT_TEMPERATURE)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        ConductorKind kind = ConductorKind.of(entries.option("conductor"));
        Quantity size = entries.quantity("size");
        Quantity temperature = entries.quantity("temperature");
        Quantity length = working.convert(
                "Turn the length into metres", entries.quantity("length"), Units.METRE, "The table is per metre.");

        Quantity inTable = ResistancePerMetre.atTableTemperature(working, kind, size);
        Quantity at20 = at20(inTable, kind);
        Quantity perMetre = ResistancePerMetre.warmed(working, inTable, kind.tableTemperature(), temperature);
        Values values = Values.of(Symbols.PER_METRE, perMetre).with(Symbols.LENGTH, length);
        Quantity resistance = working.compute(
                "Multiply by the length", RESISTANCE, values, Units.OHM, "Each metre adds the same resistance again.");

        working.result("resistance-per-metre-20", at20);
        working.result("resistance-per-metre", perMetre);
        working.result("resistance", resistance);
        ConductorFindings.sayIfFromMemory(working, kind, size, perMetre);
        addSlips(working, kind, inTable, temperature, entries.quantity("length"), values);
        working.next(
                "voltage-drop",
                "What voltage does this lose at my current?",
                "conductor", entries.choice("conductor"), "size", size.text(), "temperature", temperature.text());
    }

    private static Quantity at20(Quantity inTable, ConductorKind kind) {
        Values values = Values.of(Symbols.PER_METRE_TABLE, inTable)
                .with(Symbols.TEMPERATURE, Quantity.of(20, Units.CELSIUS))
                .with(Symbols.TABLE_TEMPERATURE, kind.tableTemperature());
        return ResistancePerMetre.AT_TEMPERATURE.value(values, Units.MILLIOHM_PER_METRE);
    }

    private static void addSlips(
            WorkingBuilder working, ConductorKind kind, Quantity inTable, Quantity temperature, Quantity entered, Values values) {
        working.slip(
                "counted-out-and-back", "resistance", "The length counted twice",
                "This asks for one conductor; out and back belongs to the voltage drop of a circuit.", OUT_AND_BACK, values);
        boolean feet = entered.unit() == Units.FEET;
        Quantity misread = Quantity.of(entered.value(), feet ? Units.METRE : Units.FEET).in(Units.METRE);
        working.slip(
                "feet-for-metres", "resistance", feet ? "Feet taken as metres" : "Metres taken as feet",
                "A foot is 0.3048 m, so the two differ by more than three times.", RESISTANCE, values.with(Symbols.LENGTH, misread));
        Values tabled = Values.of(Symbols.PER_METRE_TABLE, inTable)
                .with(Symbols.TABLE_TEMPERATURE, kind.tableTemperature())
                .with(Symbols.TEMPERATURE, temperature)
                .with(Symbols.LENGTH, values.of(Symbols.LENGTH));
        working.slip(
                "temperature-upside-down", "resistance", "The correction for temperature the wrong way round",
                "Copper has more resistance when it is warmer, so the larger sum belongs on top.", TEMPERATURE_UPSIDE_DOWN, tabled);
        working.slip(
                "temperature-left-out", "resistance", "The correction for temperature left out",
                "The table holds at its own temperature only.", RESISTANCE, values.with(Symbols.PER_METRE, inTable));
    }
}
