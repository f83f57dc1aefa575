package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The projector view of each lesson: every screen whole on a projector and on a phone, moved by keys, kept in the address. */
@ExtendWith(WithBrowser.class)
class ProjectorIT {
    private static final String LESSON = "projector/08-voltage-drop.html";

    /** Fewer than one a minute of a lesson that is shown in an hour. */
    private static final int MOST_SCREENS = 40;

    private static final int[][] SIZES = {{1280, 720}, {360, 640}};
    /** A larger projector of the same shape shows the same, larger. */
    private static final int[][] ALL_SIZES = {{1280, 720}, {1920, 1080}, {360, 640}};

    /**
     * Goes through all screens and their steps, then through the further examples, and lists what is cut, what scrolls, what cannot be reached, and
     * what is set too small to read across a room.
     */
    private static final String CUT =
            """
            const phone = innerWidth < 600, main = document.querySelector('main'), wrong = [], seen = new Set();
            const total = document.querySelectorAll('.screen:not([data-further])').length;
            const now = () => document.querySelector('.screen.now');
            const check = () => {
              const screen = now(), name = location.hash + ' ' + screen.dataset.kind;
              seen.add(screen.id);
              const type = parseFloat(getComputedStyle(document.documentElement).fontSize);
              if (type < (phone ? 16 : innerHeight / 48)) { wrong.push(name + ': type ' + type); }
              if (main.scrollWidth > main.clientWidth + 1) { wrong.push(name + ': scrolls sideways'); }
              if (!phone && main.scrollHeight > main.clientHeight + 1) { wrong.push(name + ': higher than the screen: ' + main.scrollHeight + ' in ' + main.clientHeight + ' at ' + type); }
              const bottom = document.getElementById('mover').getBoundingClientRect().top;
              for (const side of screen.querySelectorAll('.beside > div')) {
                if (!phone && side.scrollHeight > side.clientHeight + 1) { wrong.push(name + ': lies over what follows: ' + side.textContent.slice(0, 60)); }
              }
              for (const cell of screen.querySelectorAll('.results th')) {
                const words = document.createRange(), text = cell.firstChild;
                for (const word of (text && text.data || '').matchAll(/\\p{L}+/gu)) {
                  words.setStart(text, word.index);
                  words.setEnd(text, word.index + word[0].length);
                  if (words.getClientRects().length > 1) { wrong.push(name + ': a torn word: ' + word[0]); }
                }
              }
              for (const part of screen.querySelectorAll('svg, math, p, li, td, th, dd')) {
                const box = part.getBoundingClientRect(), picture = part.matches('svg, math');
                if (box.width === 0 || part.closest(".gone")) { continue; }
                const outside = part.closest('.unseen, .scroll') === null || picture && !phone;
                if (outside && (box.left < -1 || box.right > innerWidth + 1)) { wrong.push(name + ': wider than the screen: ' + part.outerHTML.slice(0, 80)); }
                if (!phone && (box.top < -1 || box.bottom > bottom + 1)) { wrong.push(name + ': below the screen: ' + part.outerHTML.slice(0, 80)); }
                if (part.matches('svg') && box.height > bottom) { wrong.push(name + ': picture higher than the screen'); }
                if (part.matches('svg.drawing') && box.height < innerHeight * (phone ? 0.2 : 0.3)) { wrong.push(name + ': picture only ' + box.height + ' high'); }
              }
            };
            const press = () => document.body.dispatchEvent(new KeyboardEvent('keydown', {key: 'PageDown', bubbles: true}));
            for (let before = ''; before !== location.hash; press()) {
              before = location.hash;
              check();
              if (now().dataset.further) { wrong.push(before + ': nobody asked for a further example'); }
            }
            if (seen.size !== total) { wrong.push(seen.size + ' of ' + total + ' screens are passed'); }
            for (const link of document.querySelectorAll('#outline a')) {
              if (!document.querySelector(link.hash).dataset.further) { continue; }
              for (link.click(); now().dataset.further; press()) { check(); }
            }
            if (seen.size !== document.querySelectorAll('.screen').length) { wrong.push('not every screen can be reached'); }
            return wrong.slice(0, 8).join('\\n');
            """;

    @TestFactory
    Stream<DynamicTest> everyScreenIsWhole(Browser browser) {
        List<String> views = BuiltSite.pages().stream().filter(page -> page.startsWith("projector/")).toList();
        long lessons = BuiltSite.pages().stream().filter(page -> page.startsWith("lessons/")).count();
        assertEquals(lessons, views.size());
        return views.stream().map(page -> DynamicTest.dynamicTest(page, () -> {
            browser.light();
            for (int[] size : page.equals(LESSON) ? ALL_SIZES : SIZES) {
                browser.size(size[0], size[1]);
                browser.visit(page);
                assertEquals("", browser.run(CUT), size[0] + " x " + size[1]);
            }
            int screens = BuiltSite.page(page).select(".screen:not([data-further])").size();
            assertTrue(screens <= MOST_SCREENS, screens + " screens");
            assertEquals(List.of(), browser.messages());
        }));
    }

    @Test
    void onAPhoneTheTitleOfTheScreenStandsAboveTheButtons(Browser browser) {
        browser.size(390, 844);
        browser.visit(LESSON);
        browser.press(Keys.PAGE_DOWN);
        Number wide = (Number) browser.run("return document.querySelector('#where').getBoundingClientRect().width");
        assertTrue(wide.intValue() > 340, wide + " px for the number and the title of the screen");
        assertTrue(((Number) browser.run("return document.querySelector('#where .titled').getBoundingClientRect().width")).intValue() > 60, "the title is seen");
    }

    private static final String NOW =
            "return document.querySelector('.screen.now').id + ' ' + location.hash + ' ' + document.querySelector('#where > span').textContent";

    private static String screen(Browser browser) {
        return (String) browser.run(NOW);
    }

    private static String said(Browser browser) {
        return browser.find("#where").getText();
    }

    private static void press(Browser browser, CharSequence... keys) {
        browser.press(keys);
    }

    @Test
    void keysGoOnAndBackAndReloadingStays(Browser browser) {
        browser.open("lessons/08-voltage-drop.html");
        browser.find("a[href*='projector/']").click();
        long count = (long) browser.run("return document.querySelectorAll('.screen:not([data-further])').length");
        assertEquals("screen-1 #screen-1 1 of " + count, screen(browser));
        press(browser, Keys.ARROW_RIGHT);
        press(browser, " ");
        press(browser, Keys.PAGE_DOWN);
        press(browser, Keys.ARROW_LEFT);
        assertEquals("screen-3 #screen-3 3 of " + count, screen(browser));
        browser.driver().navigate().refresh();
        assertEquals("screen-3 #screen-3 3 of " + count, screen(browser));
        new Actions(browser.driver()).keyDown(Keys.SHIFT).sendKeys(" ").keyUp(Keys.SHIFT).perform();
        assertEquals("screen-2 #screen-2 2 of " + count, screen(browser));
        press(browser, Keys.END);
        press(browser, Keys.ARROW_RIGHT);
        assertEquals("screen-" + count + " #screen-" + count + " " + count + " of " + count, screen(browser));
        press(browser, Keys.HOME);
        press(browser, Keys.ARROW_LEFT);
        assertEquals("screen-1 #screen-1 1 of " + count, screen(browser));
        assertEquals(List.of(), browser.messages());
    }

    /** Steps of the working of the first example, as they stand in the lesson. */
    private static List<String> steps() {
        return BuiltSite.page("lessons/08-voltage-drop.html").select("#bench-drop .steps > li > .words").eachText();
    }

    private static String working() {
        return BuiltSite.page(LESSON).select(".screen:has(.steps)").first().id();
    }

    private static long visible(Browser browser, String selector) {
        return (long) browser.run("return [...document.querySelectorAll('.screen.now ' + arguments[0])].filter(each => each.checkVisibility()).length", selector);
    }

    @Test
    void stepsAppearOneAfterAnotherOnOneScreenAndAreSaid(Browser browser) {
        String screen = working();
        browser.open(LESSON + "#" + screen);
        for (int step = 1; step <= steps().size(); step++) {
            assertEquals(Math.min(step, 5), visible(browser, ".steps > li:not(.gone) .gives"), "steps in sight");
            assertEquals(1, visible(browser, ".steps > li .words"), "only the last in full");
            assertTrue(said(browser).contains(step + " of " + steps().size() + ": "), said(browser));
            assertTrue(steps().get(step - 1).startsWith(said(browser).replaceFirst(".*" + step + " of \\d+: ", "")), said(browser));
            press(browser, Keys.PAGE_DOWN);
        }
        assertFalse(screen(browser).startsWith(screen + " "), "after the last step the next screen");
        press(browser, Keys.PAGE_UP);
        press(browser, Keys.PAGE_UP);
        int last = steps().size() - 1;
        assertTrue(screen(browser).startsWith(screen + " #" + screen + "." + last + " "), screen(browser));
        browser.driver().navigate().refresh();
        assertTrue(screen(browser).startsWith(screen + " #" + screen + "." + last + " "), "stays at its step: " + screen(browser));
    }

    @Test
    void anAnswerComesAtThePressAfterItsQuestion(Browser browser) {
        String question = BuiltSite.page(LESSON).select(".screen[data-kind=question]").first().id();
        browser.open(LESSON + "#" + question);
        assertEquals(0, visible(browser, ".answer"));
        press(browser, " ");
        assertEquals(1, visible(browser, ".answer"));
        assertTrue(said(browser).endsWith("Answer"), said(browser));
    }

    @Test
    void theTitleOfEachScreenIsSaid(Browser browser) {
        browser.open(LESSON);
        assertEquals("status", browser.find("#where").getAttribute("role"));
        press(browser, Keys.PAGE_DOWN);
        assertTrue(said(browser).endsWith(": The laptop that stopped charging"), said(browser));
        press(browser, Keys.PAGE_DOWN);
        String label = browser.find(".screen.now").getAttribute("aria-label");
        assertTrue(label.startsWith("Screen 3 of ") && label.endsWith(said(browser).replaceFirst("^3 of \\d+: ", "")), label);
    }

    @Test
    void theOutlineJumpsToSectionsAndToFurtherExamples(Browser browser) {
        browser.open(LESSON);
        assertFalse(browser.find("#outline").isDisplayed());
        browser.find("#jump").click();
        assertEquals("Start", browser.run("return document.activeElement.textContent"));
        List<String> places = browser.driver().findElements(By.cssSelector("#outline a")).stream().map(WebElement::getText).toList();
        assertTrue(places.containsAll(List.of("Out and back", "2.5 mm² to the bench", "Further example: The lamp at the mast-head", "In short")), places.toString());
        browser.driver().findElement(By.linkText("Further example: The lamp at the mast-head")).click();
        assertFalse(browser.find("#outline").isDisplayed());
        assertTrue(screen(browser).endsWith(" Further example"), screen(browser));
        assertEquals("mast-head-lamp", browser.find(".screen.now").getAttribute("data-further"));
        while (screen(browser).endsWith(" Further example")) {
            press(browser, Keys.PAGE_DOWN);
        }
        assertTrue(screen(browser).matches("screen-\\d+ .*"), "then on with the lesson");
        browser.find("#jump").click();
        press(browser, Keys.ESCAPE);
        assertFalse(browser.find("#outline").isDisplayed());
        assertEquals("jump", browser.run("return document.activeElement.id"));
    }

    @Test
    void buttonsAndFingersMoveToo(Browser browser) {
        browser.open(LESSON + "#screen-1");
        browser.find("#on").click();
        press(browser, " ");
        assertTrue(screen(browser).startsWith("screen-3 "), () -> "the space bar on the button presses it once: " + screen(browser));
        browser.find("#back").click();
        assertTrue(screen(browser).startsWith("screen-2 "), () -> screen(browser));
        swipe(browser, 300, 100);
        assertTrue(screen(browser).startsWith("screen-3 "), () -> screen(browser));
        swipe(browser, 100, 300);
        assertTrue(screen(browser).startsWith("screen-2 "), () -> screen(browser));
        swipe(browser, 100, 120);
        assertTrue(screen(browser).startsWith("screen-2 "), () -> "a touch that hardly moves: " + screen(browser));
    }

    private static void swipe(Browser browser, int from, int to) {
        browser.run("const main = document.querySelector('main');"
                + "const at = x => new Touch({identifier: 1, target: main, clientX: x, clientY: 200});"
                + "main.dispatchEvent(new TouchEvent('touchstart', {bubbles: true, touches: [at(arguments[0])], changedTouches: [at(arguments[0])]}));"
                + "main.dispatchEvent(new TouchEvent('touchend', {bubbles: true, touches: [], changedTouches: [at(arguments[1])]}))", from, to);
    }

    @Test
    void anAddressOfAHeadingShowsItsScreen(Browser browser) {
        browser.open(LESSON + "#out-and-back");
        assertTrue((boolean) browser.run("return document.querySelector('.screen.now').contains(document.getElementById('out-and-back'))"));
    }

    @Test
    void everythingOfTheLessonIsThere() {
        String lesson = BuiltSite.page("lessons/08-voltage-drop.html").select(".caution, .task").text().replaceAll("Caution|Do it|\\d", "");
        String view = BuiltSite.page(LESSON).text().replaceAll("Caution|Do it|\\d", "");
        for (String sentence : lesson.split("[.:] ")) {
            assertTrue(view.contains(sentence.strip()), "not on a screen: " + sentence);
        }
        int steps = BuiltSite.page("lessons/08-voltage-drop.html").select(".steps > li").size();
        assertEquals(steps, BuiltSite.page(LESSON).select(".screen[data-kind=step] .steps > li").size());
        assertEquals(
                BuiltSite.page("lessons/08-voltage-drop.html").select("svg.drawing").size(), BuiltSite.page(LESSON).select("svg.drawing").size());
    }

    @Test
    void withoutScriptsTheScreensFollowEachOther(Browser browser) {
        browser.open("about.html");
        browser.scripts(false);
        browser.visit(LESSON);
        assertEquals(0L, browser.run("return [...document.querySelectorAll('.screen')].filter(each => each.getBoundingClientRect().height < 20).length"));
        assertFalse((boolean) browser.run("return document.getElementById('on').checkVisibility()"), "a button that does nothing");
    }

    @Test
    void noScreenBreaksARule(Browser browser) throws IOException {
        try (Audit audit = new Audit(browser)) {
            browser.open(LESSON);
            Number kinds = (Number) browser.run("return document.querySelectorAll('.screen').length");
            for (int i = 1; i <= kinds.intValue(); i += 7) {
                browser.run("location.hash = 'screen-' + arguments[0]", i);
                browser.until(() -> screen(browser).startsWith("screen-"));
                assertEquals("", audit.violations(), "screen " + i);
            }
            browser.dark();
            assertEquals("", audit.violations("color-contrast"));
            browser.scripts(false);
            browser.visit(LESSON);
            browser.scripts(true);
            assertEquals("", audit.violations(), "all screens below each other");
        }
        // the audit asks for the style sheet, which the policy of the page refuses
        browser.messages();
    }

    @AfterEach
    void scriptsOn(Browser browser) {
        browser.scripts(true);
        browser.light();
    }
}
