package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import loomwright.handout.Handout;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Paper;
import loomwright.handout.Printout;
import loomwright.handout.Selection;
import loomwright.handout.Sheet;
import loomwright.handout.Task;
import loomwright.worked.Agreement;
import loomwright.worked.Output;
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
        return new Handout(Selection.ofLessons(lessons, PLACES, each, true), seed);
    }

    private void make(int seed, int each, String people) {
        browser.run("document.querySelectorAll('[data-lesson] input').forEach((box, i) => box.checked = arguments[0].includes(i))", PLACES);
        type("#kit-seed", Integer.toString(seed));
        type("#kit-each", Integer.toString(each));
        type("#day-people", people);
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
            Printout printout = new Printout(handout(seed, 3), 5, seed, HOUSE, Paper.A4);
            StringBuilder html = new StringBuilder();
            printout.parts().forEach(part -> html.append("<div data-part=\"").append(part.key()).append("\">").append(part.html()).append("</div>"));
            make(seed, 3, "5");
            assertTrue(isMade(html.toString()), "seed " + seed + " differs");
            assertTrue(browser.text("#kit-said").startsWith("A4: " + printout.said()), browser.text("#kit-said"));
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
            if (task.question().isInWords()) {
                continue;
            }
            for (int box = 0; box < task.question().asked().size(); box++) {
                Output asked = task.question().asked().get(box);
                String place = (i + 1) + (box == 0 ? "" : "-" + (box + 1));
                answer(place, task.answerText(asked));
                assertTrue(reply(place).startsWith("Your answer agrees."), reply(place));
                for (Slip slip : task.working().slips()) {
                    if (slip.output().equals(asked) && !Agreement.agrees(slip.value(), task.answer(asked))) {
                        answer(place, slip.value().text());
                        assertTrue(reply(place).contains("known slip"), reply(place));
                        slips++;
                        break;
                    }
                }
            }
            assertEquals(task.because().isEmpty() ? 0L : 1L, browser.run("return document.querySelectorAll(arguments[0]).length", "#mark-" + (i + 1) + " .more:not([hidden])"), "what the lesson says is told");
        }
        assertTrue(slips > 2, slips + " slips");
        browser.width(360);
        browser.keepPicture("workshop-marking-360");
    }

    private void answer(String place, String text) {
        type("#mark-" + place + "-answer", text.replace('\u00a0', ' '));
        browser.find("[data-box='mark-" + place + "'] form button").click();
    }

    private String reply(String place) {
        return browser.text("#mark-" + place + "-reply");
    }

    @Test
    void wrongEntriesAreNamedAndStay() {
        make(7, 3, "many");
        assertTrue(browser.text("#day-error").contains("The number of people must be a whole number from 1 to 500"));
        assertEquals("many", browser.find("#day-people").getDomProperty("value"));
        assertEquals("", browser.text("#kit-made"));
        browser.run("document.querySelectorAll('[data-lesson] input').forEach(box => box.checked = false)");
        type("#day-people", "12");
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
        browser.run("document.querySelector('#kit-paper').value = 'letter'");
        browser.find("#kit button").click();
        assertTrue(browser.find("[data-prints=answers]").getText().startsWith("Print the answers ("));
        browser.find("[data-prints=answers]").click();
        assertEquals("kit-only paper-letter prints-answers", browser.run("return window.printed"));
        browser.command("Emulation.setEmulatedMedia", java.util.Map.of("media", "print"));
        assertFalse((boolean) browser.run("return document.querySelector('[data-part=sheets] .handout').checkVisibility()"));
        assertFalse((boolean) browser.run("return document.querySelector('[data-part=workings] .handout').checkVisibility()"));
        assertTrue((boolean) browser.run("return document.querySelector('[data-part=answers] .handout').checkVisibility()"));
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

    /** The pages that are said beforehand are those that come out, on both papers. */
    @Test
    void asManyPagesComeOutAsWereSaid() throws IOException {
        for (Paper paper : Paper.values()) {
            browser.run("document.querySelector('#kit-paper').value = arguments[0]", paper.key());
            make(11, 2, "7");
            browser.run("window.print = () => {}");
            browser.find("[data-prints=all]").click();
            Printout printout = new Printout(handout(11, 2), 7, 11, HOUSE, paper);
            String pdf = (String) ((java.util.Map<?, ?>) browser.command("Page.printToPDF", java.util.Map.of("preferCSSPageSize", true))).get("data");
            try (org.apache.pdfbox.pdmodel.PDDocument document = org.apache.pdfbox.Loader.loadPDF(java.util.Base64.getDecoder().decode(pdf))) {
                assertEquals(printout.pages(), document.getNumberOfPages(), paper.label());
                assertEquals(paper == Paper.A4 ? 842 : 792, document.getPage(0).getMediaBox().getHeight(), 1);
            }
            browser.run("window.dispatchEvent(new Event('afterprint'))");
        }
    }

    /** 20 people are ten pairs: four boards, five supplies on the tables and four on the boards; three leaders. */
    @Test
    void theDayFollowsFromPeopleLeadersAndHours() {
        type("#day-people", "20");
        type("#day-hours", "3");
        browser.press(org.openqa.selenium.Keys.ENTER);
        String plan = browser.text("#day-made");
        assertTrue(plan.contains("Hour by hour: 3 hours, 20 people"), plan);
        assertTrue(plan.contains("20 people need 3 leaders; there are 2. Find 1 more"), plan);
        assertTrue(plan.contains("demonstration boards4one for 3 groups"), plan);
        make(7, 1, "20");
        assertTrue(browser.text("#day-made").contains("pages of question sheets"), "what is printed is part of the plan");
        type("#day-hours", "30");
        browser.press(org.openqa.selenium.Keys.ENTER);
        assertTrue(browser.text("#day-error").contains("The number of hours must be a whole number from 3 to 9."), browser.text("#day-error"));
        assertEquals("30", browser.find("#day-hours").getDomProperty("value"));
        browser.run("window.print = () => { window.printed = document.documentElement.className }");
        browser.find("#day-print").click();
        assertEquals("day-only", browser.run("return window.printed"));
    }
}
