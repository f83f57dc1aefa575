package loomwright.circuit.sheet;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.check.Examination;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Verdict;

/** The few figures by which two circuits are compared. */
public final class MainFigures {
    /** What each figure is. */
    public static final List<String> LABELS = List.of(
            "Parts", "Stops", "Cautions", "Checks passed", "Largest current from the battery", "Lowest voltage at a load",
            "Largest drop to a load", "Highest fault current", "Conductor to cut, all sizes", "Standing draw a day", "The whole day",
            "Run time with nothing charging it");

    private static final String NONE = "\u2013";

    private MainFigures() {}

    /** The figures in the order of the labels; dashes where the circuit cannot be worked out. */
    public static String[] of(Examination examination) {
        String[] figures = new String[LABELS.size()];
        for (int i = 0; i < figures.length; i++) {
            figures[i] = NONE;
        }
        if (examination != null) {
            figures[0] = Integer.toString(examination.circuit().parts().size());
        }
        if (examination == null || examination.solution() == null) {
            return figures;
        }
        CircuitSolution solution = examination.solution();
        figures[1] = Integer.toString(examination.count(Verdict.STOP));
        figures[2] = Integer.toString(examination.count(Verdict.CAUTION));
        figures[3] = Integer.toString(examination.count(Verdict.PASSED));
        figures[4] = Quantity.of(solution.designAmperes(examination.circuit().supply()), Units.AMPERE).text(3);
        atLoads(figures, solution);
        figures[7] = text(examination.faultCurrents().highest(examination.circuit().supply()));
        figures[8] = metres(examination.circuit()).text(3);
        figures[9] = text(examination.day().standing());
        figures[10] = text(examination.day().total());
        figures[11] = text(examination.day().days());
        return figures;
    }

    private static void atLoads(String[] figures, CircuitSolution solution) {
        double least = Double.POSITIVE_INFINITY;
        double drop = -1;
        for (Node node : solution.circuit().nodes()) {
            Solved worst = solution.worstFor(node);
            if (worst != null) {
                least = Math.min(least, solution.leastVolts(node));
                drop = Math.max(drop, worst.drop(node));
            }
        }
        if (drop >= 0 && !Double.isNaN(least)) {
            figures[5] = Quantity.of(least, Units.VOLT).text(4);
            figures[6] = Quantity.of(drop, Units.VOLT).text(3);
        }
    }

    /** Both conductors of every run, with the allowance. */
    private static Quantity metres(Circuit circuit) {
        double metres = 0;
        for (CutLine line : PartsAndCuts.of(circuit).cuts()) {
            metres += 2 * line.each().base();
        }
        return Quantity.of(metres, Units.METRE);
    }

    private static String text(Quantity quantity) {
        return quantity == null ? NONE : quantity.text(3);
    }
}
