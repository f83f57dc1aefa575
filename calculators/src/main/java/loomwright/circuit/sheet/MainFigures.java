package loomwright.circuit.sheet;

import java.util.List;
import loomwright.circuit.Installation;
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
        figures[4] = Quantity.of(solution.designAmperes(0), Units.AMPERE).text(3);
        atLoads(figures, solution);
        figures[7] = text(examination.faultCurrents().highest(0));
        figures[8] = metres(solution.installation()).text(3);
        figures[9] = text(examination.day().standing());
        figures[10] = text(examination.day().total());
        figures[11] = text(examination.day().days());
        return figures;
    }

    private static void atLoads(String[] figures, CircuitSolution solution) {
        double least = Double.POSITIVE_INFINITY;
        double drop = -1;
        for (int i = 0; i < solution.installation().size(); i++) {
            Solved worst = solution.installation().load(i) == null ? null : solution.worstFor(i);
            if (worst != null) {
                least = Math.min(least, solution.leastVolts(i));
                drop = Math.max(drop, worst.drop(i));
            }
        }
        if (drop >= 0 && !Double.isNaN(least)) {
            figures[5] = Quantity.of(least, Units.VOLT).text(4);
            figures[6] = Quantity.of(drop, Units.VOLT).text(3);
        }
    }

    /** Both conductors of every run, with the allowance. */
    private static Quantity metres(Installation installation) {
        double metres = 0;
        for (CutLine line : PartsAndCuts.of(installation).cuts()) {
            metres += 2 * line.each().base();
        }
        return Quantity.of(metres, Units.METRE);
    }

    private static String text(Quantity quantity) {
        return quantity == null ? NONE : quantity.text(3);
    }
}
