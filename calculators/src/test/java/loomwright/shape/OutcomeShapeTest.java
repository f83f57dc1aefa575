package loomwright.shape;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.entries.TypedEntries;
import loomwright.markup.Fragment;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * For some sixty entries a calculator: the same steps, checks, verdicts, mistakes and next questions as when the file was last read by
 * someone. It holds no figure: those are held by published cases and by laws.
 */
class OutcomeShapeTest {
    private static final int TRIED = 6000;
    private static final int MOST_KEPT = 50;
    private static final int MOST_REFUSED = 25;

    @TestFactory
    Stream<DynamicTest> isAsAgreed() {
        return Catalogue.all().stream().map(calculator -> DynamicTest.dynamicTest(calculator.description().key(), () -> holds(calculator)));
    }

    private static void holds(Calculator calculator) {
        String name = "outcome/" + calculator.description().key() + ".txt";
        if (Golden.isRewritten()) {
            Golden.write(name, chosen(calculator));
        }
        List<String> lines = new ArrayList<>();
        for (String line : Golden.read(name).split("\n")) {
            if (line.startsWith("#")) {
                continue;
            }
            if (!line.startsWith("> ")) {
                lines.add(line.substring(line.indexOf(' ') + 1));
                continue;
            }
            int end = line.lastIndexOf(" >");
            Map<String, String> entries = Fragment.read(line.substring(2, end));
            List<String> expected = new ArrayList<>();
            for (String number : line.substring(end + 2).strip().split(" ")) {
                expected.add(lines.get(Integer.parseInt(number)));
            }
            String given = String.join("\n", OutcomeShape.of(Outcome.of(calculator, entries)));
            Golden.assertSame(name + " " + entries, String.join("\n", expected), given);
        }
    }

    /** Entries that show every line met, and then as many shapes as there is room for. */
    private static String chosen(Calculator calculator) {
        LinesOnce kept = new LinesOnce();
        Set<List<String>> shapes = new HashSet<>();
        int refusals = 0;
        TypedEntries typed = new TypedEntries(calculator, List.of(), 3);
        for (int i = 0; i < TRIED; i++) {
            Map<String, String> entries = Fragment.read(Fragment.write(typed.next()));
            Outcome outcome = Outcome.of(calculator, entries);
            List<String> shape = OutcomeShape.of(outcome);
            boolean isNew = shapes.size() < MOST_KEPT && !shapes.contains(shape) || !kept.hasAll(shape);
            if (isNew && (outcome.working() != null || refusals++ < MOST_REFUSED)) {
                shapes.add(shape);
                kept.add(Fragment.write(entries), shape);
            }
        }
        return kept.text();
    }
}
