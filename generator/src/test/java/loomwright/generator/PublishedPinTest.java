package loomwright.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.generator.content.Content;
import loomwright.generator.content.ContentReader;
import loomwright.generator.example.CheckedQuestion;
import loomwright.generator.example.Example;
import loomwright.generator.example.ExampleBook;
import loomwright.generator.example.Pin;
import loomwright.generator.example.PinKind;
import loomwright.generator.problem.Problems;
import loomwright.worked.Calculator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every pin of every lesson is a case of its own: what the calculator gives against what stands in print. */
class PublishedPinTest {
    private static final Path CONTENT = Path.of("../content");

    private static ExampleBook book() {
        Problems problems = new Problems();
        Content content = ContentReader.read(CONTENT, problems);
        Map<String, Calculator> calculators = new LinkedHashMap<>();
        Catalogue.all().forEach(each -> calculators.put(each.description().key(), each));
        return ExampleBook.of(content, calculators, problems);
    }

    @TestFactory
    List<DynamicTest> agreesWithItsSource() {
        List<DynamicTest> cases = new ArrayList<>();
        ExampleBook book = book();
        for (Example example : book.all()) {
            example.pins().forEach(pin -> cases.add(caseOf(example.address(), pin)));
        }
        for (CheckedQuestion question : book.questions()) {
            question.pins().forEach(pin -> cases.add(caseOf(question.address(), pin)));
        }
        assertTrue(cases.size() > 10, "the lessons hold only " + cases.size() + " pins");
        return cases;
    }

    private static DynamicTest caseOf(String address, Pin pin) {
        String name = address + ", " + pin.output().key() + " " + pin.expectText() + " (" + pin.source().document().key() + ")";
        return DynamicTest.dynamicTest(name, () -> assertTrue(
                pin.holds(),
                () -> "computed " + pin.computed().text(6) + ", expected " + pin.expectText() + " within " + pin.toleranceText()));
    }

    @Test
    void whatIsMadeUpForAStoryIsKnownAsSuch() {
        Map<String, Boolean> madeUp = book().all().stream().collect(Collectors.toMap(Example::key, Example::madeUp));
        assertTrue(madeUp.get("can-the-main-fuse-break-it"), "an invented data sheet");
        assertTrue(madeUp.get("short-circuit-gentle-battery"), "an invented battery");
        assertEquals(false, madeUp.get("bench-drop"), "a row of a table and a tape measure");
        assertEquals(false, madeUp.get("lamp-cold"), "a textbook");
    }

    @Test
    void nearlyHalfAreAnswersThatAPublicationPrints() {
        List<Pin> pins = Stream.concat(book().all().stream().map(Example::pins), book().questions().stream().map(CheckedQuestion::pins))
                .flatMap(List::stream)
                .toList();
        long printed = pins.stream().filter(pin -> pin.kind() == PinKind.PRINTED).count();
        assertTrue(pins.size() >= 210, "the lessons hold " + pins.size() + " pins");
        assertTrue(printed >= 0.45 * pins.size(), printed + " of " + pins.size() + " pins are printed");
    }

    @Test
    void everyCalculatorIsWorkedInALesson() {
        Set<String> worked = book().all().stream().map(each -> each.calculator().description().key()).collect(Collectors.toSet());
        List<String> left = Catalogue.all().stream().map(each -> each.description().key()).filter(each -> !worked.contains(each)).toList();
        assertEquals(List.of(), left);
    }
}
