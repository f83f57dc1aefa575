package loomwright.circuit.check;

import loomwright.circuit.Installation;
import loomwright.circuit.Load;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Verdict;

/** What is lost on the way to each load in its worst situation, and what is left for it. */
final class LoadCheck {
    private LoadCheck() {}

    static void add(Installation installation, CircuitSolution solution, int i, Findings findings) {
        Load load = installation.load(i);
        Solved worst = solution.worstFor(i);
        if (worst == null) {
            return;
        }
        Quantity drop = Quantity.of(worst.drop(i), Units.VOLT);
        Quantity limit = load.allowance().quantity("allowance-in-volts");
        boolean passed = Findings.within(drop, limit);
        findings.add(
                Check.VOLTAGE_DROP, i, passed, Verdict.CAUTION,
                findings.title(i) + ": with " + worst.situation().words() + " on, " + Findings.told(drop, limit) + " are lost on the way, "
                        + Findings.withinOrAbove(passed) + " " + limit.text() + ", " + load.allowance().quantity("allowance").text() + " of 12 V.",
                drop, limit, load.allowance().source(), "Take a thicker conductor or a shorter route where most of it is lost.");
        addLowest(load, solution, i, findings);
    }

    private static void addLowest(Load load, CircuitSolution solution, int i, Findings findings) {
        double least = solution.leastVolts(i);
        if (load.lowestWorking() == null || Double.isNaN(least)) {
            return;
        }
        boolean passed = least >= load.lowestWorking().base() * (1 - 1e-9);
        Quantity volts = Quantity.of(least, Units.VOLT);
        findings.add(
                Check.VOLTAGE_DROP, i, passed, Verdict.STOP,
                findings.title(i) + ": with the battery nearly empty " + volts.text(3) + " reach it, " + (passed ? "not below" : "below") + " the "
                        + load.lowestWorking().text() + " it works at.",
                volts, load.lowestWorking(), Findings.entered(), "Lose less on the way, or stop using it before the battery is that empty.");
    }
}
