package loomwright.plan.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.markup.Balance;
import loomwright.plan.Answers;
import loomwright.plan.JobTexts;
import loomwright.plan.Obstacle;
import loomwright.plan.Plan;
import loomwright.units.UnitSystem;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The screens of questions, by what stands on them. */
class QuestionMarkupTest {
    private static JobTexts things(int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(i).append(".kind=fan&");
        }
        return JobTexts.read(text + "feed=battery");
    }

    private static Document screen(JobTexts texts, int at) {
        return Jsoup.parse(Balance.held(QuestionMarkup.of(texts, Screen.of(texts).get(at), UnitSystem.METRIC)));
    }

    private static List<String> does(Document screen) {
        return screen.select("button[data-does]").eachAttr("data-does");
    }

    /** What, takes, way of one thing; then feed, battery, sun, rest and the plan: eight steps. */
    @Test
    void everyScreenSaysWhereItIsAndGoesOnAndBack() {
        JobTexts one = things(1);
        assertEquals("Step 1 of 8", screen(one, 0).selectFirst("p.label").text());
        assertEquals("Step 7 of 8", screen(one, 6).selectFirst("p.label").text());
        assertEquals(List.of("next", "plan"), does(screen(one, 0)), "nothing to leave out, nowhere to go back to");
        assertEquals(List.of("next", "back", "plan"), does(screen(one, 1)));
        assertEquals(List.of("next", "back", "add", "plan"), does(screen(one, 2)));
        assertEquals(List.of("next", "back", "plan"), does(screen(one, 3)));
    }

    @Test
    void ofSeveralThingsOneCanBeLeftOutAndBehindTheLastOneAdded() {
        JobTexts two = things(2);
        assertEquals(List.of("next", "remove", "plan"), does(screen(two, 0)));
        assertEquals(List.of("next", "back", "plan"), does(screen(two, 2)));
        assertEquals(List.of("next", "back", "remove", "plan"), does(screen(two, 3)));
        assertEquals(List.of("next", "back", "add", "plan"), does(screen(two, 5)));
        assertEquals("What do you fit? Thing 2 of 2", screen(two, 3).selectFirst("h2").text());
        assertEquals("What do you fit?", screen(things(1), 0).selectFirst("h2").text());
        assertEquals(List.of("next", "back", "add", "plan"), does(screen(things(11), 32)));
        assertEquals(List.of("next", "back", "plan"), does(screen(things(12), 35)), "twelve are as many as a job has");
    }

    /** A question that may stay open says so with a button; one that has a usual answer needs none. */
    @Test
    void whatMayStayOpenCanBeLeftOpen() {
        assertEquals(List.of(), screen(things(1), 0).select("button[data-open]").eachAttr("data-open"));
        Document takes = screen(things(1), 1);
        assertEquals(List.of("draws", "hours", "start", "most-device"), takes.select("button[data-open]").eachAttr("data-open"));
        for (String key : takes.select("button[data-open]").eachAttr("data-open")) {
            assertEquals(1, takes.select("#job-" + key).size(), key);
        }
        assertEquals(List.of("route"), screen(things(1), 2).select("button[data-open]").eachAttr("data-open"));
    }

    @Test
    void onlyWhatAppliesIsAsked() {
        JobTexts texts = JobTexts.read("0.kind=radio&feed=battery");
        assertEquals(List.of("draws", "hours", "most-device"), Screen.of(texts).get(1).fields(texts).stream().map(each -> each.key()).toList(), "a radio has no start");
        Screen feed = Screen.asking(texts, Answers.JOB, "feed");
        assertEquals(1, feed.fields(texts).size(), "one thing needs no box");
        texts.put(0, "how-many", "2");
        assertEquals(List.of("feed", "box-route"), feed.fields(texts).stream().map(each -> each.key()).toList());
        texts.put(Answers.JOB, "feed", "panel");
        assertTrue(feed.fields(texts).stream().noneMatch(each -> each.key().equals("box-route")), "the panel is there");
        Screen rest = Screen.asking(texts, Answers.JOB, "switched");
        assertEquals(3, rest.fields(texts).size());
        texts.put(Answers.JOB, "switched", "yes");
        assertEquals(4, rest.fields(texts).size());
        assertEquals(Screen.of(texts).get(0), Screen.asking(texts, 0, "nothing"), "no such question: the first screen");
    }

    @Test
    void whatStandsInTheWayLeadsToItsAnswer() {
        Document page = Jsoup.parse(Balance.held(ObstacleMarkup.of(new Obstacle(1, "route", "It is too far.", "Feed it from nearer."))));
        assertEquals("1 route", page.selectFirst("button").attr("data-item") + " " + page.selectFirst("button").attr("data-asks"));
        assertTrue(page.text().contains("It is too far. What would help: Feed it from nearer."), page.text());
        JobTexts texts = things(2);
        Document changes = Jsoup.parse(Balance.held(ObstacleMarkup.changes(texts, true)));
        assertEquals(10, changes.select("button[data-screen]").size(), "every screen but the plan");
        assertTrue(changes.selectFirst("details").hasAttr("open"));
        assertEquals(false, Jsoup.parse(Balance.held(ObstacleMarkup.changes(texts, false))).selectFirst("details").hasAttr("open"));
    }

    /** Every job wants the lessons on dangers, fuse-links, joints and proving; a switch and outlets one more each. */
    @Test
    void theLessonsAreThoseOfWhatIsFitted() {
        List<String> always = List.of("01-what-can-hurt-you", "10-fuse-links-and-breakers", "13-joints", "16-proving-it");
        assertEquals(always, lessons("0.kind=fan&switched=no&feed=battery"));
        assertEquals(List.of(always.get(0), always.get(1), "12-outlets", always.get(2), always.get(3)), lessons("0.kind=usb&0.draws=18 W&switched=no&feed=battery"));
        assertEquals(List.of(always.get(0), always.get(1), "12-outlets", always.get(2), always.get(3)), lessons("0.kind=outlet&0.draws=5 A&switched=no&feed=battery"));
        assertEquals(List.of(always.get(0), always.get(1), "11-switching", always.get(2), always.get(3)), lessons("0.kind=fan&switched=yes&feed=battery"));
    }

    private static List<String> lessons(String answers) {
        return LessonChoice.of(Plan.of(JobTexts.read(answers).answers().answers()));
    }

    @Test
    void whatBecameDifferentIsSaidOnce() {
        Plan fan = plan("0.kind=fan&0.draws=12 W&switched=no&feed=battery");
        Plan switched = plan("0.kind=fan&0.draws=12 W&switched=yes&feed=battery");
        assertTrue(Difference.between(fan, switched).stream().anyMatch(each -> each.startsWith("New: Switch: ")), Difference.between(fan, switched).toString());
        assertTrue(Difference.between(switched, fan).stream().anyMatch(each -> each.startsWith("No more: Switch: ")), Difference.between(switched, fan).toString());
        Plan none = plan("0.kind=fridge&0.draws=8 A&0.route=40 m&feed=battery");
        assertEquals(List.of("There is no circuit for these answers now."), Difference.between(fan, none));
        assertEquals(List.of("Now there is a circuit."), Difference.between(none, fan));
        assertEquals(List.of(), Difference.between(none, none));
    }

    private static Plan plan(String answers) {
        return Plan.of(JobTexts.read(answers).answers().answers());
    }
}
