package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import loomwright.handout.Handout;
import loomwright.handout.KeyMarkup;
import loomwright.handout.LessonQuestions;
import loomwright.handout.RegisterMarkup;
import loomwright.handout.Selection;
import loomwright.handout.Sheet;
import loomwright.handout.SheetMarkup;
import loomwright.handout.Task;
import loomwright.markup.Links;
import loomwright.worked.Slip;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The page of the workshop day: the same sheets as on the command line, and the marking of one by its code. */
@ExtendWith(WithBrowser.class)
class WorkshopIT {
    private static final String HOUSE = "Loomwright";
    private static final List<Integer> PLACES = List.of(2, 7, 9);

    private final List<LessonQuestions> lessons = WorkshopLessons.read();
    private Browser browser;

    @BeforeEach
    void open(Browser shared) {
        browser = shared;
        browser.open("workshop.html");
    }

    @AfterEach
    void nothingWentWrong() {
        assertEquals(List.of(), browser.messages());
    }

    private Handout handout(int seed, int each) {
        return new Handout(Selection.ofLessons(lessons, PLACES, each), seed);
    }

    private void make(int seed, int each, String people) {
        browser.run("document.querySelectorAll('[data-lesson] input').forEach((box, i) => box.checked = arguments[0].includes(i))", PLACES);
        type("#kit-seed", Integer.toString(seed));
        type("#kit-each", Integer.toString(each));
        type("#kit-people", people);
        browser.find("#kit button").click();
    }

    private void type(String selector, String text) {
        browser.focus(selector);
        browser.overwrite(text);
    }

    /** The markup goes through the same parser, so that spellings of it do not count. */
    private boolean isMade(String html) {
        return (boolean) browser.run(
                "const other = document.createElement('div'); other.innerHTML = arguments[0];"
                        + " return other.innerHTML === document.querySelector('#kit-made').innerHTML", html);
    }

    @Test
    void browserAndCommandLineMakeTheSameSheets() {
        for (int seed : List.of(1, 7, 4711, 9999)) {
            Handout handout = handout(seed, 3);
            List<Sheet> sheets = handout.sheets(5);
            StringBuilder html = new StringBuilder(RegisterMarkup.of(handout, sheets, seed, HOUSE));
            sheets.forEach(sheet -> html.append(SheetMarkup.of(sheet, HOUSE)));
            html.append(KeyMarkup.glance(sheets, HOUSE));
            sheets.forEach(sheet -> html.append(KeyMarkup.of(sheet, HOUSE, Links.NONE)));
            make(seed, 3, "5");
            assertTrue(isMade(html.toString()), "seed " + seed + " differs");
        }
    }

    @Test
    void aCodeBringsTheSheetBackAndSlipsAreNamed() throws IOException {
        Sheet sheet = handout(7, 3).sheet(4);
        type("#mark-code", sheet.code().toLowerCase(java.util.Locale.ROOT));
        browser.find("#mark button").click();
        assertEquals((long) sheet.tasks().size(), browser.run("return document.querySelectorAll('#mark-made .marked').length"));
        int slips = 0;
        for (int i = 0; i < sheet.tasks().size(); i++) {
            Task task = sheet.tasks().get(i);
            answer(i + 1, task.answer().text());
            assertTrue(reply(i + 1).startsWith("Your answer agrees."), reply(i + 1));
            for (Slip slip : task.working().slips()) {
                if (slip.output().equals(task.question().asked()) && !loomwright.worked.AnswerCheck.agrees(slip.value(), task.answer())) {
                    answer(i + 1, slip.value().text());
                    assertTrue(reply(i + 1).contains("known slip"), reply(i + 1));
                    slips++;
                    break;
                }
            }
        }
        assertTrue(slips > 2, slips + " slips");
        browser.width(360);
        browser.keepPicture("workshop-marking-360");
    }

    private void answer(int number, String text) {
        String id = "#mark-" + number + "-answer";
        type(id, text.replace('\u00a0', ' '));
        browser.find("#mark-" + number + " form button").click();
    }

    private String reply(int number) {
        return browser.text("#mark-" + number + " .reply");
    }

    @Test
    void wrongEntriesAreNamedAndStay() {
        make(7, 3, "many");
        assertTrue(browser.text("#kit-error").contains("The number of people must be a whole number from 1 to 500"));
        assertEquals("many", browser.find("#kit-people").getDomProperty("value"));
        assertEquals("", browser.text("#kit-made"));
        browser.run("document.querySelectorAll('[data-lesson] input').forEach(box => box.checked = false)");
        type("#kit-people", "12");
        browser.find("#kit button").click();
        assertTrue(browser.text("#kit-error").contains("No lesson with a question is chosen"));
        type("#mark-code", "1234-5678-9ABC");
        browser.find("#mark button").click();
        assertTrue(browser.text("#mark-error").contains("One character of the code is wrong"), browser.text("#mark-error"));
    }

    @Test
    void onlyTheChosenPartIsPrinted() {
        make(7, 2, "3");
        browser.run("window.print = () => { window.printed = document.documentElement.className + ' ' + document.querySelector('#kit-made').className }");
        browser.find("[data-prints=key]").click();
        assertEquals("kit-only prints-key", browser.run("return window.printed"));
        browser.command("Emulation.setEmulatedMedia", java.util.Map.of("media", "print"));
        assertFalse((boolean) browser.run("return document.querySelector('.handout:not(.key)').checkVisibility()"));
        assertTrue((boolean) browser.run("return document.querySelector('.handout.key').checkVisibility()"));
        assertFalse((boolean) browser.run("return document.querySelector('#kit').checkVisibility()"));
        browser.command("Emulation.setEmulatedMedia", java.util.Map.of("media", ""));
        browser.run("window.dispatchEvent(new Event('afterprint'))");
        assertEquals("", browser.run("return document.documentElement.className"));
    }

    @Test
    void sheetsAndMarkingBreakNoRuleAndFitAPhone() throws IOException {
        try (Audit audit = new Audit(browser)) {
            browser.open("workshop.html");
            make(7, 2, "3");
            type("#mark-code", handout(7, 2).sheet(2).code());
            browser.find("#mark button").click();
            assertEquals("", audit.violations());
            browser.dark();
            assertEquals("", audit.violations("color-contrast"));
            // the audit asks for the style sheet, which the policy of the page refuses
            browser.messages();
        }
        browser.light();
        browser.width(360);
        Number width = (Number) browser.run("return document.documentElement.scrollWidth");
        assertTrue(width.intValue() <= 360, () -> width + " wide: " + browser.run(
                "return [...document.querySelectorAll('main *')].filter(each => each.getBoundingClientRect().right > 361 && !each.closest('.scroll, .line, .unseen'))"
                        + ".slice(0, 6).map(each => each.outerHTML.slice(0, 150)).join('\\n')"));
        browser.keepPicture("workshop-made-360");
        browser.width(1280);
        browser.keepPicture("workshop-made-1280");
    }
}
