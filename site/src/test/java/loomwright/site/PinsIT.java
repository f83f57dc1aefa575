package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/** Every figure an example or a question was held against is met by what the browser works out. */
@ExtendWith(WithBrowser.class)
class PinsIT {
    @TestFactory
    Stream<DynamicTest> areMet(Browser browser) {
        ParityPage page = ParityPage.open(browser);
        List<DynamicTest> tests = new ArrayList<>();
        for (BuiltSite.Example example : BuiltSite.examples()) {
            for (Element pin : example.section().select(".pins li")) {
                String name = example.name() + ": " + pin.attr("data-result") + " " + pin.attr("data-expect");
                tests.add(DynamicTest.dynamicTest(name, () -> isMet(page, example, pin)));
            }
        }
        for (BuiltSite.Example question : BuiltSite.checkedQuestions()) {
            for (Element pin : question.section().select("li")) {
                String name = question.name() + ": " + pin.attr("data-result") + " " + pin.attr("data-expect");
                tests.add(DynamicTest.dynamicTest(name, () -> isMet(page, question, pin)));
            }
        }
        assertFalse(tests.isEmpty(), "no example is pinned");
        return tests.stream();
    }

    private static void isMet(ParityPage page, BuiltSite.Example example, Element pin) {
        Quantity expected = quantity(pin.attr("data-expect"));
        Quantity tolerance = quantity(pin.attr("data-tolerance"));
        Quantity computed = computed(page, example, pin.attr("data-result"));
        double apart = Math.abs(computed.in(expected.unit()).value() - expected.value());
        double allowed = Math.abs(tolerance.in(expected.unit()).value()) + 1e-9 * Math.abs(expected.value());
        assertTrue(
                apart <= allowed,
                "the browser gives " + computed.text(9) + ", expected " + expected.text() + " within " + tolerance.text());
    }

    private static Quantity computed(ParityPage page, BuiltSite.Example example, String result) {
        String answer = page.answers(example.calculator(), List.of(example.given())).get(0);
        String start = "raw " + result + " ";
        String line = answer.lines().filter(each -> each.startsWith(start)).findFirst().orElseThrow(() -> new AssertionError(answer));
        Unit unit = Catalogue.find(example.calculator()).description().output(result).unit();
        return Quantity.of(Double.parseDouble(line.substring(start.length())), unit);
    }

    private static Quantity quantity(String text) {
        Quantity quantity = QuantityText.readPrinted(text, Units.ONE).quantity();
        assertNotNull(quantity, "not a quantity: " + text);
        return quantity;
    }
}
