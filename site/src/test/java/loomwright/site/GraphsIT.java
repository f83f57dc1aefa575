package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.graph.Graphs;
import loomwright.markup.PictureMarkup;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;

/** The graph of an example follows the entries, in the page as on the JVM. */
@ExtendWith(WithBrowser.class)
class GraphsIT {
    /** For each calculator with a graph, a field and another text for it. */
    private static final Map<String, List<String>> CHANGES = Map.of(
            "voltage-drop", List.of("current", "7.5"),
            "time-current", List.of("current", "31"),
            "run-time", List.of("load-current", "6.5"),
            "day-energy", List.of("load-1-hours", "2.5"),
            "junction-temperature", List.of("current", "8.5"));

    private static final String TYPE =
            """
            const box = document.getElementById(arguments[0]);
            box.value = arguments[1];
            box.dispatchEvent(new InputEvent('input', {bubbles: true}));
            """;

    private static final String MARKED = "return document.getElementById(arguments[0]).matches('.typing, .old')";

    @TestFactory
    Stream<DynamicTest> followsTheEntries(Browser browser) {
        return CHANGES.keySet().stream().sorted().map(calculator -> DynamicTest.dynamicTest(calculator, () -> {
            String page = "calculators/" + calculator + ".html";
            Element section = BuiltSite.page(page).selectFirst("section.example");
            String key = section.attr("data-key");
            String graph = key + "-graph";
            browser.open(page);
            String before = inside(browser, graph);
            List<String> change = CHANGES.get(calculator);
            browser.run(TYPE, key + "-" + change.get(0), change.get(1));
            browser.until(() -> !(boolean) browser.run(MARKED, graph) && !inside(browser, graph).equals(before));
            assertEquals(List.of(), browser.messages());
            Map<String, String> entries = new LinkedHashMap<>(entries(browser, key));
            Calculator drawn = Catalogue.find(calculator);
            String onJvm = PictureMarkup.inside(graph, Graphs.draw(drawn, entries, Outcome.of(drawn, entries).working()));
            assertTrue(isSame(browser, graph, onJvm), () -> onJvm + "\nbut\n" + inside(browser, graph));
        }));
    }

    /** Without a calculator's program the printed graph stands, with its description and its figures. */
    @TestFactory
    Stream<DynamicTest> standsInThePage() {
        return CHANGES.keySet().stream().sorted().map(calculator -> DynamicTest.dynamicTest(calculator, () -> {
            Element figure = BuiltSite.page("calculators/" + calculator + ".html").selectFirst("figure.graph");
            assertFalse(figure.select("svg title").text().isBlank());
            assertFalse(figure.select("svg desc").text().isBlank());
            assertFalse(figure.select("table tbody tr").isEmpty());
        }));
    }

    private static String inside(Browser browser, String id) {
        return (String) browser.run("return document.getElementById(arguments[0]).innerHTML", id);
    }

    /** Whether the browser makes the same elements of the markup; the order of attributes does not count. */
    private static boolean isSame(Browser browser, String id, String markup) {
        return (boolean) browser.run(
                """
                const here = document.createElement('div');
                const there = document.createElement('div');
                here.innerHTML = document.getElementById(arguments[0]).innerHTML;
                there.innerHTML = arguments[1];
                // Whether a table is a stop of the tab key the page decides a moment later, by whether it scrolls.
                for (const each of [here, there]) { each.querySelectorAll('.scroll').forEach(table => table.removeAttribute('tabindex')); }
                return here.isEqualNode(there);
                """,
                id, markup);
    }

    private static Map<String, String> entries(Browser browser, String key) {
        Map<String, String> entries = new LinkedHashMap<>();
        Map<?, ?> fields = (Map<?, ?>) browser.run(
                """
                const entries = {};
                for (const box of document.querySelectorAll('#' + CSS.escape(arguments[0]) + ' form.try [id]')) {
                  if (!('value' in box) || box.type === 'reset' || box.type === 'button') { continue; }
                  const unit = document.getElementById(box.id + '-unit');
                  const text = unit && box.value !== '' ? box.value + ' ' + unit.value : box.value;
                  if (!box.id.endsWith('-unit')) { entries[box.id.slice(arguments[0].length + 1)] = text; }
                }
                return entries;
                """,
                key);
        fields.forEach((field, text) -> entries.put((String) field, (String) text));
        return entries;
    }
}
