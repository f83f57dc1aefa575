package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** What a reader does with a worked example, keys only. The calculator of voltage drop stands for all. */
@ExtendWith(WithBrowser.class)
class JourneyIT {
    private static final String PAGE = "calculators/voltage-drop.html";
    private static final String KEY = "voltage-drop";

    private Browser browser;
    private Form form;

    @BeforeEach
    void openThePage(Browser shared) {
        browser = shared;
        browser.open(PAGE);
        form = new Form(browser, KEY);
    }

    @AfterEach
    void nothingWentWrong() {
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void everyFieldIsReachedByTheTabKey() {
        browser.run("document.querySelector('#" + KEY + " form.try input').focus()");
        String order = form.focus();
        for (int i = 0; i < 3; i++) {
            form.press(Keys.TAB);
            order += " " + form.focus();
        }
        assertEquals("current current-unit route-length route-length-unit", order);
    }

    @Test
    void doublingTheCurrentDoublesTheDropAfterAPause() {
        form.enter("current", "3");
        double three = number(form.own("drop"));
        form.type("current", "6");
        form.settle();
        assertEquals(2 * three, number(form.own("drop")), 0.0006 * three);
        assertTrue(form.isHidden(".given"));
    }

    @Test
    void resetBringsThePrintedExampleBack() {
        String printed = browser.text("#" + KEY + " .outcome");
        String current = form.value("current");
        form.enter("current", "3");
        assertNotEquals(printed, browser.text("#" + KEY + " .outcome"));
        browser.focus("#" + KEY + " button[type=reset]");
        form.press(Keys.ENTER);
        waitUntilEqual(printed);
        assertEquals(current, form.value("current"));
    }

    @Test
    void aBadEntryKeepsTheTextAndSaysWhatToDo() {
        form.type("current", "5000000");
        form.settle();
        String drop = form.printed("drop");
        assertTrue(form.isThere(".graph.old > .oldnote:first-child"), "the old graph is marked");
        assertTrue(form.isThere(".outcome.old > .oldnote:first-child"), "the old outcome is marked");
        assertFalse(form.isThere(".error"), "no complaint while typing");
        form.press(Keys.TAB);
        assertEquals("5000000", form.value("current"), "nothing typed is lost");
        assertTrue(form.text(".error").startsWith("Look again: Design current must be between"), form.text(".error"));
        assertEquals("true", form.attribute("current", "aria-invalid"));
        assertTrue(form.attribute("current", "aria-describedby").endsWith("current-error"));
        assertFalse(form.isHidden(".summary"));
        assertEquals(drop, form.printed("drop"), "the last good outcome stays");

        form.type("current", "6");
        browser.until(() -> !form.isThere(".old"));
        assertFalse(form.isThere(".error"), "the complaint goes as soon as the entry is good");
        assertFalse(form.isThere(".oldnote"));
        assertTrue(form.isHidden(".summary"));
        assertEquals(null, form.attribute("current", "aria-invalid"));
    }

    @Test
    void theSummaryLeadsToTheField() {
        form.type("route-length", "many");
        form.press(Keys.ENTER);
        assertEquals("summary", form.focus());
        browser.focus("#" + KEY + " .summary a");
        form.press(Keys.ENTER);
        assertEquals("route-length", form.focus());
    }

    @Test
    void aUnitTypedIntoTheBoxWinsOverTheOneBeside() {
        form.enter("route-length", "3 m");
        String metres = form.own("drop");
        form.enter("route-length", "300 cm");
        assertEquals(metres, form.own("drop"));
        assertEquals("cm", form.value("route-length-unit"));
        form.choose("route-length-unit", "m");
        assertEquals("3", form.value("route-length"), "choosing a unit takes the typed one out of the box");
    }

    @Test
    void anotherUnitKeepsTheLengthAndItsDrop() {
        form.enter("route-length", "3");
        form.choose("route-length-unit", "ft");
        assertEquals("9.84", form.value("route-length"), "3 m ÷ 0.3048 m");
        assertEquals("0.4559 V", form.own("drop"), "2 × 9.84 × 0.3048 m × 7.6 mΩ/m × 10 A");
    }

    @Test
    void aRightAnswerAgreesAndAWrongOneDoesNot() {
        String drop = form.printed("drop");
        answer(drop.substring(0, drop.indexOf(' ')));
        assertTrue(form.isThere(".reply [data-verdict=agrees]"), form.text(".reply"));
        answer("1" + drop.substring(0, drop.indexOf(' ')));
        assertTrue(form.isThere(".reply [data-verdict=differs]"), form.text(".reply"));
        form.enter("current", "4");
        assertEquals("", form.text(".reply"), "a reply to other figures goes");
    }

    @Test
    void aKnownSlipIsNamed() {
        String slip = browser.text("#" + KEY + " .slip .value").replace('\u00a0', ' ');
        answer(slip.substring(0, slip.indexOf(' ')));
        assertTrue(form.text(".reply").startsWith("This number comes from a known slip:"), form.text(".reply"));
    }

    @Test
    void whatWasUnfoldedStaysUnfolded() {
        browser.run("document.querySelector('#" + KEY + " .outcome details.slips').open = true");
        form.enter("current", "7");
        assertTrue(form.isThere(".outcome details.slips[open]"));
    }

    /** Whatever is shown or said while the keys 2 and 0 are pressed is written down by the page. */
    @Test
    void halfANumberIsNoEntry() {
        browser.run(
                """
                const section = document.getElementById(arguments[0]);
                const outcome = section.querySelector('.outcome');
                window.seen = [];
                const write = () => window.seen.push((section.querySelector('tr[data-result=drop] td.own') || {}).textContent
                  + '|' + section.querySelector('form.try [role=status]').textContent
                  + '|' + section.querySelectorAll('.typing > .oldnote').length);
                new MutationObserver(write).observe(section, {subtree: true, childList: true, characterData: true});
                """,
                KEY);
        double printed = number(form.printed("drop"));
        form.type("current", "20");
        form.settle();
        browser.until(() -> !form.text("form.try [role=status].unseen").isEmpty());
        assertEquals(2 * printed, number(form.own("drop")), 0.001, "20 A through what was printed for 10 A");
        List<?> seen = (List<?>) browser.run("return window.seen");
        assertTrue(seen.stream().anyMatch(each -> each.equals("undefined||3")), "graph, upshot and outcome are marked at the first key: " + seen);
        String own = form.own("drop");
        for (Object each : seen) {
            String[] parts = ((String) each).replace('\u00a0', ' ').split("\\|");
            assertTrue(parts[0].equals("undefined") || parts[0].equals(own), "shown in between: " + each);
            assertTrue(parts[1].isEmpty() || parts[1].contains(own), "said in between: " + each);
        }
    }

    @Test
    void anAnswerThatCannotBeReadIsTiedToItsReply() {
        answer("many");
        assertEquals("true", form.attribute("answer", "aria-invalid"));
        assertEquals(KEY + "-reply", form.attribute("answer", "aria-describedby"));
        answer("1");
        assertEquals(null, form.attribute("answer", "aria-invalid"));
    }

    @Test
    void oneSentenceIsSaidAfterAPause() {
        form.type("current", "4");
        browser.until(() -> !form.text("form.try [role=status].unseen").isEmpty());
        String said = form.text("form.try [role=status].unseen");
        assertTrue(said.startsWith("Voltage drop " + form.own("drop")), said);
    }

    private void answer(String text) {
        form.type("answer", text);
        form.press(Keys.ENTER);
    }

    private void waitUntilEqual(String outcome) {
        browser.until(() -> outcome.equals(browser.text("#" + KEY + " .outcome")));
    }

    private static double number(String shown) {
        return Double.parseDouble(shown.substring(0, shown.indexOf(' ')));
    }
}
