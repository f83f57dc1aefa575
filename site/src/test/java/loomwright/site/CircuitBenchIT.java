package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** What a reader of "Your circuit" has in sight, on a laptop and on a phone, and what is said to those who hear the page. */
@ExtendWith(WithBrowser.class)
class CircuitBenchIT {
    private static final List<String> SHEETS = List.of("results", "schedule", "parts", "labels", "test-sheet", "drilling");
    private static final List<String> PANES = List.of("drawing", "part", "verdict");

    /** The share of an element's height that lies in the window and is not covered by anything. */
    private static final String SEEN =
            """
            const seen = (element) => {
              const box = element.getBoundingClientRect();
              let rows = 0;
              for (let i = 0; i < 10; i++) {
                const top = document.elementFromPoint(box.left + Math.min(12, box.width / 2), box.top + box.height * (i + 0.5) / 10);
                rows += top && (element.contains(top) || top.contains(element) && top.id !== 'circuit-bar') ? 1 : 0;
              }
              return rows / 10;
            };
            """;

    private static CircuitOnPage opened(Browser browser, int width, int height) {
        CircuitOnPage page = CircuitOnPage.fresh(browser);
        browser.size(width, height);
        page.again();
        return page;
    }

    @Test
    void thePageIsNeverTallerThanItMayBe(Browser browser) {
        for (int[] size : new int[][] {{1366, 768, 7000}, {390, 844, 12_000}}) {
            CircuitOnPage page = opened(browser, size[0], size[1]);
            int highest = 0;
            for (String pane : PANES) {
                page.press(pane);
                for (String sheet : SHEETS) {
                    page.sheet(sheet);
                    int height = ((Number) browser.run("return document.documentElement.scrollHeight")).intValue();
                    highest = Math.max(highest, height);
                    assertTrue(height <= size[2], () -> height + " px tall at " + size[0] + " with " + pane + " and " + sheet);
                    assertEquals(1L, browser.run("return [...document.querySelectorAll('#circuit-sheets > section')].filter(each => each.offsetHeight > 0).length"));
                }
            }
            System.out.println("[bench] at most " + highest + " px tall at " + size[0]);
        }
    }

    /** Added by keys from the foot of the form: the page stays with the bench and does not run on to the sheets. */
    @Test
    void onALaptopTheFormOfAPartJustAddedIsInSight(Browser browser) {
        CircuitOnPage page = opened(browser, 1366, 768);
        page.tabTo(".plan .pick");
        page.type(Keys.ARROW_DOWN, Keys.ARROW_DOWN, Keys.ENTER);
        page.tabTo("[data-does=add]");
        page.type(Keys.ENTER);
        browser.until(() -> page.said().contains("was added"));
        browser.later("requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(arguments[0], 100)))");
        assertEquals("part-title", browser.run("return document.activeElement.id"));
        double seen = ((Number) browser.run(SEEN + "return seen(document.getElementById('part-title'))")).doubleValue();
        assertTrue(seen > 0.85, "of the title of the part added is seen " + seen);
    }

    @Test
    void onALaptopVerdictDrawingAndFieldAreInSightWhileAnyFieldHasTheFocus(Browser browser) {
        CircuitOnPage page = opened(browser, 1366, 768);
        for (String part : List.of("battery", "main-fuse", "bench-run", "outlet-switch", "usb-pair")) {
            if (!(boolean) browser.run("return document.querySelector('.plan [data-part=\"' + arguments[0] + '\"]') !== null", part)) {
                continue;
            }
            page.choose(part);
            browser.run("document.querySelectorAll('#circuit-form details').forEach(each => each.open = true)");
            long fields = (long) browser.run("return document.querySelectorAll('#circuit-form :is(input, select)').length");
            assertTrue(fields > 3, part);
            for (int i = 0; i < fields; i++) {
                Map<?, ?> seen = (Map<?, ?>) browser.run(
                        SEEN + "const field = document.querySelectorAll('#circuit-form :is(input, select)')[arguments[0]]; field.focus();"
                                + " const plan = document.getElementById('circuit-plan').getBoundingClientRect();"
                                + " return {field: seen(field), verdict: seen(document.querySelector('#circuit-bar [data-pane=verdict]')), name: field.id,"
                                + " row: seen(document.querySelector('.plan [aria-pressed=true]')), title: seen(document.getElementById('part-title')),"
                                + " found: seen(document.querySelector('#circuit-findings h2')),"
                                + " plan: Math.min(plan.bottom, innerHeight) - Math.max(plan.top, 0)};",
                        i);
                for (String each : List.of("field", "verdict", "row", "title", "found")) {
                    assertTrue(number(seen.get(each)) > 0.85, part + " " + seen.get("name") + ": " + each + " " + seen);
                }
                assertTrue(number(seen.get("plan")) >= 400, seen::toString);
            }
        }
    }

    @Test
    void onAPhoneTheVerdictIsOnePressAwayWhereverOneStands(Browser browser) {
        CircuitOnPage page = opened(browser, 390, 844);
        for (String pane : PANES) {
            page.press(pane);
            long height = ((Number) browser.run("return document.documentElement.scrollHeight - document.querySelector('footer, .end').offsetHeight")).longValue();
            for (long y = 0; y < height - 844; y += 600) {
                double seen = number(browser.run(
                        SEEN + "window.scrollTo({top: arguments[0], behavior: 'instant'}); return seen(document.querySelector('#circuit-bar [data-pane=verdict]'))", y));
                assertTrue(seen > 0.85, pane + " at " + y + ": " + seen);
            }
        }
        page.press("drawing");
        browser.find("#circuit-bar [data-pane=verdict]").click();
        assertTrue(number(browser.run(SEEN + "return seen(document.getElementById('findings'))")) > 0.85, "its list begins in sight");
    }

    /** At both sizes, and with a keyboard over half of a phone. */
    @Test
    void theBarNeverHidesTheFocus(Browser browser) {
        for (int[] size : new int[][] {{1366, 768}, {390, 844}, {390, 420}}) {
            CircuitOnPage page = opened(browser, size[0], size[1]);
            page.choose("bench-run");
            browser.run("document.querySelector('#circuit-form [data-smallest]').click()");
            for (int i = 0; i < 45; i++) {
                page.type(Keys.TAB);
                Map<?, ?> focus = (Map<?, ?>) browser.run(SEEN + "const at = document.activeElement; return {seen: at.offsetHeight > 200 ? 1 : seen(at), name: at.id + ' ' + at.textContent.slice(0, 30)}");
                assertTrue(number(focus.get("seen")) >= 0.5, size[0] + " x " + size[1] + ", stop " + i + ": " + focus);
            }
        }
    }

    @Test
    void onAPhoneAPartOpensAtItsFirstFieldAndTheWayBackLeadsToThePart(Browser browser) {
        CircuitOnPage page = opened(browser, 390, 844);
        page.choose("strip-run");
        assertEquals("part-title", browser.run("return document.activeElement.id"));
        for (String id : List.of("part-title", "part-name")) {
            assertTrue(number(browser.run(SEEN + "return seen(document.getElementById(arguments[0]))", id)) > 0.85, id);
        }
        page.press("back");
        assertEquals("strip-run", browser.run("return document.activeElement.closest('[data-part]').dataset.part"));
        assertTrue(number(browser.run(SEEN + "return seen(document.activeElement)")) > 0.85, "in sight");
    }

    @Test
    void onlyWhatHasToBeChangedOrDecidedBearsAMark(Browser browser) {
        CircuitOnPage page = opened(browser, 1366, 768);
        assertMarks(browser);
        page.choose("bench-run");
        page.enter("size", "1 mm2");
        assertTrue(page.row("bench-run").contains("Change this"), page.row("bench-run"));
        assertMarks(browser);
    }

    /** A mark at each part that a stop or a caution leads to, and at no other. */
    private static void assertMarks(Browser browser) {
        assertEquals("", browser.run(
                """
                const listed = new Set([...document.querySelectorAll('#circuit-findings :is([data-verdict=stop], [data-verdict=caution]) .moves [data-go]')].map(each => each.dataset.go));
                const marked = [...document.querySelectorAll('.plan .mark')].map(each => each.closest('[data-part]').dataset.part);
                return marked.filter(each => !listed.has(each)).join() + [...listed].filter(each => !marked.includes(each)).join();
                """));
    }

    @Test
    void theStatusLineNamesWhatIsNewAndWhatIsSettled(Browser browser) {
        CircuitOnPage page = opened(browser, 1366, 768);
        page.choose("strip-run");
        page.enter("route-length", "60 m");
        browser.until(() -> page.said().startsWith("New to decide: ") && page.said().contains("Voltage at the load, E1 LED strip"));
        assertTrue(page.said().matches(".* Now no things to change, \\d things to decide\\."), page.said());
        page.enter("route-length", "3 m");
        browser.until(() -> page.said().startsWith("Settled: "));
        page.enter("route-length", "3.1 m");
        browser.until(() -> page.said().startsWith("Nothing new: no things to change, "));
        page.enter("size", "0.5 mm2");
        browser.until(() -> page.said().startsWith("New to change: "));
        assertTrue(page.verdict().matches("[1-9]\\d* to change .*"), page.verdict());
        page.undo();
        assertTrue(page.said().startsWith("Undone.") && page.said().contains("Settled: "), page.said());
        page.enter("route-length", "900 m");
        browser.until(() -> page.said().startsWith("Look again: Route length"));
        assertEquals("1 to look at again", browser.text("#circuit-bar [data-verdict=fault]"));
    }

    @Test
    void halfANumberIsNeitherTakenNorSpoken(Browser browser) {
        CircuitOnPage page = opened(browser, 1366, 768);
        page.choose("strip-run");
        browser.focus("#part-route-length");
        page.overwrite("60");
        assertEquals("", page.said());
        assertTrue(page.row("strip-run").contains("route 3 m"), page.row("strip-run"));
        assertTrue((boolean) browser.run("return document.querySelector('#circuit-verdicts.typing > .oldnote') !== null"), "marked as from before");
        page.type(Keys.TAB);
        browser.until(() -> page.row("strip-run").contains("route 60 m") && page.said().startsWith("New to decide: "));
        assertFalse((boolean) browser.run("return document.querySelector('.typing') !== null"));
    }

    @Test
    void undoStandsBesideWhatIsSaid(Browser browser) {
        for (int[] size : new int[][] {{1366, 768}, {390, 844}}) {
            CircuitOnPage page = opened(browser, size[0], size[1]);
            page.choose("strip-run");
            page.press("remove");
            assertTrue(page.said().startsWith("One part was taken out. Undo brings back what is gone."), page.said());
            assertTrue(number(browser.run(SEEN + "return seen(document.querySelector('[data-does=undo]'))")) > 0.85);
            page.press("undo");
            assertTrue(page.row("strip-run").contains("route 3 m"));
        }
    }

    /** Battery alone, then only the first choice, until a load stands there. */
    @Test
    void theFirstChoiceLeadsFromTheBatteryToALoadAndOnToTheNextCircuit(Browser browser) {
        CircuitOnPage page = opened(browser, 1366, 768);
        page.press("empty");
        for (int i = 0; i < 6; i++) {
            page.press("next");
        }
        assertEquals(
                "supply protection conductor panel protection conductor load",
                browser.run("return JSON.parse(localStorage.getItem('loomwright-circuit').split('\\u001e')[0]).parts.map(each => each.kind).join(' ')"));
        assertTrue(browser.text("#circuit-form [data-does=branch]").startsWith("Add the next circuit at P1 "), browser.text("#circuit-form"));
        page.press("branch");
        assertEquals(10L, browser.run("return document.querySelectorAll('.plan li').length"));
    }

    @Test
    void aFigureToGetLeadsToItsField(Browser browser) {
        CircuitOnPage page = opened(browser, 1366, 768);
        long figures = (long) browser.run("return document.querySelectorAll('#circuit-findings .figures-to-get [data-field]').length");
        assertTrue(figures > 0);
        for (int i = 0; i < figures; i++) {
            String field = (String) browser.run(
                    "const button = document.querySelectorAll('#circuit-findings .figures-to-get [data-field]')[arguments[0]]; button.click(); return button.dataset.field", i);
            assertEquals("part-" + field, browser.run("return document.activeElement.id"));
        }
        page.again();
    }

    /** Colours are the system's own there: the part chosen has an outline of its own. */
    @Test
    void thePartChosenIsSeenInForcedColours(Browser browser) {
        CircuitOnPage page = opened(browser, 1366, 768);
        browser.command("Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", "forced-colors", "value", "active"))));
        page.choose("strip-run");
        assertEquals("strip-run", browser.run(
                "return [...document.querySelectorAll('.plan .pick')].filter(each => getComputedStyle(each).outlineStyle === 'solid')"
                        + ".map(each => each.closest('[data-part]').dataset.part).join()"));
        browser.light();
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }
}
