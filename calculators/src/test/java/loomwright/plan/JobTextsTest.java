package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.Set;
import loomwright.markup.Fragment;
import loomwright.plan.page.Screen;
import loomwright.units.UnitSystem;
import loomwright.worked.Field;
import org.junit.jupiter.api.Test;

class JobTextsTest {
    private static final Field ROUTE = PlanFields.ITEM.stream().filter(field -> field.key().equals("route")).findFirst().orElseThrow();

    @Test
    void answersComeBackFromTheirTextAsTheyWereTyped() {
        JobTexts texts = JobTexts.fresh(UnitSystem.METRIC);
        texts.put(0, "kind", "fridge");
        texts.put(0, "draws", "5 A or so & more");
        texts.add();
        texts.put(1, "route", "4,2 m");
        texts.put(Answers.JOB, "feed", "panel");
        JobTexts back = JobTexts.read(texts.written());
        assertEquals(2, back.items());
        assertEquals(texts.written(), back.written());
        assertEquals("5 A or so & more", back.text(0, PlanFields.ITEM.get(2)));
        assertEquals(1, back.answers().faults().size(), "what cannot be used is kept, and said");
        assertEquals("draws", back.answers().faults().get(0).fieldKey());
    }

    @Test
    void oneThingLessTakesAwayThatOneAndTheLastIsEmptied() {
        JobTexts texts = JobTexts.read("0.kind=fan&1.kind=radio&2.kind=usb&2.route=3 m");
        texts.remove(1);
        assertEquals(2, texts.items());
        assertEquals("fan", texts.text(0, PlanFields.ITEM.get(0)));
        assertEquals("usb", texts.text(1, PlanFields.ITEM.get(0)));
        texts.remove(0);
        texts.remove(0);
        assertEquals(1, texts.items());
        assertEquals(JobTexts.fresh(UnitSystem.METRIC).text(0, PlanFields.ITEM.get(0)), texts.text(0, PlanFields.ITEM.get(0)));
        assertEquals("", texts.text(0, ROUTE));
    }

    @Test
    void whatIsUsualIsNotWrittenAndWhatIsMissingIsUsual() {
        JobTexts texts = JobTexts.fresh(UnitSystem.METRIC);
        texts.put(0, "how-many", "1");
        texts.put(0, "hours", "");
        assertEquals("0.kind=" + texts.text(0, PlanFields.ITEM.get(0)), texts.written());
        assertEquals("1", JobTexts.read("0.kind=fan").text(0, PlanFields.ITEM.get(1)));
        texts.put(0, "how-many", "2");
        texts.put(Answers.JOB, "feed", "panel");
        assertEquals(Set.of("0.kind", "0.how-many", "feed"), Fragment.read(texts.written()).keySet());
        assertEquals("awg", Fragment.read(JobTexts.fresh(UnitSystem.AMERICAN).written()).get("cable"));
    }

    /** Sixty letters an answer, twelve things, one after the other. */
    @Test
    void aLinkBringsNoMoreThanTheQuestionsTake() {
        String sixty = "9".repeat(60);
        assertEquals(sixty, JobTexts.read("0.kind=fan&0.route=" + sixty).text(0, ROUTE));
        assertEquals("", JobTexts.read("0.kind=fan&0.route=" + sixty + "9").text(0, ROUTE));
        StringBuilder many = new StringBuilder("0.kind=fan");
        for (int i = 1; i <= 12; i++) {
            many.append('&').append(i).append(".kind=fan");
        }
        assertEquals(12, JobTexts.read(many.toString()).items());
        assertEquals(1, JobTexts.read("0.kind=fan&2.kind=fan").items());
    }

    @Test
    void aTextWithoutAnyThingIsNoJob() {
        assertNull(JobTexts.read(""));
        assertNull(JobTexts.read("circuit=abc"));
        assertNull(JobTexts.read("feed=panel"));
    }

    @Test
    void whateverComesByALinkEndsInAPlanOrInAFault() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            StringBuilder link = new StringBuilder("0.kind=" + (random.nextBoolean() ? "usb" : "nothing"));
            for (String key : new String[] {"0.draws", "0.route", "0.how-many", "feed", "capacity", "1.kind", "chemistry", "panel-limit"}) {
                String[] values = {"", "-1", "1e99 A", "99999999 m", "0", "12 W", "%", "\u202e", "lifepo4", "panel", "NaN", "3"};
                link.append('&').append(key).append('=').append(values[random.nextInt(values.length)]);
            }
            JobTexts texts = JobTexts.read(link.toString());
            Answers.Read read = texts.answers();
            assertTrue(read.answers() != null || !read.faults().isEmpty(), link.toString());
            if (read.answers() != null) {
                Plan plan = Plan.of(read.answers());
                assertTrue(plan.circuit() != null || plan.obstacle() != null, link.toString());
            }
        }
    }

    @Test
    void asksOnlyWhatApplies() {
        JobTexts texts = JobTexts.fresh(UnitSystem.METRIC);
        Screen feed = Screen.asking(texts, Answers.JOB, "feed");
        assertEquals(1, feed.fields(texts).size());
        texts.put(Answers.JOB, "feed", "panel");
        assertEquals(7, feed.fields(texts).size());
        assertEquals(8, Screen.of(texts).size());
        texts.add();
        assertEquals(11, Screen.of(texts).size());
        assertEquals(Screen.Kind.WAY, Screen.asking(texts, 1, "route").kind());
    }

    /** What is asked of all things together, such as what they draw, leads to the first of them. */
    @Test
    void aQuestionLeadsToItsScreen() {
        JobTexts texts = JobTexts.read("0.kind=fan&1.kind=radio");
        assertEquals("TAKES 0", at(Screen.asking(texts, Answers.JOB, "draws")));
        assertEquals("THING 0", at(Screen.asking(texts, Answers.JOB, "how-many")));
        assertEquals("WAY 1", at(Screen.asking(texts, 1, "beside")));
        assertEquals("BATTERY -1", at(Screen.asking(texts, Answers.JOB, "capacity")));
        assertEquals("FEED -1", at(Screen.asking(texts, Answers.JOB, "free-ways")));
        assertEquals(Screen.of(texts).get(0), Screen.asking(texts, Answers.JOB, "nothing"));
    }

    private static String at(Screen screen) {
        return screen.kind() + " " + screen.item();
    }
}
