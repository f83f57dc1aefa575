package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** The question of an example turned round, by keys alone: lesson 8, 2.5 mm² to the bench. */
@ExtendWith(WithBrowser.class)
class TurnedIT {
    private static final String KEY = "bench-drop";

    private Browser browser;
    private Form form;

    @BeforeEach
    void open(Browser shared) {
        browser = shared;
        form = new Form(browser, KEY);
        browser.open("lessons/08-voltage-drop.html");
        browser.touch("#" + KEY);
        browser.focus("#" + KEY + " .turned > summary");
        browser.press(Keys.ENTER);
        browser.until(() -> !form.value("turn-limit").isEmpty());
    }

    @AfterEach
    void nothingWentWrong() {
        assertEquals(List.of(), browser.messages());
    }

    private void choose(String field, String value) {
        browser.choose(KEY + "-" + field, value);
    }

    private void find(String unknown, String result, String limit) {
        choose("turn-find", unknown);
        choose("turn-result", result);
        form.type("turn-limit", limit);
        browser.press(Keys.ENTER);
    }

    @Test
    void theLongestRouteIsWorkedOutStepByStepAndPutIntoTheExample() {
        find("route-length", "drop-percent", "3 %");
        // 0.03 × 12 V ÷ 10 A ÷ 7.60 mΩ/m ÷ 2 = 2.368 m.
        assertTrue(form.text(".turned-answer .found").startsWith("Route length: at most 2.368 m."), form.text(".turned-answer .found"));
        assertEquals(5L, browser.run("return document.querySelectorAll('#bench-drop .turned-answer ol.steps > li').length"));
        browser.focus("#" + KEY + " [data-take]");
        browser.press(Keys.ENTER);
        browser.until(() -> form.isThere("td.own"));
        assertEquals("2.999 %", form.own("drop-percent"));
    }

    @Test
    void ofSizesTheLastThatPassesAndTheFirstThatDoesNotAreShown() {
        find("size", "drop-percent", "3 %");
        assertEquals(
                "6 mm² 2.198 % yes, 4 mm² 3.297 % no",
                browser.run("return [...document.querySelectorAll('#bench-drop .attempts tbody tr')].map(row =>"
                        + " [...row.children].map(cell => cell.textContent.replace(/\\u00a0/g, ' ')).join(' ')).join(', ')"));
    }

    @Test
    void aLimitThatCannotBeReadIsSaidAtItsField() {
        find("route-length", "drop-percent", "three");
        assertEquals("true", form.attribute("turn-limit", "aria-invalid"));
        assertTrue(form.text(".turned-answer .error").contains("has no number"));
        assertEquals("three", form.value("turn-limit"));
    }

    @Test
    void noResultButTheChecksCanBeWanted() {
        choose("turn-find", "current");
        choose("turn-result", "no-stop");
        browser.focus("#" + KEY + " .turn button");
        browser.press(Keys.ENTER);
        assertTrue(!form.text(".turned-answer .found").isEmpty());
    }
}
