package loomwright.protection;

import java.util.List;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Field;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * The inside resistance of the battery as a range.
 *
 * @param low its least, or null if nothing says how low it may be
 * @param high its greatest
 * @param source where the range comes from
 */
public record FaultBattery(Quantity low, Quantity high, Source source) {
    /** The fields that say where the range comes from. */
    public static List<Field> fields() {
        return List.of(
                BatteryKind.field(), FaultFields.BATTERY_VOLTAGE, FaultFields.SHORT_CIRCUIT_CURRENT, FaultFields.RESISTANCE_LOW,
                FaultFields.RESISTANCE_HIGH, FaultFields.IN_PARALLEL);
    }

    /**
     * The range entered in {@link #fields}, without its steps.
     *
     * @throws Refusal if a figure is missing
     */
    public static FaultBattery of(Entries entries) {
        return of(entries, WorkingBuilder.aside(FaultFields.DESCRIPTION));
    }

    static FaultBattery of(Entries entries, WorkingBuilder working) {
        FaultBattery one = one(entries, working, BatteryKind.of(entries));
        Quantity count = entries.quantity("batteries-in-parallel");
        if (count.base() == 1) {
            return one;
        }
        boolean single = one.low != null && one.low.base() == one.high.base();
        Quantity low = one.low == null ? null : parallel(working, one.low, count);
        return new FaultBattery(low, single ? low : parallel(working, one.high, count), one.source);
    }

    private static Quantity parallel(WorkingBuilder working, Quantity one, Quantity count) {
        return working.compute(
                "Divide it among the batteries in parallel", FaultFormulas.PARALLEL,
                Values.of(FaultSymbols.ONE_BATTERY, one).with(FaultSymbols.IN_PARALLEL, count), Units.MILLIOHM,
                "Each battery adds its own short-circuit current.",
                PublishedTables.mainProtectionInterrupting().row("large-bank").source());
    }

    private static FaultBattery one(Entries entries, WorkingBuilder working, BatteryKind kind) {
        return switch (kind) {
            case SHORT_CIRCUIT_CURRENT -> fromMaker(entries, working);
            case GIVEN -> entered(entries, working);
            default -> printed(entries, working, kind);
        };
    }

    private static FaultBattery fromMaker(Entries entries, WorkingBuilder working) {
        Quantity current = working.convert(
                "Turn the short-circuit current into amperes", entries.required(FaultFields.SHORT_CIRCUIT_CURRENT), Units.AMPERE,
                "Ohms are volts by amperes.");
        Quantity resistance = working.compute(
                "Find the inside resistance behind it", FaultFormulas.FROM_MAKER,
                Values.of(FaultSymbols.AT_REST, entries.quantity("battery-voltage")).with(FaultSymbols.MAKERS_CURRENT, current),
                Units.MILLIOHM,
                "Into a short circuit the battery is held back by its own resistance only.");
        return new FaultBattery(resistance, resistance, Source.of(Document.COMPUTED, "from the figure of the battery's maker"));
    }

    private static FaultBattery entered(Entries entries, WorkingBuilder working) {
        Quantity low = milliohms(working, entries.required(FaultFields.RESISTANCE_LOW));
        Quantity high = milliohms(working, entries.required(FaultFields.RESISTANCE_HIGH));
        if (low.base() > high.base()) {
            throw new Refusal(
                    "battery-resistance-low",
                    "Least inside resistance of one battery is above the greatest, " + high.text() + ": enter the smaller of the two here");
        }
        return new FaultBattery(low, high, Source.of(Document.COMPUTED, "from the resistances entered"));
    }

    private static Quantity milliohms(WorkingBuilder working, Quantity entry) {
        return working.convert("Turn the resistance into milliohms", entry, Units.MILLIOHM, "All then stand in one unit.");
    }

    /** The range in print for the kind, brought to the capacity entered; that step is our own, so it can stop a design and never pass it. */
    private static FaultBattery printed(Entries entries, WorkingBuilder working, BatteryKind kind) {
        FaultBattery range = printed(working, kind);
        Quantity capacity = entries.quantity("capacity");
        if (capacity == null || kind.capacity() == null || capacity.base() == kind.capacity().base()) {
            return range;
        }
        String locus = "scaled from " + kind.capacity().text() + " to " + capacity.text() + " in proportion";
        Source scaled = new Source(range.source.document(), locus, Standing.INVENTED);
        return new FaultBattery(scaled(working, range.low, kind, capacity, scaled), scaled(working, range.high, kind, capacity, scaled), scaled);
    }

    private static Quantity scaled(WorkingBuilder working, Quantity printed, BatteryKind kind, Quantity capacity, Source source) {
        return working.compute(
                "Bring it to the capacity of this battery", FaultFormulas.SCALED,
                Values.of(FaultSymbols.PRINTED, printed)
                        .with(FaultSymbols.PRINTED_CAPACITY, kind.capacity())
                        .with(FaultSymbols.CAPACITY, capacity.in(Units.AMPERE_HOUR)),
                Units.MILLIOHM, "Taken in proportion, as with batteries in parallel. Nobody printed it, so it can stop a design and never pass it.",
                source);
    }

    private static FaultBattery printed(WorkingBuilder working, BatteryKind kind) {
        Row row = kind.row();
        boolean range = row.has("value-to");
        Quantity low = range ? read(working, row, "value", "least", "The less it is, the more current flows.") : null;
        Quantity high = read(
                working, row, range ? "value-to" : "value", "greatest",
                "Age, cold and a low charge raise it: this end gives the lowest current.");
        return new FaultBattery(low, high, row.source());
    }

    private static Quantity read(WorkingBuilder working, Row row, String column, String end, String why) {
        Symbol symbol = FaultSymbols.ONE_BATTERY;
        return working.lookUp("Read the " + end + " inside resistance of the battery", symbol, row, column, Units.MILLIOHM, why);
    }
}
