package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of a breaking capacity. */
final class BreakingFindings {
    private static final double LARGE_BANK_CRANKING = 2200;
    private static final double TEN_KILOAMPERES = 10_000;

    private BreakingFindings() {}

    static void current(WorkingBuilder working, BreakingDevice device, Quantity prospective) {
        working.finding(Comparison.of("The highest prospective current", prospective)
                .atMost(device.capacity(), "what " + device.words() + " can break", device.source())
                .settledBy(device.missingCapacity())
                .otherwise(
                        Verdict.STOP,
                        "Take a device of greater breaking capacity here. One before it does not do its work for it, unless the data sheets "
                                + "of both say so.")
                .finding());
    }

    static void voltage(WorkingBuilder working, BreakingDevice device, Quantity system) {
        Row rule = PublishedTables.no33Cfr183Rules().row("protection-voltage");
        working.finding(Comparison.of("The highest voltage of the circuit", system)
                .atMost(device.voltage(), "the direct voltage that " + device.words() + " holds for", rule.source())
                .restingOn(device.source())
                .exact()
                .settledBy(device.missingVoltage())
                .otherwise(Verdict.STOP, "Take a device made for this direct voltage.")
                .finding());
    }

    static void boatRule(WorkingBuilder working, BreakingDevice device, Quantity wanted, Row row, boolean main) {
        working.finding(Comparison.of("The breaking capacity of " + device.words(), device.capacity())
                .atLeast(wanted, "what ABYC E-11, older edition, asks for in a " + (main ? "main" : "branch") + " device", row.source())
                .restingOn(device.source())
                .exact()
                .settledBy(device.missingCapacity())
                .otherwise(Verdict.STOP, "Where this rule set applies, take a device of greater breaking capacity.")
                .finding());
    }

    /** A large bank is held against the figure of its maker. */
    static void bank(WorkingBuilder working, Quantity cranking, Quantity prospective) {
        if (isLargeBank(cranking)) {
            Row row = PublishedTables.mainProtectionInterrupting().row("large-bank");
            String asks = isAboveTenKiloamperes(prospective)
                    ? row.quantity("main-device").text() + " at 125 V"
                    : "at least the short-circuit current stated by the maker";
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "A bank of more than 2200 A cold-cranking: the rule asks for " + asks
                            + " in its main device. You entered a prospective current of "
                            + prospective.text() + ".",
                    prospective, null, row.source(), "Ask the battery's maker for its short-circuit current, and add it up for batteries "
                            + "in parallel."));
        }
    }

    static boolean isLargeBank(Quantity cranking) {
        return cranking.in(Units.AMPERE).value() > LARGE_BANK_CRANKING;
    }

    static boolean isAboveTenKiloamperes(Quantity prospective) {
        return prospective.value() > TEN_KILOAMPERES;
    }
}
