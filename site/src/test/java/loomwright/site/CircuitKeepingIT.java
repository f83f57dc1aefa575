package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WindowType;

/** How circuits are kept, carried and refused: whatever happens, the reader's work is not lost unasked. */
@ExtendWith(WithBrowser.class)
class CircuitKeepingIT {
    private CircuitOnPage page;

    @BeforeEach
    void open(Browser browser) {
        page = CircuitOnPage.fresh(browser);
    }

    @Test
    void whatWasChangedIsThereWhenThePageIsOpenedAgain(Browser browser) {
        page.choose("bench-run");
        page.enter("route-length", "6.25 m");
        page.fill("circuit-name", "Heron <b>hut</b>");
        page.fill("drill-panel-width", "140 mm");
        page.sheet("test-sheet");
        page.fill("reading-battery", "12.7");
        assertFalse(page.asksBeforeLeaving(), "all is kept");
        page.again();
        assertTrue(page.row("bench-run").contains("6.25 m"), page.row("bench-run"));
        assertEquals("Heron <b>hut</b>", page.value("circuit-name"));
        assertEquals("140", page.value("drill-panel-width"));
        page.sheet("test-sheet");
        assertEquals("12.7", page.value("reading-battery"));
        assertEquals(0L, browser.run("return document.querySelectorAll('main b').length"), "what was typed is never markup");
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void whatCannotBeUsedIsKeptTooAndStandsInItsField(Browser browser) {
        page.choose("bench-run");
        page.enter("route-length", "5 parsecs");
        assertFalse(page.asksBeforeLeaving(), "it is kept");
        String before = page.kept();
        page.again();
        assertTrue(browser.text("#circuit-faults").contains("parsecs"), browser.text("#circuit-faults"));
        browser.run("document.querySelector('#circuit-faults [data-go]').click()");
        assertEquals("5 parsecs", page.value("part-route-length"));
        assertEquals(before, page.kept());
        page.press("beside");
        assertEquals("", browser.text("#circuit-faults"), "the copy is of the circuit as it can be used");
        page.fill("circuit-shelf", "1");
        assertTrue(browser.text("#circuit-faults").contains("parsecs"));
        page.press("punt");
        assertEquals("", browser.text("#circuit-faults"));
        page.undo();
        assertTrue(browser.text("#circuit-faults").contains("parsecs"), "it comes back with its circuit");
        page.undo();
        assertEquals("", browser.text("#circuit-faults"));
        page.again();
        assertEquals("", browser.text("#circuit-faults"), "what was taken back stays away");
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void aNameThatCannotBeUsedIsNotLostUnasked(Browser browser) {
        page.fill("circuit-name", "x".repeat(81));
        assertTrue(browser.text("#circuit-name-fault").contains("80 characters"), browser.text("#circuit-name-fault"));
        assertTrue(page.asksBeforeLeaving());
        page.fill("circuit-name", "Heron hut");
        assertFalse(page.asksBeforeLeaving());
    }

    @Test
    void readingsAreStepsAndGoAlongInFileAndLink(Browser browser) {
        page.sheet("test-sheet");
        page.fill("reading-battery", "12.8");
        page.fill("reading-bench-run", "many");
        assertTrue(page.kept().contains("\"reading\": \"many\""), page.kept());
        page.undo();
        browser.until(() -> page.value("reading-bench-run").isEmpty());
        page.undo();
        browser.until(() -> page.value("reading-battery").isEmpty());
        page.redo();
        browser.until(() -> page.value("reading-battery").equals("12.8"));
        page.press("link");
        String link = page.value("circuit-link");
        page.press("punt");
        browser.visit(CircuitOnPage.PAGE + link.substring(link.indexOf('#')));
        page.press("take");
        page.sheet("test-sheet");
        assertEquals("12.8", page.value("reading-battery"));
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void aFileIsPutBesideTheCircuitOnTheDesk(Browser browser, @TempDir Path folder) throws IOException {
        page.choose("bench-run");
        page.enter("route-length", "6.25 m");
        Path punt = Path.of(System.getProperty("site.folder")).resolve("../../../content/circuits/reedmere-punt.json").normalize();
        browser.run("document.getElementById('circuit-others').open = true");
        browser.find("#circuit-upload-beside").sendKeys(punt.toString());
        browser.until(() -> page.said().contains("at a place of its own"));
        assertEquals("2", page.value("circuit-shelf"));
        assertTrue(page.row("lead").contains("4 mm²"), page.row("lead"));
        page.fill("circuit-shelf", "1");
        assertTrue(page.row("bench-run").contains("6.25 m"), page.row("bench-run"));
    }

    @Test
    void theFileIsNamedAfterTheCircuit(Browser browser) {
        browser.run("HTMLAnchorElement.prototype.click = function () { window.handed = this.download; }");
        for (String[] named : new String[][] {{"Heron <b>hut</b>, 2nd!", "heron-b-hut-b-2nd.json"}, {"Ørå", "r.json"}, {"???", "circuit.json"}, {"", "circuit.json"}}) {
            page.fill("circuit-name", named[0]);
            page.press("download");
            assertEquals(named[1], browser.run("return window.handed"));
        }
    }

    @Test
    void aHostileFileIsRefusedWithItsReasonAndTheWorkStays(Browser browser, @TempDir Path folder) throws IOException {
        String before = page.row("bench-run");
        for (String hostile : List.of(
                "{\"format\":\"loomwright-circuit\",\"version\":1,\"name\":\"x\",\"parts\":[{\"id\":\"<img src=x onerror=alert(1)>\",\"kind\":\"supply\"}]}",
                "{\"format\":\"loomwright-circuit\",\"version\":9,\"name\":\"\",\"parts\":[]}",
                "[".repeat(5000),
                "<script>document.title='taken'</script>")) {
            upload(browser, Files.writeString(folder.resolve("hostile.json"), hostile));
            browser.until(() -> browser.text("#circuit-notice").contains("The file was refused. What stands here stays as it is."));
            assertTrue(browser.text("#circuit-notice li").length() > 20, browser.text("#circuit-notice"));
            assertEquals(0L, browser.run("return document.querySelectorAll('main img, main script').length"));
            assertEquals(before, page.row("bench-run"));
            page.press("dismiss");
        }
        upload(browser, Files.writeString(folder.resolve("large.json"), " ".repeat(4_000_000)));
        browser.until(() -> page.said().contains("larger than 3 MB"));
        assertEquals(before, page.row("bench-run"));
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void aFileWhoseNamesAreScriptsIsOpenedAndNothingRuns(Browser browser, @TempDir Path folder) throws IOException {
        String name = "<img src=x onerror=\\\"document.title='taken'\\\"></option></script>";
        upload(browser, Files.writeString(folder.resolve("named.json"),
                "{\"format\":\"loomwright-circuit\",\"version\":1,\"name\":\"" + name + "\",\"parts\":["
                        + "{\"id\":\"b\",\"kind\":\"supply\",\"name\":\"" + name + "\"},"
                        + "{\"id\":\"f\",\"kind\":\"protection\",\"fed-by\":\"b\",\"name\":\"" + name + "\"},"
                        + "{\"id\":\"l\",\"kind\":\"load\",\"fed-by\":\"f\",\"power\":\"10 W\",\"name\":\"" + name + "\"}]}"));
        browser.until(() -> page.said().contains("The file was opened"));
        page.press("beside");
        browser.until(() -> browser.text("#circuit-beside").contains("onerror"));
        assertTrue(page.row("l").contains("<img src=x"), page.row("l"));
        assertEquals(0L, browser.run("return document.querySelectorAll('main img, main script').length"));
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void aLinkCarriesTheCircuitAndDoesNotTakeThePlaceOfOnesOwnUnasked(Browser browser) {
        page.choose("bench-run");
        page.enter("route-length", "7.75 m");
        page.press("link");
        String link = page.value("circuit-link");
        page.enter("route-length", "3 m");
        browser.visit(CircuitOnPage.PAGE + link.substring(link.indexOf('#')));
        assertTrue(page.row("bench-run").contains("route 3 m"), page.row("bench-run"));
        page.press("take");
        assertTrue(page.row("bench-run").contains("route 7.75 m"), page.row("bench-run"));
        page.undo();
        assertTrue(page.row("bench-run").contains("route 3 m"), page.row("bench-run"));
    }

    @Test
    void twoTabsNeverWriteOverEachOtherUnasked(Browser browser) {
        page.choose("bench-run");
        page.enter("route-length", "2 m");
        String first = browser.driver().getWindowHandle();
        browser.driver().switchTo().newWindow(WindowType.TAB);
        browser.go(BuiltSite.address(CircuitOnPage.PAGE));
        page.choose("bench-run");
        page.enter("route-length", "9.5 m");
        String others = page.kept();
        assertTrue(others.contains("\"9.5 m\""), others);
        browser.driver().close();
        browser.driver().switchTo().window(first);
        page.enter("route-length", "3 m");
        assertEquals(others, page.kept());
        assertTrue(browser.text("#circuit-notice").contains("another tab"), browser.text("#circuit-notice"));
        page.press("take");
        assertTrue(page.row("bench-run").contains("route 9.5 m"), page.row("bench-run"));
        page.undo();
        assertTrue(page.row("bench-run").contains("route 3 m"), page.row("bench-run"));
    }

    @Test
    void storageThatIsForbiddenOrFullIsSaidAndTheFileOffered(Browser browser) {
        for (String script : List.of(
                "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('denied', 'SecurityError'); }})",
                "Storage.prototype.setItem = function () { throw new DOMException('full', 'QuotaExceededError'); }")) {
            Runnable takeBack = page.before(script);
            page.again();
            page.choose("bench-run");
            page.enter("route-length", "8 m");
            assertTrue(page.row("bench-run").contains("route 8 m"), page.row("bench-run"));
            assertTrue(browser.text("#circuit-kept").contains("Not kept") && browser.text("#circuit-kept").contains("Download the file"));
            page.press("beside");
            assertTrue(page.asksBeforeLeaving(), "neither is kept");
            assertEquals("2", page.value("circuit-shelf"));
            page.fill("circuit-shelf", "1");
            assertTrue(page.row("bench-run").contains("route 8 m"), "both are there while the tab is open");
            assertEquals(List.of(), browser.messages());
            takeBack.run();
        }
    }

    @Test
    void twoCircuitsStandSideBySide(Browser browser) {
        page.press("punt");
        page.press("beside");
        page.choose("pump-run");
        page.enter("size", "12 AWG");
        browser.until(() -> browser.text("#circuit-beside").contains("2: Reedmere punt, copy (on the desk)"));
        String drops = (String) browser.run(
                "return [...document.querySelectorAll('#circuit-beside tr')].find(row => row.textContent.startsWith('Largest drop')).textContent");
        assertTrue(drops.matches("Largest drop to a load([0-9.]+).V(?!\\1)[0-9.]+.V"), drops);
        page.again();
        assertEquals("2", page.value("circuit-shelf"), "the one used last");
        assertTrue(page.row("pump-run").contains("12 AWG"));
        page.fill("circuit-shelf", "1");
        assertTrue(page.row("pump-run").contains("10 AWG"), page.row("pump-run"));
        page.press("discard");
        page.press("take");
        assertEquals("2", page.value("circuit-shelf"));
        assertEquals("", page.kept());
        assertFalse(browser.text("#circuit-beside").contains("(on the desk)"), "one alone is not compared");
    }

    private static void upload(Browser browser, Path file) {
        browser.run("document.getElementById('circuit-files').open = true");
        browser.find("#circuit-upload").sendKeys(file.toString());
    }
}
