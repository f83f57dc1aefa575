package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What the range of a fault current rests on, and what it asks of the devices. */
final class FaultFindings {
    /** The figure that settles every question about a battery's fault current. */
    static final MissingFigure MAKERS_CURRENT = new MissingFigure(
            "short-circuit-current", "short-circuit current of the battery", "the battery's data sheet, or its maker");

    private FaultFindings() {}

    static void add(WorkingBuilder working, Entries entries, FaultLoop[] ends, FaultBattery battery) {
        BatteryKind kind = BatteryKind.of(entries);
        if (ends[0] == null) {
            working.finding(Finding.notKnown(
                    "Print says of this battery only that it has at most " + battery.high().text()
                            + ", not how little: the highest current stays unknown.",
                    battery.high(), battery.source(), MAKERS_CURRENT));
        } else {
            againstBlade(working, entries, kind, ends[0].current(), battery.source());
        }
        if (kind.row() != null) {
            working.finding(Finding.notKnown(words(kind, battery.source()), battery.high(), battery.source(), MAKERS_CURRENT));
        }
        if (kind.isLithium()) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "The electronic switch of such a battery normally opens first. " + ends[1].current().text(3)
                            + " and more would flow if it failed shorted.",
                    ends[1].current(), null, PublishedTables.batteryFaultCurrent().row("lifepo4-100-ah").source(),
                    "Do not count on the electronic switch: protect the conductor by a fuse-link or breaker."));
        }
        if (kind == BatteryKind.GIVEN) {
            againstSchool(working, entries.quantity("battery-resistance-low"));
        }
    }

    /** A range is that of one kind and size of battery. */
    private static String words(BatteryKind kind, Source source) {
        String from = source.standing().mayPass() ? "" : " It is " + source.standing().words() + ": " + (source.locus().isEmpty()
                ? "no one could look it up." : source.locus() + ", which is our own step.");
        return "The range is that of " + kind.words() + ", not of yours. A larger battery has less resistance and drives more current." + from;
    }

    private static void againstBlade(WorkingBuilder working, Entries entries, BatteryKind kind, Quantity highest, Source battery) {
        Row blade = DeviceKind.BLADE.breakingRow();
        Comparison comparison = Comparison.of("The highest current", highest)
                .atMost(blade.quantity("breaking-capacity"), "what a blade fuse-link can break", blade.source())
                .restingOn(battery)
                .settledBy(MAKERS_CURRENT)
                .otherwise(
                        Verdict.CAUTION,
                        "Take a device of greater breaking capacity here, or put the blade fuse-link further away from the battery.");
        if (kind.capacity() != null && !entries.has("capacity")) {
            comparison.assuming(kind.words());
        }
        working.finding(comparison.finding());
    }

    private static void againstSchool(WorkingBuilder working, Quantity entered) {
        Row school = BatteryKind.schoolExercise();
        Comparison comparison = Comparison.of("The least inside resistance entered", entered)
                .atMost(
                        school.quantity("value", Units.OHM).in(Units.MILLIOHM),
                        "the least of school exercises, which is about a hundred times that of a real 12 V battery", school.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Take it for arithmetic only. Ask the battery's maker for its short-circuit current.");
        if (!comparison.holds() || entered.base() >= school.quantity("value", Units.OHM).base()) {
            working.finding(comparison.finding());
        }
    }
}
