package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What a reader does with the page of a whole circuit. */
@ExtendWith(WithBrowser.class)
class CircuitPageIT {
    private CircuitOnPage page;

    @BeforeEach
    void open(Browser browser) {
        page = CircuitOnPage.fresh(browser);
    }

    @Test
    void aBadEntryNamesFieldLimitAndRemedyKeepsWhatWasTypedAndLeavesTheLastGoodCircuitMarkedAsOld(Browser browser) {
        page.choose("bench-run");
        page.enter("route-length", "900 m");
        String error = browser.text("#part-route-length-error");
        assertTrue(error.contains("Route length") && error.contains("must be"), error);
        assertEquals("900 m", page.value("part-route-length"));
        assertTrue((boolean) browser.run("return document.querySelector('#circuit-sheets.old') !== null"));
        assertTrue(page.row("bench-run").contains("6 mm², route 4.2 m"), page.row("bench-run"));
        assertTrue(page.row("bench-run").contains("Needs another look"));
        page.choose("feed");
        page.choose("bench-run");
        assertEquals("900 m", page.value("part-route-length") + " " + page.value("part-route-length-unit"), "kept while looking elsewhere");
        page.enter("route-length", "5 m");
        assertFalse((boolean) browser.run("return document.querySelector('.old, #part-route-length-error') !== null"));
    }

    @Test
    void fiftyStepsAreUndoneAndDoneAgain() {
        page.choose("bench-run");
        page.enter("route-length", "1 m");
        String first = page.kept();
        for (int i = 1; i < 50; i++) {
            page.enter("route-length", (1 + i) + " m");
        }
        String last = page.kept();
        assertTrue(last.contains("\"50 m\""), last);
        for (int i = 1; i < 50; i++) {
            page.undo();
        }
        assertEquals(first, page.kept());
        page.undo();
        assertTrue(page.kept().contains("\"4.2 m\""));
        for (int i = 0; i < 50; i++) {
            page.redo();
        }
        assertEquals(last, page.kept());
    }

    @Test
    void everyKindOfChangeIsUndone() {
        page.press("punt");
        String punt = page.kept();
        page.choose("lead");
        page.press("branch");
        assertTrue(page.row("load-1").contains("10 W"), page.row("load-1"));
        page.press("remove");
        page.choose("lead");
        page.fill("part-kind", "joint");
        page.press("insert");
        page.press("prune");
        page.fill("circuit-name", "Another punt");
        page.fill("drill-panel-width", "120 mm");
        page.press("empty");
        for (int i = 0; i < 7; i++) {
            page.undo();
        }
        assertEquals(punt, page.kept());
    }

    @Test
    void theSmallestSizeThatPassesIsTakenSaidAndUndone(Browser browser) {
        page.choose("strip-run");
        page.enter("size", "16 mm2");
        browser.run("document.querySelector('#circuit-form [data-smallest]').click()");
        assertTrue(page.said().contains("Run to the LED strip: 16 mm2 was changed to "), page.said());
        assertFalse(page.row("strip-run").contains("16 mm2"), page.row("strip-run"));
        page.undo();
        assertTrue(page.row("strip-run").contains("16 mm2"), page.row("strip-run"));
    }

    @Test
    void findingsStandWorstFirstWithFigureSourceAndRemedy(Browser browser) {
        page.choose("bench-run");
        page.enter("size", "1 mm2");
        browser.run("document.getElementById('circuit-passed').open = true");
        browser.until(() -> browser.text("#circuit-passed").contains("Load on the device: "));
        String verdicts = (String) browser.run(
                "return [...document.querySelectorAll('#circuit-findings .finding')].map(each => each.dataset.verdict).join(' ')");
        assertTrue(verdicts.matches("(stop )+(caution )*(not-known )+(passed ?)+"), verdicts);
        assertEquals("", browser.run(
                "return [...document.querySelectorAll('#circuit-findings .finding[data-verdict=stop], #circuit-findings .finding[data-verdict=caution]')]"
                        + ".filter(each => !each.querySelector('.remedy') || !each.querySelector('.source')).map(each => each.textContent).join('; ')"));
        assertEquals("", browser.run(
                "return [...document.querySelectorAll('#circuit-findings .finding[data-verdict=not-known]')]"
                        + ".filter(each => !each.textContent.includes('Look at')).map(each => each.textContent).join('; ')"));
    }

    @Test
    void aReadingTooLowIsExplained(Browser browser) {
        page.sheet("test-sheet");
        page.fill("reading-battery", "12.8");
        page.fill("reading-bench-run", "9");
        browser.until(() -> browser.text("#circuit-compared").contains("An extra resistance of"));
        page.fill("reading-bench-run", "many");
        browser.until(() -> browser.text("#circuit-compared").contains("Look again:"));
    }

    @Test
    void thePanelToBeDrilledFollowsWhatIsTyped(Browser browser) {
        page.fill("drill-first-centre", "30 mm");
        browser.until(() -> browser.text("#drilling-sheet").contains("Frame 1"));
        assertTrue((boolean) browser.run("return document.querySelector('#drilling-sheet [data-verdict=stop]') !== null"), "over the frame");
        page.fill("drill-panel-width", "wide");
        assertTrue(browser.text("#drill-panel-width-error").contains("Width of the panel"));
        assertEquals("wide", page.value("drill-panel-width"));
        page.undo();
        page.undo();
        assertEquals("60", page.value("drill-first-centre"));
        assertFalse((boolean) browser.run("return document.querySelector('#drilling-sheet [data-verdict=stop]') !== null"));
    }

    @Test
    void everyStateBreaksNoRuleAndFitsTheSmallestPhone(Browser browser) throws IOException {
        try (Audit audit = new Audit(browser)) {
            page.again();
            page.press("beside");
            page.choose("outlet-switch");
            page.enter("continuous-current", "none");
            page.sheet("test-sheet");
            page.fill("reading-battery", "12.8");
            page.press("link");
            page.press("download");
            page.press("discard");
            browser.run("document.querySelectorAll('details').forEach(each => each.open = true)");
            assertEquals("", audit.violations());
            browser.dark();
            assertEquals("", audit.violations("color-contrast"));
            browser.width(320);
            Number width = (Number) browser.run("return document.documentElement.scrollWidth");
            assertTrue(width.intValue() <= 320, () -> width + " wide");
        }
    }
}
