package loomwright.circuit.check;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/** What is lost on the way to each load in its worst situation, and what is left for it. */
final class LoadCheck implements PartCheck {
    /** A load of a rated voltage above this belongs to a battery of 24 V. */
    private static final double TWELVE_UP_TO = 18;

    @Override
    public void check(Node node, Context context, Findings findings) {
        Solved worst = context.solution().worstFor(node);
        if (node.figures() instanceof Load load && worst != null) {
            addDrop(node, load, worst, findings);
            addLowest(node, load, worst, context.solution().leastVolts(node), findings);
        }
    }

    private static void addDrop(Node node, Load load, Solved worst, Findings findings) {
        Row allowance = load.allowance();
        double nominal = load.ratedVoltage().in(Units.VOLT).value() > TWELVE_UP_TO ? 24 : 12;
        Quantity limit = Quantity.of(allowance.quantity("allowance").base() * nominal, Units.VOLT);
        findings.add(Check.VOLTAGE_DROP, node, Comparison.of(
                        node.title() + ": what is lost on the way to it with " + worst.situation().words() + " on", Quantity.of(worst.drop(node), Units.VOLT))
                .atMost(limit, allowance.quantity("allowance").text() + " of " + (int) nominal + " V", allowance.source())
                .otherwise(Verdict.CAUTION, Loss.remedy(node, worst, ", or have less on at once")));
    }

    private static void addLowest(Node node, Load load, Solved worst, double least, Findings findings) {
        if (load.lowestWorking() != null && !Double.isNaN(least)) {
            findings.add(Check.VOLTAGE_DROP, node, Comparison.of(
                            "What reaches " + node.title() + " with the battery nearly empty", Quantity.of(least, Units.VOLT))
                    .atLeast(load.lowestWorking(), "the lowest voltage it works at", node.part().figuresFrom())
                    .exact()
                    .settledBy(new MissingFigure("lowest-working-voltage", "lowest voltage that " + node.title() + " works at", "its data sheet"))
                    .otherwise(Verdict.STOP, Loss.remedy(node, worst, ", or stop using it before the battery is that empty")));
        }
    }
}
