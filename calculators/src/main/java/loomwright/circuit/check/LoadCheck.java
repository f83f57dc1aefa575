package loomwright.circuit.check;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Comparison;
import loomwright.worked.Verdict;

/** What is lost on the way to each load in its worst situation, and what is left for it. */
final class LoadCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        Solved worst = context.solution().worstFor(node);
        if (node.figures() instanceof Load load && worst != null) {
            addDrop(node, load, worst, findings);
            addLowest(node, load, context.solution().leastVolts(node), findings);
        }
    }

    private static void addDrop(Node node, Load load, Solved worst, Findings findings) {
        Quantity drop = Quantity.of(worst.drop(node), Units.VOLT);
        Quantity limit = load.allowance().quantity("allowance-in-volts");
        boolean passed = Findings.within(drop, limit);
        findings.add(
                Check.VOLTAGE_DROP, node, passed, Verdict.CAUTION,
                node.title() + ": with " + worst.situation().words() + " on, " + Findings.told(drop, limit) + " are lost on the way, "
                        + Findings.withinOrAbove(passed) + " " + limit.text() + ", " + load.allowance().quantity("allowance").text() + " of 12 V.",
                drop, limit, load.allowance().source(), "Take a thicker conductor or a shorter route where most of it is lost.");
    }

    private static void addLowest(Node node, Load load, double least, Findings findings) {
        if (load.lowestWorking() == null || Double.isNaN(least)) {
            return;
        }
        Quantity volts = Quantity.of(least, Units.VOLT);
        boolean passed = Comparison.atLeast(volts, load.lowestWorking());
        findings.add(
                Check.VOLTAGE_DROP, node, passed, Verdict.STOP,
                node.title() + ": with the battery nearly empty " + volts.text(3) + " reach it, " + (passed ? "not below" : "below") + " the "
                        + load.lowestWorking().text() + " it works at.",
                volts, load.lowestWorking(), Findings.entered(), "Lose less on the way, or stop using it before the battery is that empty.");
    }
}
