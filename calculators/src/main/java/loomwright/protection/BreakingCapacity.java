package loomwright.protection;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.QuantityField;
import loomwright.worked.WorkingBuilder;

/**
 * Whether a device can break the highest prospective current at its place.
 *
 * <p>Breaking capacity ≥ highest prospective current, at a voltage no lower than that of the circuit; and, for a boat, the breaking
 * capacity that ABYC E-11 Table V.A asks for by cold-cranking current. Direct current.
 *
 * @source data sheets in the table fuse-breaking-capacity; ABYC E-11 Table V.A as reproduced; 33 CFR 183.455(d)
 */
public final class BreakingCapacity implements Calculator {
    /** The field that asks up to what direct voltage a device breaks its current. */
    public static QuantityField voltageField() {
        return BreakingFields.RATED_VOLTAGE;
    }

    @Override
    public Description description() {
        return BreakingFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        BreakingDevice device = BreakingDevice.of(entries, working);
        Quantity prospective = working.convert(
                "Turn the prospective current into amperes", entries.quantity("prospective-current"), Units.AMPERE,
                "The breaking capacity is in amperes.");
        Values values = Values.of(BreakingFormulas.PROSPECTIVE, prospective).with(BreakingFormulas.CAPACITY, device.capacity());
        Quantity share = working.compute(
                "See what share of the breaking capacity that is", BreakingFormulas.LOADING, values, Units.PERCENT,
                "It has to stay at 100 % or below.");
        working.result("breaking-capacity", device.capacity());
        working.result("share-percent", share);
        BreakingFindings.current(working, device, prospective);
        BreakingFindings.voltage(working, device, entries.quantity("system-voltage"));
        working.slip(
                "share-turned-over", "share-percent", "Divided the wrong way round", "It is the current that is held against the device.",
                BreakingFormulas.TURNED_OVER, values);
        if (entries.has("cold-cranking-current")) {
            boatRule(entries, working, device, values);
        }
        working.next(
                "short-circuit-heating", "Does the conductor stand it until the device has opened?", "current", prospective.text());
    }

    private static void boatRule(Entries entries, WorkingBuilder working, BreakingDevice device, Values values) {
        Quantity cranking = entries.quantity("cold-cranking-current");
        boolean main = entries.choice("place").equals("main");
        Row row = BreakingRule.row(cranking, values.of(BreakingFormulas.PROSPECTIVE), main);
        Quantity wanted = working.lookUp(
                "Read the breaking capacity that ABYC asks for", BreakingFormulas.WANTED, row, BreakingRule.column(main),
                "The rule takes the cold-cranking current of all batteries as a measure of what they can drive.");
        working.result("wanted-capacity", wanted);
        BreakingFindings.boatRule(working, device, wanted, row, main);
        BreakingFindings.bank(working, cranking, values.of(BreakingFormulas.PROSPECTIVE));
        Values cranked = values.with(BreakingFormulas.CRANKING, cranking.in(Units.AMPERE));
        String words = "Cold-cranking current belongs to a test of starting in the cold; into a short circuit the battery drives more.";
        working.slip(
                "cranking-for-short-circuit", "share-percent", "The cold-cranking current used in place of the prospective current", words,
                BreakingFormulas.CRANKING_SHARE, cranked);
        working.slip(
                "cranking-for-short-circuit", "wanted-capacity", "The cold-cranking current used in place of the breaking capacity wanted", words,
                BreakingFormulas.CRANKING_WANTED, cranked);
        if (row.has(BreakingRule.column(!main))) {
            working.slip(
                    "main-and-branch-swapped", "wanted-capacity",
                    main ? "Read in the column of branch devices" : "Read in the column of main devices",
                    "The first device after the battery meets the whole current, one in a branch meets less.",
                    BreakingFormulas.OTHER_COLUMN,
                    Values.of(BreakingFormulas.CAPACITY, row.quantity(BreakingRule.column(!main))));
        }
    }
}
