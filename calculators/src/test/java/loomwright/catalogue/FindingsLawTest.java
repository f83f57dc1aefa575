package loomwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.entries.TypedEntries;
import loomwright.worked.Calculator;
import loomwright.worked.Finding;
import loomwright.worked.FormulaStep;
import loomwright.worked.NextQuestion;
import loomwright.worked.Outcome;
import loomwright.worked.Slip;
import loomwright.worked.Step;
import loomwright.worked.Verdict;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Laws of every working: its sentences are true of its figures, and its figures are those of its formulas. */
class FindingsLawTest {
    private static final int ENTRIES = 400;
    /** Words that say the figure is no more than the limit, and those that say it is no less. */
    private static final List<String> NO_MORE = List.of("is within", "is also within", "no more than", "has opened by");
    private static final List<String> NO_LESS = List.of("not less than", "is at least the", "not below the end", "are clear;", "enough for the");
    private static final List<String> LESS = List.of("is below the", "is below the end", "less than the", "does not slip over");

    @TestFactory
    Stream<DynamicTest> hold() {
        return Catalogue.all().stream().map(calculator -> DynamicTest.dynamicTest(calculator.description().key(), () -> {
            TypedEntries typed = new TypedEntries(calculator, List.of(), 21);
            for (int i = 0; i < ENTRIES; i++) {
                Map<String, String> entries = typed.next();
                Working working = Outcome.of(calculator, entries).working();
                if (working != null) {
                    holdsFor(calculator, working, entries);
                }
            }
        }));
    }

    private static void holdsFor(Calculator calculator, Working working, Map<String, String> entries) {
        for (Finding finding : working.findings()) {
            if (finding.figure() != null && finding.limit() != null && finding.figure().dimension().equals(finding.limit().dimension())) {
                saysTheTruth(finding, calculator.description().key() + " " + entries);
            }
        }
        for (Step step : working.steps()) {
            if (step instanceof FormulaStep formula) {
                double again = formula.formula().value(formula.values(), step.result().unit()).value();
                assertEquals(again, step.result().value(), () -> step.words() + " is not what its formula gives: " + entries);
            }
        }
        for (Slip slip : working.slips()) {
            double again = slip.formula().value(slip.values(), slip.value().unit()).value();
            assertEquals(again, slip.value().value(), () -> slip.key() + " is not what its formula gives: " + entries);
        }
        for (NextQuestion next : working.nextQuestions()) {
            Calculator other = Catalogue.find(next.calculatorKey());
            next.carried().keySet().forEach(field -> assertTrue(other.description().field(field) != null, next.calculatorKey() + " " + field));
        }
    }

    private static void saysTheTruth(Finding finding, String where) {
        double figure = finding.figure().base();
        double limit = finding.limit().base();
        boolean passed = finding.verdict() == Verdict.PASSED;
        holdsItsWords(finding.words(), figure, limit, where + finding);
        if (passed && saysAnyOf(NO_MORE, finding)) {
            assertTrue(figure <= limit, () -> where + finding);
        }
        if (passed && saysAnyOf(NO_LESS, finding)) {
            assertTrue(figure >= limit, () -> where + finding);
        }
        if (!passed && saysAnyOf(LESS, finding)) {
            assertTrue(figure <= limit, () -> where + finding);
        }
    }

    /** The words that every comparison uses. */
    private static void holdsItsWords(String words, double figure, double limit, String where) {
        double hair = 1e-8 * Math.abs(limit);
        assertTrue(!words.contains(", is above ") || figure > limit, where);
        assertTrue(!words.contains(", is below ") || figure < limit, where);
        assertTrue(!words.contains(", is within ") || figure <= limit + hair, where);
        assertTrue(!words.contains(", is at least ") || figure >= limit - hair, where);
    }

    private static boolean saysAnyOf(List<String> phrases, Finding finding) {
        return phrases.stream().anyMatch(finding.words()::contains);
    }
}
