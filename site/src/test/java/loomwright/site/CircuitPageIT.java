package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** What a reader does with the page of a whole circuit. */
@ExtendWith(WithBrowser.class)
class CircuitPageIT {
    private static final String PAGE = "your-circuit.html";

    @BeforeEach
    void nothingIsKept(Browser browser) {
        browser.open(PAGE);
        browser.run("localStorage.clear()");
        browser.visit(PAGE);
    }

    @Test
    void aRunIsFoundChangedAndJoinedToANewLoadByKeyboardAlone(Browser browser) {
        Actions keys = new Actions(browser.driver());
        browser.run("document.querySelector('.plan .pick[tabindex=\"0\"]').focus()");
        keys.sendKeys(Keys.ARROW_DOWN, Keys.ARROW_DOWN, Keys.ENTER).perform();
        assertEquals("1/10 Lead to the main fuse", browser.text("#part-title"));
        assertEquals("part-title", browser.run("return document.activeElement.id"));
        tabTo(browser, "part-size");
        key(browser, "a");
        keys.sendKeys("25 mm2").perform();
        assertTrue(row(browser, "main-lead").contains("25 mm2, route 0.15 m"), row(browser, "main-lead"));
        tabTo(browser, "part-kind");
        keys.sendKeys("Load", Keys.TAB, Keys.ENTER).perform();
        assertEquals("E7 Load “load-1”", browser.text("#part-title"));
        tabTo(browser, "part-power");
        key(browser, "a");
        keys.sendKeys("45").perform();
        assertTrue(row(browser, "load-1").contains("45 W at 12 V"), row(browser, "load-1"));
        browser.until(() -> browser.text("#circuit-sheets").contains("E7 Load “load-1”"));
    }

    @Test
    void aBadEntryNamesFieldLimitAndRemedyKeepsWhatWasTypedAndLeavesTheLastGoodCircuitMarkedAsOld(Browser browser) {
        choose(browser, "bench-run");
        enter(browser, "route-length", "900 m");
        String error = browser.text("#part-route-length-error");
        assertTrue(error.contains("Route length") && error.contains("must be"), error);
        assertEquals("900 m", browser.run("return document.getElementById('part-route-length').value"));
        assertTrue((boolean) browser.run("return document.querySelector('#circuit-sheets.old') !== null"));
        assertTrue(row(browser, "bench-run").contains("6 mm², route 4.2 m"), row(browser, "bench-run"));
        assertTrue(row(browser, "bench-run").contains("Needs another look"));
        choose(browser, "feed");
        choose(browser, "bench-run");
        String again = (String) browser.run(
                "return document.getElementById('part-route-length').value + ' ' + document.getElementById('part-route-length-unit').value");
        assertEquals("900 m", again, "kept while looking elsewhere");
        enter(browser, "route-length", "5 m");
        assertFalse((boolean) browser.run("return document.querySelector('.old, #part-route-length-error') !== null"));
    }

    @Test
    void fiftyStepsAreUndoneAndDoneAgain(Browser browser) {
        choose(browser, "bench-run");
        String first = kept(browser, "1 m");
        for (int i = 1; i < 50; i++) {
            enter(browser, "route-length", (1 + i) + " m");
        }
        String last = kept(browser);
        assertTrue(last.contains("\"50 m\""), last);
        for (int i = 1; i < 50; i++) {
            key(browser, "z");
        }
        assertEquals(first, kept(browser));
        key(browser, "z");
        assertTrue(kept(browser).contains("\"4.2 m\""));
        for (int i = 0; i < 50; i++) {
            key(browser, "y");
        }
        assertEquals(last, kept(browser));
    }

    @Test
    void whatWasChangedIsThereWhenThePageIsOpenedAgain(Browser browser) {
        choose(browser, "bench-run");
        enter(browser, "route-length", "6.25 m");
        browser.run("const box = document.getElementById('circuit-name'); box.value = 'Heron <b>hut</b>';"
                + " box.dispatchEvent(new Event('input', {bubbles: true}));");
        browser.visit(PAGE);
        assertTrue(row(browser, "bench-run").contains("6.25 m"), row(browser, "bench-run"));
        assertEquals("Heron <b>hut</b>", browser.run("return document.getElementById('circuit-name').value"));
        assertEquals(0L, browser.run("return document.querySelectorAll('main b').length"), "what was typed is never markup");
    }

    @Test
    void aHostileFileIsRefusedWithItsReasonAndTheWorkStays(Browser browser, @TempDir Path folder) throws IOException {
        String before = row(browser, "bench-run");
        for (String hostile : List.of(
                "{\"format\":\"loomwright-circuit\",\"version\":1,\"name\":\"x\",\"parts\":[{\"id\":\"<img src=x onerror=alert(1)>\",\"kind\":\"supply\"}]}",
                "{\"format\":\"loomwright-circuit\",\"version\":9,\"name\":\"\",\"parts\":[]}",
                "[".repeat(5000),
                "<script>document.title='taken'</script>")) {
            Path file = Files.writeString(folder.resolve("hostile.json"), hostile);
            browser.run("document.getElementById('circuit-files').open = true");
            browser.find("#circuit-upload").sendKeys(file.toString());
            browser.until(() -> browser.text("#circuit-notice").contains("The file was refused. What stands here stays as it is."));
            assertTrue(browser.text("#circuit-notice li").length() > 20, browser.text("#circuit-notice"));
            assertEquals(0L, browser.run("return document.querySelectorAll('main img, main script').length"));
            assertEquals(before, row(browser, "bench-run"));
            browser.run("document.querySelector('[data-does=dismiss]').click()");
        }
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void aLinkCarriesTheCircuitAndDoesNotTakeThePlaceOfOnesOwnUnasked(Browser browser) {
        choose(browser, "bench-run");
        enter(browser, "route-length", "7.75 m");
        browser.run("document.querySelector('[data-does=link]').click()");
        String link = (String) browser.run("return document.getElementById('circuit-link').value");
        enter(browser, "route-length", "3 m");
        browser.visit(PAGE + link.substring(link.indexOf('#')));
        assertTrue(row(browser, "bench-run").contains("route 3 m"), row(browser, "bench-run"));
        browser.find("#circuit-notice [data-does=take]").click();
        assertTrue(row(browser, "bench-run").contains("route 7.75 m"), row(browser, "bench-run"));
        key(browser, "z");
        assertTrue(row(browser, "bench-run").contains("route 3 m"), row(browser, "bench-run"));
    }

    @Test
    void whatAnotherTabKeptIsNotWrittenOverUnasked(Browser browser) {
        choose(browser, "bench-run");
        enter(browser, "route-length", "2 m");
        String others = kept(browser).replace("\"2 m\"", "\"9.5 m\"");
        browser.run("localStorage.setItem('loomwright-circuit', arguments[0])", others);
        enter(browser, "route-length", "3 m");
        assertEquals(others, kept(browser));
        assertTrue(browser.text("#circuit-notice").contains("another tab"), browser.text("#circuit-notice"));
        browser.find("#circuit-notice [data-does=take]").click();
        assertTrue(row(browser, "bench-run").contains("route 9.5 m"), row(browser, "bench-run"));
        key(browser, "z");
        assertTrue(row(browser, "bench-run").contains("route 3 m"), row(browser, "bench-run"));
    }

    @Test
    void theSmallestSizeThatPassesIsTakenAndSaid(Browser browser) {
        choose(browser, "strip-run");
        enter(browser, "size", "16 mm2");
        browser.run("document.querySelector('#circuit-form [data-smallest]').click()");
        String said = browser.text("#circuit-said");
        assertTrue(said.contains("Run to the LED strip: 16 mm2 was changed to "), said);
        assertFalse(row(browser, "strip-run").contains("16 mm2"), row(browser, "strip-run"));
    }

    @Test
    void aReadingTooLowIsExplained(Browser browser) {
        read(browser, "battery", "12.8");
        read(browser, "bench-run", "9");
        browser.until(() -> browser.text("#circuit-compared").contains("An extra resistance of"));
        read(browser, "bench-run", "many");
        browser.until(() -> browser.text("#circuit-compared").contains("Look again:"));
    }

    @Test
    void everySheetStandsOnPaper(Browser browser) throws IOException {
        choose(browser, "bench-run");
        enter(browser, "route-length", "4.35 m");
        browser.until(() -> browser.text("#circuit-sheets").contains("4.35"));
        Map<?, ?> printed = (Map<?, ?>) browser.command("Page.printToPDF", Map.of("paperWidth", 8.27, "paperHeight", 11.69));
        try (PDDocument paper = Loader.loadPDF(Base64.getDecoder().decode((String) printed.get("data")))) {
            String text = new PDFTextStripper().getText(paper).replaceAll("[\\s\u00a0]+", "");
            for (String words : List.of(
                    "G1Battery", "Scheduleofcircuits", "Q1Breakerofthebenchcircuit", "Conductorstocut", "4.35m", "Labels", "Testsheet",
                    "Signature", "Date", "Cautionsforthedayofthework")) {
                assertTrue(text.contains(words), () -> "not on paper: " + words);
            }
            assertFalse(text.contains("Smallestsizethatpasses"), "buttons are not printed");
        }
    }

    @Test
    void everyStateBreaksNoRuleAndFitsTheSmallestPhone(Browser browser) throws IOException {
        try (Audit audit = new Audit(browser)) {
            browser.visit(PAGE);
            browser.run("document.querySelectorAll('details').forEach(each => each.open = true)");
            choose(browser, "outlet-switch");
            enter(browser, "continuous-current", "none");
            browser.run("document.querySelectorAll('details').forEach(each => each.open = true)");
            read(browser, "battery", "12.8");
            browser.run("document.querySelector('[data-does=link]').click()");
            browser.run("document.querySelector('[data-does=download]').click()");
            assertEquals("", audit.violations());
            browser.dark();
            assertEquals("", audit.violations("color-contrast"));
            browser.width(320);
            Number width = (Number) browser.run("return document.documentElement.scrollWidth");
            assertTrue(width.intValue() <= 320, () -> width + " wide");
        }
    }

    private static void tabTo(Browser browser, String id) {
        for (int i = 0; i < 60; i++) {
            if (browser.run("return document.activeElement.id").equals(id)) {
                return;
            }
            new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
        }
        throw new AssertionError("the Tab key does not lead to " + id);
    }

    private static void choose(Browser browser, String id) {
        browser.run("document.querySelector('.plan [data-part=\"' + arguments[0] + '\"] .pick').click()", id);
    }

    /** Types into a field and leaves it. */
    private static void enter(Browser browser, String key, String text) {
        browser.run(
                "const box = document.getElementById('part-' + arguments[0]); box.focus(); box.value = arguments[1];"
                        + " box.dispatchEvent(new Event('input', {bubbles: true})); box.dispatchEvent(new Event('change', {bubbles: true}));",
                key, text);
    }

    private static void read(Browser browser, String id, String text) {
        browser.run(
                "const box = document.getElementById('reading-' + arguments[0]); box.value = arguments[1];"
                        + " box.dispatchEvent(new Event('input', {bubbles: true}));",
                id, text);
    }

    private static void key(Browser browser, String letter) {
        new Actions(browser.driver()).keyDown(Keys.CONTROL).sendKeys(letter).keyUp(Keys.CONTROL).perform();
    }

    private static String row(Browser browser, String id) {
        return browser.text(".plan [data-part='" + id + "']");
    }

    private static String kept(Browser browser) {
        return (String) browser.run("return localStorage.getItem('loomwright-circuit') || ''");
    }

    private static String kept(Browser browser, String firstLength) {
        enter(browser, "route-length", firstLength);
        return kept(browser);
    }
}
