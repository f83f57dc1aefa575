package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** The page of a whole circuit without a pointer. */
@ExtendWith(WithBrowser.class)
class CircuitKeyboardIT {
    /**
     * Seconds for one key by a person who has to look for each; for getting ready; for pointing at something and pressing; for the hand
     * between keys and pointer. source: S. K. Card, T. P. Moran, A. Newell, The keystroke-level model for user performance time with
     * interactive systems, Communications of the ACM 23 (7), 1980, table of operators, as quoted by a course (the paper was not seen): K 1.20 (worst typist), M 1.35, P 1.10, H 0.40.
     */
    private static final double KEY = 1.2;

    private static final double READY = 1.35;
    private static final double POINT = 1.1;
    private static final double HAND = 0.4;

    private CircuitOnPage page;
    /** What the entries so far would take such a person with a pointer and a keyboard, who knows what to enter. */
    private double seconds;

    @BeforeEach
    void open(Browser browser) {
        page = CircuitOnPage.fresh(browser);
    }

    @Test
    void aRunIsFoundInTheDrawingAndChanged(Browser browser) {
        page.tabTo(".plan .pick");
        page.type(Keys.ARROW_DOWN, Keys.ENTER);
        assertEquals("1/10 Lead to the main fuse", browser.text("#part-title"));
        assertEquals("part-title", browser.run("return document.activeElement.id"));
        page.tabTo("#part-size");
        page.overwrite("25 mm2");
        browser.until(() -> page.row("main-lead").contains("25 mm2, route 0.15 m"));
    }

    @Test
    void theMainBranchOfTheScenarioIsEnteredFromABatteryAlone(Browser browser) {
        page.tabTo("#circuit-begin > summary");
        page.type(Keys.ENTER);
        page.tabTo("[data-does=empty]");
        page.type(Keys.ENTER);
        add("Conductor", "Lead to the main fuse");
        fill("#part-size", "10 mm2");
        fill("#part-route-length", "0.15 m");
        add("Fuse-link", "Main fuse");
        choose("#part-device", "Current-limiting class T");
        fill("#part-rating", "50 A");
        add("Fuse-link", "Breaker of the bench circuit");
        choose("#part-device", "Breaker");
        fill("#part-rating", "30 A");
        add("Conductor", "Link to the relay");
        fill("#part-size", "10 mm2");
        fill("#part-route-length", "0.15 m");
        add("Switching", "Relay of the outlets");
        choose("#part-switching", "a relay");
        fill("#part-continuous-current", "50 A");
        fill("#part-coil-resistance", "90 Ω");
        add("Joints", "Joints in the battery box");
        fill("#part-joint-resistance", "0.2 mΩ");
        add("Fuse-link", "Fuse-link of the accessory outlet");
        fill("#part-rating", "15 A");
        add("Conductor", "Run to the accessory outlet");
        fill("#part-size", "6 mm2");
        fill("#part-route-length", "4.2 m");
        add("Load", "Accessory outlet");
        fill("#part-power", "105.9 W");
        browser.until(() -> page.row("load-1").contains("E1 Accessory outlet"));
        assertEquals(10L, browser.run("return document.querySelectorAll('.plan li').length"));
        assertTrue(page.row("load-1").contains("105.9 W at 12 V At most "), page.row("load-1"));
        System.out.printf(Locale.ROOT, "Main branch of the scenario, slowest typist of the model: %.0f s%n", seconds);
        assertTrue(seconds < 600, seconds + " s");
        for (String entered : new String[] {"\"50 A\"", "\"class-t\"", "\"marine-breaker\"", "\"relay\"", "\"0.2 mΩ\"", "\"4.2 m\"", "\"105.9 W\""}) {
            assertTrue(page.kept().contains(entered), () -> entered + " not in " + page.kept());
        }
    }

    /** Adds a part behind the one shown and names it. */
    private void add(String kind, String name) {
        page.tabTo("#part-kind");
        page.type(kind);
        page.type(Keys.TAB, Keys.ENTER);
        seconds += READY + 3 * (POINT + KEY);
        fill("#part-name", name);
    }

    private void fill(String box, String text) {
        page.tabTo(box);
        page.overwrite(text);
        page.type(Keys.TAB);
        seconds += READY + POINT + KEY + 2 * HAND + text.length() * KEY;
    }

    private void choose(String list, String words) {
        page.tabTo(list);
        page.type(words);
        page.type(Keys.TAB);
        seconds += READY + 2 * (POINT + KEY);
    }
}
