package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** While a field of an example has the focus, what the example comes to can be seen, and nothing lies over the field; and no page is taller than need be. */
@ExtendWith(WithBrowser.class)
class InSightIT {
    private static final int[][] WINDOWS = {{1366, 768}, {390, 844}};

    /**
     * Goes to every field of every example of the page, each fold open, and says what is out of sight. Also from below and from above: the
     * window is first scrolled to where the end, then to where the start of the example stands.
     */
    private static final String MISSED =
            """
            const missed = [], whole = box => box.height > 0 && box.top >= -1 && box.bottom <= innerHeight + 1;
            let fields = 0;
            for (const section of document.querySelectorAll('section.example')) {
              const upshot = section.querySelector('.upshot'), main = upshot.querySelector('td .value'), verdict = upshot.querySelector('.worst strong');
              for (const field of section.querySelectorAll('form.try :is(input, select)')) {
                if (!field.checkVisibility()) { continue; }
                fields++;
                for (const block of ['end', 'start']) {
                  section.scrollIntoView({block});
                  document.activeElement.blur();
                  field.focus();
                  const box = field.getBoundingClientRect();
                  const say = what => missed.push(section.dataset.key + ' ' + field.id + ', from its ' + block + ': ' + what);
                  if (!whole(main.getBoundingClientRect())) { say('the main result is out of sight'); }
                  if (verdict && !whole(verdict.getBoundingClientRect())) { say('the verdict is out of sight'); }
                  if (!whole(box)) { say('the field is out of sight: ' + box.top + ' to ' + box.bottom); }
                  for (const y of [box.top + 3, box.bottom - 3]) {
                    const there = document.elementFromPoint(box.left + box.width / 2, y);
                    if (there !== field) { say('covered by ' + (there && there.tagName + '.' + there.className)); }
                  }
                }
              }
            }
            return [fields, missed.slice(0, 20)];
            """;

    /** Unfolds all and waits until the page has seen it. */
    private static final String UNFOLD =
            """
            document.querySelectorAll('details.further, form.try details').forEach(each => each.open = true);
            requestAnimationFrame(() => requestAnimationFrame(arguments[arguments.length - 1]));
            """;

    /** Each page is opened once at each size for both looks at it. */
    @TestFactory
    Stream<DynamicTest> noPageIsTallerThanNeedBeAndTheUpshotIsInSightWhileAFieldIsEdited(Browser browser) {
        return pages().flatMap(page -> Stream.of(WINDOWS).map(window -> DynamicTest.dynamicTest(page + " " + window[0], () -> {
            open(browser, page, window);
            assertHeight(browser, page, window);
            browser.later(UNFOLD);
            List<?> found = (List<?>) browser.run(MISSED);
            assertTrue(((Number) found.get(0)).intValue() > 0, "no field");
            assertEquals(List.of(), found.get(1));
        })));
    }

    private static void assertHeight(Browser browser, String page, int[] window) {
        boolean wide = window[0] > 1000;
        int most = page.startsWith("calculators/") ? wide ? 3_500 : 6_500
                : page.contains("/08-") ? wide ? 18_000 : 30_000 : wide ? 24_000 : 38_000;
        int height = ((Number) browser.run("return document.documentElement.scrollHeight")).intValue();
        assertTrue(height <= most, height + " px at " + window[0]);
        assertEquals(browser.run("return document.documentElement.clientWidth"), browser.run("return document.documentElement.scrollWidth"), "scrolls sideways");
    }

    /** Before anything is changed the first screen shows the main results, the verdict and the first fields; a field that is pressed keeps the upshot in sight and is not covered by it. */
    @Test
    void onALaptopTheFirstScreenOfACalculatorShowsItsUpshotAndItsFirstFields(Browser browser) {
        browser.scripts(true);
        browser.size(1366, 768);
        browser.visit("calculators/voltage-drop.html");
        assertEquals(true, browser.run("return document.querySelector('.upshot .worst strong').getBoundingClientRect().bottom <= innerHeight"));
        String fields = "[...document.querySelectorAll('form.try input')].filter(each => each.checkVisibility() && each.getBoundingClientRect().bottom < innerHeight)";
        String bare = "const box = each.getBoundingClientRect(); return document.elementFromPoint(box.left + box.width / 2, box.bottom - 3) === each;";
        assertTrue(((Number) browser.run("return " + fields + ".length")).intValue() >= 3, "fields in the window");
        assertEquals(true, browser.run("return " + fields + ".every(each => { " + bare + " })"));
        WebElement last = (WebElement) browser.run("return " + fields + ".pop()");
        last.click();
        browser.until(() -> (boolean) browser.run("const each = arguments[0]; " + bare, last));
        assertEquals(true, browser.run("const box = document.querySelector('.upshot .worst strong').getBoundingClientRect(); return box.bottom <= innerHeight"));
    }

    /** 420 px is what a keyboard leaves of a phone: the first result and the verdict still stand above the field. */
    @Test
    void aKeyboardOnTheScreenLeavesTheUpshotInSight(Browser browser) {
        open(browser, "lessons/08-voltage-drop.html", new int[] {390, 420});
        browser.later(UNFOLD);
        assertEquals(List.of(), ((List<?>) browser.run(MISSED)).get(1));
    }

    /** The names of the results stay beside them once they are those of the reader's own figures. */
    @Test
    void onAPhoneOwnResultsKeepTheirNames(Browser browser) {
        open(browser, "lessons/08-voltage-drop.html", WINDOWS[1]);
        browser.focus("section.example form.try input");
        browser.overwrite("20");
        browser.press(Keys.TAB);
        browser.until(() -> (boolean) browser.run("return document.querySelector('section.example .upshot .own') !== null"));
        assertEquals(List.of(), browser.run(
                "return [...document.querySelector('section.example .upshot').querySelectorAll('tbody th')]"
                        + ".filter(name => name.getBoundingClientRect().width < 80).map(name => name.textContent)"));
    }

    @Test
    void oneTabPassesOverAnExample(Browser browser) {
        browser.open("lessons/08-voltage-drop.html");
        browser.run("const past = document.querySelector('.past'); past.focus();");
        assertEquals("Past this example", browser.run("return document.activeElement.textContent"));
        browser.press(Keys.ENTER);
        browser.press(Keys.TAB);
        assertFalse((boolean) browser.run("return document.activeElement.closest('section.example') === document.querySelector('section.example')"));
    }

    @Test
    void aFurtherExampleOpensByItsAddress(Browser browser) {
        String page = "lessons/08-voltage-drop.html";
        String key = BuiltSite.page(page).selectFirst("details.further section.example").attr("data-key");
        browser.open(page);
        assertEquals(false, browser.run("return document.getElementById(arguments[0]).checkVisibility()", key));
        browser.visit(page + "#" + key);
        browser.until(() -> (boolean) browser.run("return document.getElementById(arguments[0]).checkVisibility()", key));
        browser.until(() -> (boolean) browser.run("return document.querySelector('#' + arguments[0] + ' form.try') !== null", key));
    }

    private static Stream<String> pages() {
        return BuiltSite.examples().stream().map(BuiltSite.Example::page).distinct().filter(page -> page.matches("(lessons|calculators)/.*"));
    }

    private static void open(Browser browser, String page, int[] window) {
        browser.scripts(true);
        browser.light();
        browser.size(window[0], window[1]);
        browser.visit(page);
        browser.touchAll();
    }
}
