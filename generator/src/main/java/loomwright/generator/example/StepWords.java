package loomwright.generator.example;

import loomwright.generator.content.Words;
import loomwright.worked.Candidate;
import loomwright.worked.ChoiceStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Step;
import loomwright.worked.Working;

/** Counts the words of the steps of a working: what each does and why, its formula in letters and in numbers, the sizes it looked at. */
final class StepWords {
    private StepWords() {}

    static int of(Working working) {
        return working.steps().stream().mapToInt(StepWords::of).sum();
    }

    private static int of(Step step) {
        int words = Words.in(step.words()) + Words.in(step.why()) + (step.result() == null ? 0 : Words.in(step.result().text()));
        if (step instanceof FormulaStep formula) {
            words += Words.in(formula.formula().symbolicText());
            words += Words.in(formula.formula().workedText(formula.values(), formula.result()));
        } else if (step instanceof ChoiceStep choice) {
            for (Candidate candidate : choice.candidates()) {
                words += Words.in(candidate.name()) + Words.in(candidate.reason());
            }
        }
        return words;
    }
}
