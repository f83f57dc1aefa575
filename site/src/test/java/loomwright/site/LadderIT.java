package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loomwright.practice.Exercise;
import loomwright.practice.MendedWorking;
import loomwright.practice.Variation;
import loomwright.quantity.Quantity;
import loomwright.worked.Working;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** A reader climbs an example from reading it to mending it. */
@ExtendWith(WithBrowser.class)
class LadderIT {
    private Browser browser;

    @BeforeEach
    void nothingIsRemembered(Browser shared) {
        browser = shared;
        browser.open("about.html");
        browser.run("localStorage.clear()");
    }

    @AfterEach
    void nothingWentWrong() {
        List<String> messages = browser.messages();
        browser.run("try { localStorage.clear() } catch (forbidden) { }");
        assertEquals(List.of(), messages);
    }

    private Rungs rungs(String calculator) {
        Rungs rungs = new Rungs(browser, calculator);
        browser.visit(rungs.page());
        return rungs;
    }

    /** "A USB-C port without Power Delivery gives 5 V": the story would be untrue of another voltage. */
    @Test
    void whatTheStoryHoldsFastStaysOnEveryRung() {
        browser.visit("lessons/03-what-will-it-draw.html");
        browser.touch("#usb-c-plain");
        browser.run("document.querySelector('#usb-c-plain [data-rung=\"3\"]').click()");
        Set<String> others = new HashSet<>();
        for (int i = 0; i < 12; i++) {
            assertEquals("5 V", given("device-voltage"));
            others.add(given("device-current") + given("efficiency") + given("supply-voltage"));
            browser.run("document.querySelector('#usb-c-plain .rung [data-does=other]').click()");
        }
        assertTrue(others.size() > 3, others.toString());
    }

    private String given(String field) {
        return (String) browser.run("return document.querySelector('#usb-c-plain .rung [data-input=' + arguments[0] + ']').getAttribute('data-given')", field);
    }

    @Test
    void everyRungIsClimbedByKeysAloneAndRemembered() {
        Rungs rungs = rungs("ohm-and-power");
        rungs.open(1);
        assertTrue(rungs.isClimbed(1));
        rungs.open(2);
        rungs.fillAll(rungs.printed(), new Exercise(rungs.printed()).last(1));
        assertTrue(rungs.isClimbed(2), rungs.text(".end-of-rung"));

        rungs.open(3);
        Working varied = rungs.varied(1, 0).working();
        rungs.fillAll(varied, new Exercise(varied).blanks());
        assertTrue(rungs.isClimbed(3), rungs.text(".end-of-rung"));

        Working last = rungs.varied(1, 1).working();
        MendedWorking mended = MendedWorking.of(last, Variation.seed("ohm-and-power", 1));
        rungs.open(4);
        rungs.tabTo(".tasks input");
        rungs.answer("Step " + (mended.at() + 1) + ":");
        rungs.answer(mended.slip().name());
        rungs.press(last.steps().get(mended.at()).result().text());
        rungs.press(Keys.ENTER);
        assertTrue(rungs.isClimbed(4), rungs.text(".rung"));
        assertTrue(rungs.text(".tasks").contains(mended.slip().words()), rungs.text(".tasks"));

        browser.visit(rungs.page());
        for (int rung = 1; rung <= 4; rung++) {
            assertTrue(rungs.isClimbed(rung), "rung " + rung + " after loading the page anew");
        }
    }

    /** Steps of voltage drop: 0 circuit length, 1 table row, 2 resistance of that length, 3 drop. */
    @Test
    void aRightStepOnAWrongFigureIsCredited() {
        Rungs rungs = rungs("voltage-drop");
        rungs.open(3);
        Working working = rungs.varied(1, 0).working();
        Quantity length = working.steps().get(0).result();
        rungs.fill(0, Quantity.of(length.value() * 3, length.unit()).text());
        assertTrue(rungs.isThere("[data-step='0'] [data-verdict=differs]"));
        assertEquals("true", browser.run("return document.activeElement.getAttribute('aria-invalid')"));
        Quantity resistance = working.steps().get(2).result();
        rungs.fill(2, Quantity.of(resistance.value() * 3, resistance.unit()).text());
        assertTrue(rungs.text("[data-step='2'] .reply").startsWith("Right method."), rungs.text("[data-step='2'] .reply"));
        assertTrue(rungs.text("[data-step='2'] .reply").contains("your own figure of step 1"));

        rungs.fill(0, length.text());
        assertTrue(rungs.isThere("[data-step='0'] [data-verdict=agrees]"));
        assertEquals("Step 1 has changed. Check this one again.", rungs.text("[data-step='2'] .reply"));
        assertFalse(rungs.isClimbed(3));
    }

    @Test
    void aWrongFigureStaysAndHelpIsOfferedAtTheSecondTry() {
        Rungs rungs = rungs("voltage-drop");
        rungs.open(2);
        rungs.fill(6, "12345 W");
        assertEquals("12345 W", browser.run("return document.activeElement.value"));
        assertFalse(rungs.isThere("[data-does=show]"));
        rungs.fill(6, "many");
        assertTrue(rungs.text("[data-step='6'] .reply").startsWith("Your figure has no number."));
        rungs.tabTo("[data-does=show]");
        rungs.press(Keys.ENTER);
        assertTrue(rungs.text(".end-of-rung").startsWith("Filled, with help."), rungs.text(".end-of-rung"));
        rungs.tabTo("[data-does=more]");
        rungs.press(Keys.ENTER);
        rungs.fillAll(rungs.printed(), List.of(5));
        assertFalse(rungs.isClimbed(2), "with help the rung does not count");
    }

    @Test
    void aRungTakesThePlaceOfTheWorkingAndReadingBringsItBack() {
        Rungs rungs = rungs("voltage-drop");
        rungs.open(2);
        assertFalse((boolean) browser.run("return document.querySelector('#voltage-drop .outcome').checkVisibility()"));
        rungs.open(1);
        assertTrue((boolean) browser.run("return document.querySelector('#voltage-drop .outcome').checkVisibility()"));
        assertTrue((boolean) browser.run("return document.querySelector('#voltage-drop form.try').checkVisibility()"));
    }

    @Test
    void mendingWaitsForTheFirstThreeRungs() {
        Rungs rungs = rungs("voltage-drop");
        assertTrue(rungs.text(".ladder > .help").startsWith("Mend opens when"));
        rungs.open(2);
        rungs.tabTo("[data-rung='4']");
        rungs.press(Keys.ENTER);
        assertTrue(rungs.isThere("[data-rung='4'][aria-disabled=true][aria-pressed=false]"));
        assertFalse(rungs.isThere("[data-slip]"));
    }

    /** The known slips of this one spoil a figure that is read from a table. */
    @Test
    void withoutASlipThatFitsThePageSaysSo() {
        Rungs rungs = rungs("state-of-charge");
        rungs.open(2);
        assertFalse(rungs.isThere("[data-rung='4']"));
        assertTrue(rungs.text(".ladder > .help").startsWith("None of the slips we know fits"));
    }

    @Test
    void lessonsReadAreMarkedAndAllIsForgotten() {
        browser.visit("lessons/08-voltage-drop.html");
        browser.focus(".readmark button");
        browser.press(Keys.ENTER);
        browser.visit("lessons.html");
        assertEquals(1L, browser.run("return new Set([...document.querySelectorAll('.read')].map(each =>"
                + " each.closest('li').querySelector('a').getAttribute('href'))).size"));
        assertTrue(browser.text("li:has(.read) a").contains("Voltage drop"));
        assertEquals(List.of("loomwright-progress"), browser.run("return Object.keys(localStorage)"));

        browser.visit("how-to-use.html");
        browser.focus("#forget");
        browser.press(Keys.ENTER);
        assertTrue(browser.text("#forgotten").startsWith("Forgotten."));
        assertEquals(List.of(), browser.run("return Object.keys(localStorage)"));
        browser.visit("lessons.html");
        assertEquals(0L, browser.run("return document.querySelectorAll('.read').length"));
    }

    @Test
    void whereStorageIsForbiddenItIsSaidAndTheRungsWork() {
        Map<?, ?> script = (Map<?, ?>) browser.command("Page.addScriptToEvaluateOnNewDocument", Map.of("source",
                "Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError'); }});"));
        try {
            Rungs rungs = rungs("ohm-and-power");
            assertTrue(rungs.text(".ladder > .help").endsWith("does not let the page remember which rungs you have climbed."));
            rungs.open(2);
            rungs.fillAll(rungs.printed(), new Exercise(rungs.printed()).last(1));
            assertTrue(rungs.isThere(".praise"));
            assertTrue(rungs.isClimbed(2), "as long as the page is open");
        } finally {
            browser.command("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", script.get("identifier")));
        }
    }

    @Test
    void everyRungPassesTheAuditAndFitsANarrowScreen() throws IOException {
        try (Audit audit = new Audit(browser)) {
            Rungs rungs = rungs("voltage-drop");
            rungs.climbedBefore(1, 2, 3);
            browser.visit(rungs.page());
            for (int rung = 1; rung <= 4; rung++) {
                browser.run("document.querySelector('.skip').focus()");
                rungs.open(rung);
                assertTrue(rungs.isThere("[data-rung='" + rung + "'][aria-pressed=true]"));
                if (rung == 2 || rung == 3) {
                    rungs.fill(6, "3");
                    rungs.fill(6, rung == 2 ? rungs.printed().steps().get(6).result().text() : "many");
                }
                audit(audit, "rung " + rung);
            }
            // The audit asks for the style sheet, which the policy of the page refuses it.
            browser.messages();
        }
    }

    private void audit(Audit audit, String where) throws IOException {
        browser.light();
        assertEquals("", audit.violations(), where);
        browser.keepPicture(where.replace(' ', '-'));
        browser.dark();
        assertEquals("", audit.violations("color-contrast"), where + " in the dark");
        browser.width(320);
        assertTrue((boolean) browser.run("return document.documentElement.scrollWidth <= document.documentElement.clientWidth"), where);
        browser.keepPicture(where.replace(' ', '-') + "-narrow");
        browser.width(1280);
        browser.light();
    }

    @Test
    void aRungIsPrintedAloneWithLinesToWriteOn() throws IOException {
        Rungs rungs = rungs("voltage-drop");
        rungs.open(3);
        String whole = printed();
        assertTrue(whole.contains("About this calculator"), "without the button the page is printed as ever");
        assertFalse(whole.contains("Your figure for"), whole);
        browser.run("window.print = () => {}");
        rungs.tabTo("[data-does=print]");
        rungs.press(Keys.ENTER);
        String sheet = printed();
        assertTrue(sheet.contains("Your figure for voltage drop"), sheet);
        assertTrue(sheet.contains("Multiply by the current."), sheet);
        assertFalse(sheet.contains("About this calculator"), sheet);
        assertFalse(sheet.contains("0.6384"), sheet);
        assertFalse(browser.run("return document.documentElement.className").toString().contains("rung-only"), "afterwards all is as before");
    }

    private String printed() throws IOException {
        Map<?, ?> answer = (Map<?, ?>) browser.command("Page.printToPDF", Map.of());
        try (PDDocument paper = Loader.loadPDF(Base64.getDecoder().decode((String) answer.get("data")))) {
            return new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
        }
    }
}
