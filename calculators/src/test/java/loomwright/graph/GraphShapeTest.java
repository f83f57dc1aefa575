package loomwright.graph;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.entries.TypedEntries;
import loomwright.picture.Picture;
import loomwright.shape.Golden;
import loomwright.worked.Calculator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The marks, words and places of the graphs of some entries; the numbers in words are masked. */
class GraphShapeTest {
    private static final int KEPT = 4;

    @TestFactory
    Stream<DynamicTest> isAsLastLookedAt() {
        return Stream.of(Graphs.ofRuns(), Graphs.others()).flatMap(set -> set.graphs().stream().map(graph -> {
            Calculator calculator = graph.calculator();
            String key = calculator.description().key();
            return DynamicTest.dynamicTest(key, () -> {
                TypedEntries typed = new TypedEntries(calculator, List.of(), 8);
                StringBuilder text = new StringBuilder();
                for (int kept = 0; kept < KEPT; ) {
                    Map<String, String> entries = typed.next();
                    Picture picture = set.draw(key, entries);
                    if (picture != null) {
                        kept++;
                        text.append(Golden.maskedMarkup(picture.svg("key"))).append(Golden.masked(picture.figures().heads().toString()));
                        text.append(' ').append(picture.figures().rows().size()).append(" rows\n");
                    }
                }
                Golden.assertIs("graph/" + key + ".txt", text.toString());
            });
        }));
    }
}
