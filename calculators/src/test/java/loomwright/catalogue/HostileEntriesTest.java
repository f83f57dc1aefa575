package loomwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import loomwright.entries.TypedEntries;
import loomwright.worked.Calculator;
import loomwright.worked.EntryFault;
import loomwright.worked.Finding;
import loomwright.worked.NextQuestion;
import loomwright.worked.Outcome;
import loomwright.worked.Step;
import loomwright.worked.Verdict;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Whatever is typed, a calculator gives finite figures or names a field of its own: a hundred thousand entries over all calculators, a million in
 * the profile {@code long}.
 *
 * <p>{@code -Dhostile.entries=10000000} tries more; {@code -Dhostile.seed=7} tries others.
 */
class HostileEntriesTest {
    private static final int ENTRIES = Integer.getInteger("hostile.entries", 100_000);
    private static final long SEED = Long.getLong("hostile.seed", 1);
    /** Each calculator's share is tried in parts, side by side. */
    private static final int PARTS = 4;
    /** At least this share must lead to a working, or the test would read complaints only. */
    private static final double WORKED = 0.15;

    @TestFactory
    Stream<DynamicTest> giveFiniteFiguresOrNameAField() {
        List<Calculator> all = Catalogue.all();
        int each = (ENTRIES + all.size() * PARTS - 1) / (all.size() * PARTS);
        return all.stream().map(calculator -> DynamicTest.dynamicTest(calculator.description().key(), () -> {
            int worked = IntStream.range(0, PARTS).parallel().map(part -> workedOf(calculator, each, SEED * PARTS + part)).sum();
            assertTrue(worked >= WORKED * PARTS * each, () -> "only " + worked + " of " + PARTS * each + " lead to a working");
        }));
    }

    private static int workedOf(Calculator calculator, int entries, long seed) {
        TypedEntries typed = new TypedEntries(calculator, List.of(), seed);
        int worked = 0;
        for (int i = 0; i < entries; i++) {
            Map<String, String> entry = typed.next();
            try {
                worked += holds(calculator, entry) ? 1 : 0;
            } catch (RuntimeException thrown) {
                throw new AssertionError(entry.toString(), thrown);
            }
        }
        return worked;
    }

    /** Whether the entries lead to a working. */
    private static boolean holds(Calculator calculator, Map<String, String> typed) {
        Outcome outcome = Outcome.of(calculator, typed);
        for (EntryFault fault : outcome.faults()) {
            assertNotNull(calculator.description().field(fault.fieldKey()), () -> fault + " for " + typed);
            assertFalse(fault.message().isBlank(), typed::toString);
        }
        if (outcome.working() == null) {
            assertFalse(outcome.faults().isEmpty(), typed::toString);
            return false;
        }
        check(outcome.working(), typed);
        return true;
    }

    private static void check(Working working, Map<String, String> typed) {
        assertFalse(working.results().isEmpty(), typed::toString);
        working.results().forEach(result -> assertTrue(Double.isFinite(result.quantity().value()), () -> result + " for " + typed));
        working.slips().forEach(slip -> assertTrue(Double.isFinite(slip.value().value()), () -> slip + " for " + typed));
        for (Step step : working.steps()) {
            assertFalse(step.why().isBlank(), () -> step + " for " + typed);
        }
        for (Finding finding : working.findings()) {
            assertFalse(finding.words().contains("safe"), finding::words);
            assertEquals(finding.verdict() == Verdict.PASSED, finding.remedy().isEmpty(), finding::words);
        }
        for (NextQuestion question : working.nextQuestions()) {
            Calculator next = Catalogue.find(question.calculatorKey());
            assertNotNull(next, question::toString);
            question.carried().keySet().forEach(key -> assertNotNull(next.description().field(key), question::toString));
        }
    }
}
