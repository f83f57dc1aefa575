package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Standing;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What the range of a fault current rests on, and what it asks of the devices. */
final class FaultFindings {
    private static final String ASK_THE_MAKER = "Ask the battery's maker for its short-circuit current.";

    private FaultFindings() {}

    static void add(WorkingBuilder working, Entries entries, FaultLoop[] ends, FaultBattery battery) {
        BatteryKind kind = BatteryKind.of(entries.option("battery"));
        boolean memory = battery.source().standing() == Standing.FROM_MEMORY;
        if (ends[0] == null) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "Print says of this battery only that it has at most " + battery.high().text()
                            + ", not how little: the highest current stays unknown.",
                    battery.high(), null, battery.source(), ASK_THE_MAKER));
        } else {
            againstBlade(working, ends[0].current(), memory);
        }
        if (kind.row() != null) {
            ofThisKindOnly(working, battery, kind, memory);
        }
        if (kind.isLithium()) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "The electronic switch of such a battery normally opens first. " + ends[1].current().text(3)
                            + " and more would flow if it failed shorted.",
                    ends[1].current(), null, PublishedTables.batteryFaultCurrent().row("lifepo4-100-ah").source(),
                    "Do not count on the electronic switch: protect the conductor by a fuse-link or breaker."));
        }
        Row school = BatteryKind.schoolExercise();
        Quantity schoolLeast = school.quantity("value", Units.OHM).in(Units.MILLIOHM);
        if (kind == BatteryKind.GIVEN && entries.quantity("battery-resistance-low").base() >= schoolLeast.base()) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "An inside resistance of " + entries.quantity("battery-resistance-low").text()
                            + " is of the kind printed in school exercises, "
                            + schoolLeast.text() + " and more: good for arithmetic, about a hundred times too large for a real 12 V "
                                    + "battery.",
                    entries.quantity("battery-resistance-low"), schoolLeast, school.source(), ASK_THE_MAKER));
        }
    }

    /** A printed range is that of one kind and size of battery. */
    private static void ofThisKindOnly(WorkingBuilder working, FaultBattery battery, BatteryKind kind, boolean memory) {
        working.finding(new Finding(
                Verdict.CAUTION,
                "The range holds for this battery only: " + kind.words() + ". A larger one has less resistance and drives more current"
                        + (memory ? ", and the figure is from memory: no one could look it up." : "."),
                battery.high(), null, battery.source(), ASK_THE_MAKER));
    }

    private static void againstBlade(WorkingBuilder working, Quantity highest, boolean memory) {
        Row blade = DeviceKind.BLADE.breakingRow();
        Quantity capacity = blade.quantity("breaking-capacity");
        boolean within = highest.base() <= capacity.base() * (1 + 1e-9);
        String remedy = memory ? "The battery's figure is from memory, so this decides nothing. " + ASK_THE_MAKER : "";
        working.finding(new Finding(
                within && !memory ? Verdict.PASSED : Verdict.CAUTION,
                "The highest current of " + highest.text(3) + " is " + (within ? "within" : "above") + " the " + capacity.text()
                        + " that a blade fuse-link can break.",
                highest, capacity, blade.source(),
                within ? remedy : "Put a device of greater breaking capacity nearer to the battery, or the blade fuse-link further away."));
    }
}
