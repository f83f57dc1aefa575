package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** What neither the story nor the reader said is marked as assumed, and can be emptied. */
@ExtendWith(WithBrowser.class)
class AssumedIT {
    private static final String LESSON = "lessons/09-ampacity.html";
    private static final String EMPTY = " [data-empties]";

    @AfterEach
    void nothingWentWrong(Browser browser) {
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void everyFigureOfACalculatorPageIsMarkedWithoutScriptsToo() {
        for (BuiltSite.Example example : BuiltSite.examples()) {
            if (example.page().startsWith("calculators/")) {
                for (Element entry : example.section().select("> .given [data-input]")) {
                    assertTrue(entry.select("dd > .assumed").text().startsWith("assumed"), example.page() + ": " + entry);
                }
            }
        }
    }

    @Test
    void aCalculatorAsksForWhatWasEmptiedAndKeepsWhatWasTyped(Browser browser) {
        browser.open("calculators/voltage-drop.html");
        Form form = new Form(browser, "voltage-drop");
        assertTrue(form.text("#voltage-drop-current-assumed").startsWith("assumed, as in Lesson"));
        assertTrue(form.attribute("current", "aria-describedby").endsWith("voltage-drop-current-assumed"));
        form.enter("current", "7");
        assertEquals("", form.text("#voltage-drop-current-assumed"));
        empty(browser, "voltage-drop");
        assertEquals("7", form.value("current"));
        assertEquals("", form.value("route-length"));
        assertEquals("", form.value("size"));
        assertEquals("one-way", form.value("length-counts"));
        assertEquals("assumed", form.text("#voltage-drop-length-counts-assumed"));
        assertTrue(form.text("#voltage-drop-temperature-assumed").startsWith("assumed: "), form.text("#voltage-drop-temperature-assumed"));
        assertEquals("summary", form.focus());
        assertTrue(form.text(".summary").contains("Route length is empty"), form.text(".summary"));
        assertTrue(form.isThere(".outcome.old"));
        form.enter("route-length", "3");
        form.enter("size", "2.5");
        assertFalse(form.isThere(".error"));
        assertTrue(form.isThere("td.own"));
    }

    @Test
    void emptyingLeavesTheStorysFiguresAndTheResults(Browser browser) {
        browser.open(LESSON);
        Element section = BuiltSite.page(LESSON).selectFirst("section.example:has([data-input=ambient][data-unsaid])");
        String key = section.attr("data-key");
        Element said = section.selectFirst(".given [data-input]:not([data-unsaid])");
        assertTrue(said.select(".assumed").isEmpty(), "the story's figure is the story's");
        browser.touch("section.example");
        Form form = new Form(browser, key);
        String before = form.text(".outcome");
        String figure = form.value(said.attr("data-input"));
        assertEquals("assumed", form.text("#" + key + "-ambient-assumed"));
        empty(browser, key);
        assertEquals("", form.value("ambient"));
        assertEquals("assumed: 40 °C", form.text("#" + key + "-ambient-assumed"));
        assertEquals(figure, form.value(said.attr("data-input")));
        assertEquals(before, form.text(".outcome"), "what is taken unasked is the same");
        browser.focus("#" + key + " button[type=reset]");
        browser.press(Keys.ENTER);
        browser.until(() -> form.text("#" + key + "-ambient-assumed").equals("assumed"));
        assertEquals("40", form.value("ambient"));
    }

    private static void empty(Browser browser, String key) {
        browser.focus("#" + key + EMPTY);
        browser.press(Keys.ENTER);
    }
}
