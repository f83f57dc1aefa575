package loomwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import loomwright.entries.TypedEntries;
import loomwright.worked.Calculator;
import loomwright.worked.Finding;
import loomwright.worked.NextQuestion;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.Result;
import loomwright.worked.Slip;
import loomwright.worked.Verdict;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What every calculator must give over many entries, held against the list in {@code contract.txt}. */
class ContractTest {
    private static final int ENTRIES = Integer.getInteger("contract.entries", 4000);
    private static final int MOST_ENTRIES = 60_000;

    @Test
    void namesEveryCalculator() {
        assertEquals(Catalogue.all().stream().map(each -> each.description().key()).toList(), List.copyOf(contract().keySet()));
    }

    @TestFactory
    Stream<DynamicTest> isKept() {
        Map<String, Map<String, Set<String>>> contract = contract();
        return Catalogue.all().stream().map(calculator -> {
            String key = calculator.description().key();
            return DynamicTest.dynamicTest(key, () -> {
                Map<String, Set<String>> promised = contract.get(key);
                Given given = new Given(calculator);
                TypedEntries typed = new TypedEntries(calculator, List.of(), 11);
                for (int i = 0; i < ENTRIES || i < MOST_ENTRIES && !given.has(promised); i++) {
                    given.add(Outcome.of(calculator, typed.next()).working());
                }
                assertEquals(promised.get("answers"), given.answers);
                assertEquals(promised.get("mistakes"), given.mistakes);
                assertEquals(promised.get("leads to"), given.next);
                Set<String> declared = new TreeSet<>();
                calculator.description().outputs().stream().map(Output::key).forEach(declared::add);
                assertEquals(declared, given.answers, "declared outputs");
            });
        });
    }

    /** What a calculator gave. */
    private static final class Given {
        private final Calculator calculator;
        private final Set<String> answers = new TreeSet<>();
        private final Set<String> mistakes = new TreeSet<>();
        private final Set<String> next = new TreeSet<>();

        Given(Calculator calculator) {
            this.calculator = calculator;
        }

        void add(Working working) {
            if (working == null) {
                return;
            }
            working.results().stream().map(Result::output).map(Output::key).forEach(answers::add);
            working.slips().stream().map(Slip::key).forEach(mistakes::add);
            working.nextQuestions().stream().map(NextQuestion::calculatorKey).forEach(next::add);
            for (Finding finding : working.findings()) {
                assertTrue(
                        finding.verdict() == Verdict.PASSED == finding.remedy().isEmpty(),
                        () -> calculator.description().key() + ": " + finding.words() + " " + finding.remedy());
            }
        }

        boolean has(Map<String, Set<String>> promised) {
            return answers.containsAll(promised.get("answers"))
                    && mistakes.containsAll(promised.get("mistakes"))
                    && next.containsAll(promised.get("leads to"));
        }
    }

    /** The lists by calculator, then by what they list. */
    private static Map<String, Map<String, Set<String>>> contract() {
        Map<String, Map<String, Set<String>>> contract = new LinkedHashMap<>();
        Map<String, Set<String>> lists = null;
        for (String line : lines()) {
            if (line.startsWith("  ")) {
                int colon = line.indexOf(':');
                String keys = line.substring(colon + 1).strip();
                lists.put(line.substring(2, colon), keys.isEmpty() ? Set.of() : new TreeSet<>(List.of(keys.split(" "))));
            } else if (!line.isBlank() && !line.startsWith("#")) {
                lists = new LinkedHashMap<>();
                contract.put(line, lists);
            }
        }
        return contract;
    }

    private static List<String> lines() {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(ContractTest.class.getResourceAsStream("contract.txt"), StandardCharsets.UTF_8))) {
            return reader.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
