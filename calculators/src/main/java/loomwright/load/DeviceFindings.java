package loomwright.load;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What to take from the current of a device. */
final class DeviceFindings {
    private static final Row PLANNING = PublishedTables.dcDcEfficiency().row("vehicle-usb-outlet");

    private static final String MOST = "the most that converters of vehicle USB outlets are planned with";

    private DeviceFindings() {}

    static void add(WorkingBuilder working, Device device, Values values) {
        addDesignCurrent(working, device, values);
        addEfficiency(working, device);
        addWindow(working, device);
    }

    private static void addDesignCurrent(WorkingBuilder working, Device device, Values values) {
        Quantity usual = values.of(DeviceSymbols.CURRENT);
        Quantity largest = values.of(DeviceSymbols.LARGEST_CURRENT);
        boolean atLowest = values.of(DeviceSymbols.CURRENT_AT_LOWEST).base() == largest.base();
        Quantity voltage = atLowest ? device.lowest() : device.highest();
        if (largest.base() <= usual.base() * 1.001) {
            working.finding(new Finding(
                    Verdict.PASSED,
                    "The design current is " + largest.text() + ": from " + device.lowest().text() + " to " + device.highest().text()
                            + " this load never draws more.",
                    largest, null, Source.commonPractice(), ""));
        } else {
            working.finding(Comparison.of("The current at " + device.supply().text(), usual)
                    .atLeast(largest, "the design current, which is drawn at " + voltage.text(), Source.commonPractice())
                    .otherwise(Verdict.CAUTION, "Choose cable and fuse-link for the design current.")
                    .finding());
        }
    }

    private static void addEfficiency(WorkingBuilder working, Device device) {
        Quantity high = PLANNING.quantity("efficiency-to");
        Quantity entered = device.efficiency();
        boolean changesVoltage = device.voltage() != null
                && (device.voltage().base() < device.lowest().base() || device.voltage().base() > device.highest().base());
        if (!device.hasConverter()) {
            if (changesVoltage) {
                working.finding(Comparison.of("This load is at " + device.voltage().text() + ", so there is a converter: its efficiency", entered)
                        .atMost(high, MOST, PLANNING.source())
                        .exact()
                        .otherwise(Verdict.CAUTION, "Enter the efficiency of the converter.")
                        .finding());
            }
            return;
        }
        Comparison comparison = Comparison.of("The efficiency of the converter", entered)
                .atMost(high, MOST, PLANNING.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Keep it only if the converter's data sheet gives it at this load.");
        working.finding((device.planned() == null ? comparison : comparison.assuming("the least efficiency of its kind")).finding());
    }

    /** A 12 V system with a window narrower than usual hides the worst current. */
    private static void addWindow(WorkingBuilder working, Device device) {
        boolean twelve = SupplyWindow.holds(device.supply());
        boolean narrowLow = device.lowest().base() > SupplyWindow.LOWEST.base();
        boolean narrowHigh = device.highest().base() < SupplyWindow.HIGHEST.base();
        boolean matters = device.kind() == LoadKind.CONSTANT_POWER && narrowLow || device.kind() == LoadKind.RESISTIVE && narrowHigh;
        if (twelve && matters) {
            boolean low = device.kind() == LoadKind.CONSTANT_POWER;
            Comparison end = Comparison.of(
                    "The voltage you entered for the end where this load draws most", (low ? device.lowest() : device.highest()).in(Units.VOLT));
            end = low
                    ? end.atMost(SupplyWindow.LOWEST, "the lowest of a 12 V system", SupplyWindow.source())
                    : end.atLeast(SupplyWindow.HIGHEST, "the highest of a 12 V system", SupplyWindow.source());
            working.finding(end.exact().otherwise(Verdict.CAUTION, "Keep it only if the device or the battery switches off there.").finding());
        }
    }
}
