package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.generator.content.Content;
import loomwright.generator.content.ContentReader;
import loomwright.generator.example.Example;
import loomwright.generator.example.ExampleBook;
import loomwright.generator.example.Pin;
import loomwright.generator.problem.Problems;
import loomwright.worked.Calculator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every pin of every lesson is a case of its own: what the calculator gives against what stands in print. */
class PublishedPinTest {
    private static final Path CONTENT = Path.of("../content");

    private static List<Example> examples() {
        Problems problems = new Problems();
        Content content = ContentReader.read(CONTENT, problems);
        Map<String, Calculator> calculators = new LinkedHashMap<>();
        Catalogue.all().forEach(each -> calculators.put(each.description().key(), each));
        return ExampleBook.of(content, calculators, problems).all();
    }

    @TestFactory
    List<DynamicTest> agreesWithItsSource() {
        List<DynamicTest> cases = new ArrayList<>();
        for (Example example : examples()) {
            for (Pin pin : example.pins()) {
                String name = example.article().address() + ", " + example.key() + ", " + pin.output().key() + " " + pin.expectText()
                        + " (" + pin.source().document().key() + ")";
                cases.add(DynamicTest.dynamicTest(name, () -> assertTrue(
                        pin.holds(),
                        () -> "computed " + pin.computed().text(6) + ", expected " + pin.expectText() + " within " + pin.toleranceText())));
            }
        }
        assertTrue(cases.size() > 10, "the lessons hold only " + cases.size() + " pins");
        return cases;
    }
}
