package loomwright.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.supply.DayEnergy;
import loomwright.practice.AnswerCheck;
import loomwright.worked.Description;
import loomwright.worked.EntryFault;
import org.junit.jupiter.api.Test;

class FormMarkupTest {
    private static final String HOSTILE = "\"><script>alert(1)</script>'&";
    private final Description description = Sample.CALCULATOR.description();

    @Test
    void putsTheNumberInTheBoxAndTheUnitInTheSelect() {
        assertContains(
                form("500 mA", "2/0 AWG"),
                "<input id=\"bench-current\" name=\"current\" type=\"text\" inputmode=\"decimal\" autocomplete=\"off\" spellcheck=\"false\""
                        + " value=\"500\" aria-describedby=\"bench-current-help bench-current-assumed\"><select id=\"bench-current-unit\""
                        + " aria-label=\"Unit of design current\"><option>A</option><option selected>mA</option></select>");
        assertContains(
                form("500 mA", "2/0 AWG"),
                "name=\"size\" type=\"text\" inputmode=\"text\" autocomplete=\"off\" spellcheck=\"false\" value=\"2/0\" aria-describedby=\"bench-size-assumed\"><select");
    }

    @Test
    void namesEachFormAfterItsExampleSoThatNoTwoInAPageSoundAlike() {
        assertContains(form("8 A", "2.5"), "<form class=\"try\" novalidate aria-labelledby=\"bench-try bench-title\">");
        String answer = AnswerMarkup.form(Sample.PLACE, description.output("drop"));
        assertContains(answer, "<form class=\"check\" novalidate aria-labelledby=\"bench-check bench-title\">");
    }

    @Test
    void offersAUnitThatWasTypedEvenIfItIsNotInTheList() {
        assertContains(form("1 kA", "2.5"), "<option>A</option><option>mA</option><option selected>kA</option>");
    }

    @Test
    void putsTheOnlyUnitIntoTheLabel() {
        assertContains(form("8 A", "2.5"), "<label for=\"bench-temperature\">Temperature, in\u00a0°C</label>");
        assertContains(form("8 A", "2.5"), "value=\"20\"");
    }

    @Test
    void leavesAnOptionalFieldEmpty() {
        assertContains(form("8 A", "2.5"), "name=\"spare\" type=\"text\" inputmode=\"decimal\" autocomplete=\"off\" spellcheck=\"false\" value=\"\"");
    }

    @Test
    void foldsAwayTheLoadsThatAreNotInUse() {
        Description day = new DayEnergy().description();
        Map<String, String> entries = new HashMap<>(Map.of("load-1-power", "75 W", "load-1-hours", "4 h", "load-3-power", "5 W"));
        String form = FormMarkup.of(Sample.PLACE, day, entries, Assumed.OWN_STORY, Absent.NONE);
        assertFolded(form, "load-2-power", true);
        assertFolded(form, "load-3-power", false);
        assertFolded(form, "load-4-power", true);
        assertFolded(form, "load-8-duty", true);
        assertEquals(2, form.split("<details").length - 1);
        assertContains(form, "<summary>Load 2 and on, if you need it</summary>");
        assertFalse(GivenMarkup.of(day, entries).contains("Load 2"));
        entries.clear();
        assertFolded(FormMarkup.of(Sample.PLACE, day, entries, Assumed.OWN_STORY, Absent.NONE), "load-1-power", false);
    }

    private static void assertFolded(String form, String field, boolean folded) {
        String before = form.substring(0, form.indexOf("name=\"" + field + "\""));
        assertEquals(folded, before.lastIndexOf("<details") > before.lastIndexOf("</details>"), field);
    }

    @Test
    void escapesWhatAReaderTyped() {
        String html = form(HOSTILE, HOSTILE)
                + GivenMarkup.of(description, Sample.entries(HOSTILE, HOSTILE))
                + FieldMarkup.error("bench-current", HOSTILE)
                + FormMarkup.summary(Sample.PLACE, List.of(new EntryFault("current", HOSTILE)))
                + AnswerMarkup.reply(AnswerCheck.of(Sample.working("8 A"), "drop", "1 " + HOSTILE));
        assertFalse(html.contains("<script"), html);
        assertContains(html, "value=\"&quot;&gt;&lt;script&gt;alert(1)&lt;/script&gt;&#39;&amp;\"");
    }

    @Test
    void printsWhatIsGivenWithWhatIsTakenUnsaid() {
        String given = GivenMarkup.of(description, Sample.entries("8 A", "2,5 mm2"));
        assertContains(
                given,
                "<div data-input=\"size\" data-given=\"2,5 mm2\"><dt>Size</dt><dd><span class=\"value\">2.5\u00a0mm²</span></dd></div>");
        assertContains(given, "data-given=\"20 °C\" data-unsaid>");
        assertContains(
                given,
                "<div data-input=\"counts\" data-given=\"one-way\" data-unsaid><dt>The length is</dt><dd>one way"
                        + " <span class=\"assumed\">assumed</span></dd></div>");
        assertFalse(given.contains("spare"), given);
    }

    @Test
    void marksWhatNobodySaidAndWhatALessonLends() {
        assertContains(form("8 A", "2.5"), "<span class=\"assumed\" id=\"bench-temperature-assumed\">assumed</span>");
        assertContains(form("8 A", "2.5"), "<span class=\"assumed\" id=\"bench-current-assumed\"></span>");
        Map<String, String> entries = Sample.entries("8 A", "2.5");
        Assumed lent = new Assumed("Lesson 8");
        String form = FormMarkup.of(Sample.PLACE, description, entries, lent, Absent.NONE);
        assertContains(form, "id=\"bench-current-assumed\">assumed, as in Lesson 8</span>");
        assertContains(form, "id=\"bench-temperature-assumed\">assumed</span>");
        assertContains(form, "id=\"bench-spare-assumed\"></span>");
        assertContains(GivenMarkup.of(description, entries, lent, Absent.NONE), "<span class=\"assumed\">assumed, as in Lesson 8</span>");
        String typed = GivenMarkup.inside("Given", description, entries, Map.of("current", "8 A"), lent, Absent.NONE);
        assertContains(typed, "<dd><span class=\"value\">8\u00a0A</span></dd>");
    }

    @Test
    void namesEveryEntryThatNeedsAnotherLook() {
        List<EntryFault> faults = List.of(new EntryFault("current", "Design current is empty"), new EntryFault("size", "Size is odd"));
        assertEquals(
                "<p><strong>2 entries need another look</strong></p><ul><li><a href=\"#bench-current\">Design current is empty</a></li>"
                        + "<li><a href=\"#bench-size\">Size is odd</a></li></ul>",
                FormMarkup.summary(Sample.PLACE, faults));
    }

    @Test
    void asksForAnAnswerInAnyUnitOfItsKind() {
        String form = AnswerMarkup.form(Sample.PLACE, description.output("drop"));
        assertContains(form, "<label for=\"bench-answer\">Your answer for voltage drop</label>");
        assertContains(form, "<option selected>V</option><option>mV</option>");
    }

    @Test
    void repliesWithTheVerdictFirst() {
        String agrees = AnswerMarkup.reply(AnswerCheck.of(Sample.working("8 A"), "drop", "400 mV"));
        assertTrue(agrees.startsWith("<p data-verdict=\"agrees\"><strong>Your answer agrees.</strong> "), agrees);
        String slip = AnswerMarkup.reply(AnswerCheck.of(Sample.working("8 A"), "drop", "0.8 V"));
        assertTrue(slip.startsWith("<p data-verdict=\"differs\"><strong>This number comes from a known slip: Counted twice.</strong> "), slip);
    }

    private String form(String current, String size) {
        return FormMarkup.of(Sample.PLACE, description, Sample.entries(current, size), Assumed.OWN_STORY, Absent.NONE);
    }

    private static void assertContains(String html, String part) {
        assertTrue(html.contains(part), () -> "not found: " + part + "\nin: " + html);
    }
}
