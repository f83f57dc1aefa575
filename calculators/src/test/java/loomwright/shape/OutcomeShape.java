package loomwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Candidate;
import loomwright.worked.ChoiceStep;
import loomwright.worked.EntryFault;
import loomwright.worked.Finding;
import loomwright.worked.FormulaStep;
import loomwright.worked.NextQuestion;
import loomwright.worked.Outcome;
import loomwright.worked.Result;
import loomwright.worked.Slip;
import loomwright.worked.Step;
import loomwright.worked.TableStep;
import loomwright.worked.Working;

/** What came of some entries, line by line, with every figure masked. */
final class OutcomeShape {
    private OutcomeShape() {}

    static List<String> of(Outcome outcome) {
        List<String> lines = new ArrayList<>();
        for (EntryFault fault : outcome.faults()) {
            lines.add("refused " + fault.fieldKey() + ": " + fault.message());
        }
        if (outcome.working() != null) {
            add(outcome.working(), lines);
        }
        return lines.stream().map(line -> Golden.masked(line).replace('\n', ' ')).toList();
    }

    private static void add(Working working, List<String> lines) {
        for (Step step : working.steps()) {
            lines.add("step " + step.words() + " (" + unit(step.result()) + ") " + kind(step) + " " + step.why());
        }
        for (Result result : working.results()) {
            lines.add("answer " + result.output().key() + " (" + unit(result.quantity()) + ") " + sign(result.quantity()));
        }
        for (Finding finding : working.findings()) {
            lines.add("finding " + finding.verdict() + " figure " + compared(finding.figure(), finding.limit()) + " limit: "
                    + finding.words() + " [" + of(finding.source()) + "] " + finding.remedy());
        }
        for (Slip slip : working.slips()) {
            Result right = working.result(slip.output().key());
            lines.add("mistake " + slip.key() + " in " + slip.output().key() + " "
                    + compared(slip.value(), right == null ? null : right.quantity()) + " right");
        }
        for (NextQuestion next : working.nextQuestions()) {
            lines.add("next " + next.calculatorKey() + ": " + next.words() + " " + new TreeSet<>(next.carried().keySet()));
        }
    }

    private static String kind(Step step) {
        if (step instanceof FormulaStep formula) {
            return formula.formula().symbolicText() + " " + of(formula.source());
        }
        if (step instanceof TableStep table) {
            return "table " + table.symbol().letter() + table.symbol().subscript() + " " + of(table.row().source());
        }
        if (step instanceof ChoiceStep choice) {
            TreeSet<String> reasons = new TreeSet<>();
            for (Candidate candidate : choice.candidates()) {
                reasons.add((candidate.taken() ? "taken: " : "left: ") + Golden.masked(candidate.reason()));
            }
            return "choice " + reasons + " " + of(choice.source());
        }
        return "conversion";
    }

    private static String of(Source source) {
        return source == null ? "" : source.document().key() + " " + source.standing();
    }

    private static String unit(Quantity quantity) {
        return quantity == null ? "none" : quantity.unit().symbol();
    }

    private static String sign(Quantity quantity) {
        return quantity.base() > 0 ? "+" : quantity.base() < 0 ? "-" : "0";
    }

    private static String compared(Quantity figure, Quantity limit) {
        if (figure == null || limit == null || !figure.dimension().equals(limit.dimension())) {
            return figure == null ? "none" : limit == null ? "without" : "other than";
        }
        return figure.base() < limit.base() ? "<" : figure.base() > limit.base() ? ">" : "=";
    }
}
