package loomwright.protection;

import loomwright.conductor.ConductorRun;
import loomwright.formula.Symbol;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * The range of current that a battery would drive into a short circuit at a point.
 *
 * <p>I = E/(R_battery + R_feed + R_branch + R_fuse-links + R_joints), once with all of it at its least and the voltage of charging, once at its greatest and the
 * voltage of an empty battery. Steady
 * direct current; the inductance of the loop and the arc are left out.
 *
 * @source Ohm's law; table battery-fault-current; table of the kind of conductor chosen; fuse-link data sheets
 */
public final class FaultCurrent implements Calculator {
    @Override
    public Description description() {
        return FaultFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity highest = entries.quantity("highest-voltage");
        Quantity lowest = entries.quantity("lowest-voltage");
        if (lowest.base() > highest.base()) {
            throw new Refusal(
                    "lowest-voltage", "Lowest voltage at the battery is above the highest, " + highest.text() + ": enter the smaller of the two here");
        }
        FaultBattery battery = FaultBattery.of(entries, working);
        FaultLoop high = FaultLoop.of(lowest, battery.high());
        FaultLoop low = battery.low() == null ? null : FaultLoop.of(highest, battery.low());
        FaultLoop[] ends = {low, high};
        stretch(entries, working, FaultFields.FEED, FaultSymbols.FEED, ends);
        stretch(entries, working, FaultFields.BRANCH, FaultSymbols.BRANCH, ends);
        fuseLinks(entries, working, ends);
        Quantity joints = working.convert(
                "Turn the joints into milliohms", entries.quantity("joint-resistance"), Units.MILLIOHM, "All then stand in one unit.");
        if (joints.base() > 0) {
            ends[1] = ends[1].and(FaultSymbols.JOINTS, joints);
        }
        ends[0] = ends[0] == null ? null : ends[0].worked(working, "highest");
        ends[1] = ends[1].worked(working, "lowest");
        state(working, ends, battery);
        FaultFindings.add(working, entries, ends, battery);
        FaultSlips.add(working, ends[0], ends[1]);
        addNext(working, ends);
    }

    private static void stretch(Entries entries, WorkingBuilder working, ConductorRun run, Symbol symbol, FaultLoop[] ends) {
        if (!run.isEntered(entries)) {
            return;
        }
        Quantity length = run.outAndBack(entries, working);
        if (ends[0] != null) {
            ends[0] = ends[0].and(symbol, ConductorRun.resistance(working, run.leastPerMetre(entries, working), length));
        }
        ends[1] = ends[1].and(symbol, ConductorRun.resistance(working, run.perMetre(entries, working), length));
    }

    private static void fuseLinks(Entries entries, WorkingBuilder working, FaultLoop[] ends) {
        String choice = entries.choice("fuse-link");
        if (choice.equals("none")) {
            if (entries.has("fuse-resistance")) {
                throw new Refusal(
                        "fuse-link", "Fuse-link on the way is none although a cold resistance is entered: choose the one that I enter, or "
                                + "empty the field");
            }
            return;
        }
        Quantity resistance = choice.equals("given")
                ? working.convert(
                        "Turn the fuse-links into milliohms", entries.required(FaultFields.FUSE_RESISTANCE), Units.MILLIOHM,
                        "All then stand in one unit.")
                : printed(working, PublishedTables.fuseElectricalData().row(choice));
        for (int end = 0; end < ends.length; end++) {
            ends[end] = ends[end] == null ? null : ends[end].and(FaultSymbols.FUSE_LINKS, resistance);
        }
    }

    private static Quantity printed(WorkingBuilder working, Row row) {
        Quantity ohms = working.lookUp(
                "Read the cold resistance of the fuse-link", FaultSymbols.FUSE_LINKS, row, "cold-resistance",
                "At the first moment the fuse-link is still cold.");
        return working.convert("Turn it into milliohms", ohms, Units.MILLIOHM, "All then stand in one unit.");
    }

    private static void state(WorkingBuilder working, FaultLoop[] ends, FaultBattery battery) {
        if (ends[0] != null) {
            working.result("highest-current", ends[0].current());
        }
        working.result("lowest-current", ends[1].current());
        if (ends[0] != null) {
            working.result("battery-current-highest", FaultFormulas.AT_TERMINALS.value(ends[0].values(), Units.AMPERE));
            working.result("loop-resistance-low", ends[0].resistance());
        }
        working.result("loop-resistance-high", ends[1].resistance());
        if (battery.low() != null) {
            working.result("battery-resistance-low", battery.low());
        }
        working.result("battery-resistance-high", battery.high());
    }

    private static void addNext(WorkingBuilder working, FaultLoop[] ends) {
        if (ends[0] != null) {
            String highest = ends[0].current().text();
            working.next("breaking-capacity", "Can the device break the highest current?", "prospective-current", highest);
            working.next("short-circuit-heating", "What does the conductor stand?", "current", highest);
        }
        working.next(
                "time-current", "How soon does the fuse-link open at the lowest current?", "current", ends[1].current().text());
    }
}
