package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The checks of a breaking capacity. */
final class BreakingFindings {
    private static final double LARGE_BANK_CRANKING = 2200;
    private static final double TEN_KILOAMPERES = 10_000;
    private static final String FROM_MEMORY = " The device's figure is from memory and decides nothing: look it up in its data sheet.";

    private BreakingFindings() {}

    static void current(WorkingBuilder working, BreakingDevice device, Quantity prospective) {
        boolean within = prospective.base() <= device.capacity().base() * (1 + 1e-9);
        working.finding(new Finding(
                verdict(within, device),
                "The highest prospective current of " + prospective.text() + " is " + (within ? "within" : "above") + " the "
                        + device.capacity().text() + " that " + device.words() + " can break.",
                prospective, device.capacity(), device.source(),
                remedy(within, device, "Take a device of greater breaking capacity here, or put one before it.")));
    }

    static void voltage(WorkingBuilder working, BreakingDevice device, Quantity system) {
        boolean within = system.base() <= device.voltage().base() * (1 + 1e-9);
        Row rule = PublishedTables.no33Cfr183Rules().row("protection-voltage");
        Source source = device.isFromMemory() ? device.source() : rule.source();
        working.finding(new Finding(
                verdict(within, device),
                "The circuit reaches " + system.text() + ", " + (within ? "within" : "above") + " the " + device.voltage().text()
                        + " that the device holds for.",
                system, device.voltage(), source, remedy(within, device, "Take a device made for this direct voltage.")));
    }

    static void boatRule(WorkingBuilder working, BreakingDevice device, Quantity wanted, Row row, boolean main) {
        boolean enough = device.capacity().base() >= wanted.base() * (1 - 1e-9);
        Source source = device.isFromMemory() ? device.source() : row.source();
        working.finding(new Finding(
                verdict(enough, device),
                "ABYC E-11, older edition, asks for " + wanted.text() + " in a " + (main ? "main" : "branch") + " device; "
                        + device.words() + " can break " + device.capacity().text() + ".",
                device.capacity(), wanted, source,
                remedy(enough, device, "Where this rule set applies, take a device of greater breaking capacity.")));
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

    private static Verdict verdict(boolean passed, BreakingDevice device) {
        if (device.isFromMemory()) {
            return Verdict.CAUTION;
        }
        return passed ? Verdict.PASSED : Verdict.STOP;
    }

    private static String remedy(boolean passed, BreakingDevice device, String remedy) {
        String first = passed ? "" : remedy;
        return device.isFromMemory() ? (first + FROM_MEMORY).strip() : first;
    }
}
