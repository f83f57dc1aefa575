package loomwright.markup;

import loomwright.worked.Candidate;
import loomwright.worked.ChoiceStep;
import loomwright.worked.ConversionStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Step;
import loomwright.worked.TableStep;

/** A step of a working on one line of plain text, for a key on paper. */
public final class StepLine {
    private StepLine() {}

    /** What the step does and what it gives. */
    public static String of(Step step) {
        if (step instanceof FormulaStep formula) {
            return step.words() + ": " + formula.formula().symbolicText() + "; " + formula.formula().workedText(formula.values(), formula.result());
        }
        if (step instanceof TableStep table) {
            String locus = table.row().source().locus();
            return step.words() + ": " + table.symbol().text() + " = " + table.result().text() + (locus.isEmpty() ? "" : " (" + locus + ")");
        }
        if (step instanceof ConversionStep conversion) {
            return step.words() + ": " + conversion.from().text() + " is " + conversion.result().text();
        }
        return step.words() + ": " + taken((ChoiceStep) step);
    }

    private static String taken(ChoiceStep choice) {
        for (Candidate candidate : choice.candidates()) {
            if (candidate.taken()) {
                return candidate.name() + ", " + candidate.reason();
            }
        }
        return "none of these fits";
    }
}
