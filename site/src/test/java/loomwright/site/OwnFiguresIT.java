package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** An example of a lesson worked with the figures of the reader's own circuit. */
@ExtendWith(WithBrowser.class)
class OwnFiguresIT {
    private static final String FIGURES = "loomwright-circuit-figures";

    @AfterEach
    void forget(Browser browser) {
        browser.run("localStorage.clear()");
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void aRunIsChosenByNameAndOneChoiceGoesBack(Browser browser) {
        browser.open("lessons/08-voltage-drop.html");
        browser.run(
                "localStorage.setItem(arguments[0], 'name=Run%20to%20the%20galley&route-length=6%20m&size=4%20mm%C2%B2&current=5%20A&temperature=20%20%C2%B0C')",
                FIGURES);
        browser.open("lessons/08-voltage-drop.html");
        browser.touch("#bench-drop");
        Form bench = new Form(browser, "bench-drop");
        browser.choose("bench-drop-figures-of", "Run to the galley");
        browser.until(() -> bench.isThere("td.own"));
        // ISO 6722-1: 4.71 mΩ/m × 12 m × 5 A = 0.2826 V.
        assertEquals("0.2826 V", bench.own("drop"));
        browser.choose("bench-drop-figures-of", "");
        browser.until(() -> !bench.isThere("td.own"));
        assertEquals("10", bench.value("current"));
    }

    @Test
    void withoutACircuitThereIsNoChoice(Browser browser) {
        browser.open("lessons/08-voltage-drop.html");
        browser.run("localStorage.clear()");
        browser.open("lessons/08-voltage-drop.html");
        browser.touch("#bench-drop");
        assertFalse(new Form(browser, "bench-drop").isThere(".own-figures"));
    }

    @Test
    void ofACircuitThatIsGoneNothingIsLeft(Browser browser) {
        CircuitOnPage page = CircuitOnPage.fresh(browser);
        page.choose("bench-run");
        page.enter("route-length", "6.25 m");
        assertTrue(figures(browser).contains("6.25"), figures(browser));
        page.press("empty");
        assertEquals("", figures(browser), "a battery of which nobody said anything is no circuit");
        page.press("undo");
        assertTrue(figures(browser).contains("6.25"), figures(browser));
        page.press("discard");
        browser.until(() -> (boolean) browser.run("return [...document.querySelectorAll('#circuit-notice button')].some(each => each.textContent === 'Remove it')"));
        browser.run("[...document.querySelectorAll('#circuit-notice button')].find(each => each.textContent === 'Remove it').click()");
        assertEquals("", figures(browser), "the circuit that everybody begins with is not the reader's own");
    }

    private static String figures(Browser browser) {
        return (String) browser.run("return localStorage.getItem(arguments[0]) || ''", FIGURES);
    }

    @Test
    void thePageOfTheCircuitLeavesItsFiguresForTheLessons(Browser browser) {
        CircuitOnPage page = CircuitOnPage.fresh(browser);
        page.choose("bench-run");
        page.enter("route-length", "6.25 m");
        String figures = (String) browser.run("return localStorage.getItem(arguments[0])", FIGURES);
        assertTrue(figures.contains("route-length=") && figures.contains("design-current="), figures);
    }

    /** A link handed on when {@code ambient} was still the warmth around the fuse-link; the re-rating sheet lets 40 A carry 34 A at 65 °C. */
    @Test
    void aLinkOfTheVersionBeforeKeepsTheWarmthOfItsFuseLink(Browser browser) {
        browser.open("calculators/fuse-choice.html#ambient=65%20%C2%B0C&continuous=no&design-current=34%20A&fuse-type=large-blade&insulation-temperature=t105&size=8%20AWG");
        Form form = new Form(browser, (String) browser.run("return document.querySelector('section.example').dataset.key"));
        browser.until(() -> form.isThere("td.own"));
        assertEquals("65 °C", form.value("fuse-ambient"));
        assertEquals("30", form.value("ambient"));
        assertEquals("40 A", form.own("least-rating"));
    }
}
