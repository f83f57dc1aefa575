package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.markup.Balance;
import loomwright.markup.Links;
import loomwright.plan.page.Difference;
import loomwright.plan.page.LessonFact;
import loomwright.plan.page.PlanSheet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** What a reader takes away: the shopping list, what became different, the sheets. */
class TakenAwayTest {
    private static Asked lamp(String route) {
        return Asked.job("craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=60 Ah", "switched=no")
                .item("kind=lights", "draws=12 W", "hours=4 h", "route=" + route, "place=inside", "beside=alone", "sheath=single");
    }

    /** Lead 0.15 m without allowance, run 4 m and 0.25 m at each end: two of each, 0.3 m + 9 m = 9.3 m of 1 mm², sold by the metre: 10 m. Two runs have eight ends, and two terminals to spare. */
    @Test
    void theListHasTheLengthsWithTheirAllowanceAndTheSmallThings() {
        List<Bought> list = Shopping.of(lamp("4 m").plan());
        Bought cable = list.stream().filter(each -> each.what().startsWith("1\u00a0mm²")).findFirst().orElseThrow();
        assertEquals("10 m", cable.count());
        assertTrue(cable.what().contains("60\u00a0°C or more"), cable.what());
        Bought terminals = list.stream().filter(each -> each.what().startsWith("terminals")).findFirst().orElseThrow();
        assertEquals("10", terminals.count());
        assertTrue(terminals.what().contains("red sleeve"), terminals.what());
        assertTrue(list.stream().anyMatch(each -> each.what().equals("spare class T fuse of 2\u00a0A") && each.count().equals("2")), list.toString());
        // 4.15 m of route by 0.45 m between supports: 9.2, so 10.
        assertTrue(list.stream().anyMatch(each -> each.what().startsWith("cushioned clips") && each.count().equals("10")), list.toString());
        assertTrue(list.stream().noneMatch(each -> each.what().contains("battery of") || each.what().startsWith("Lights")), "what is there is not bought");
    }

    /**
     * On free ways of a panel that is there, its feed, lead, main fuse and box are not bought. The run of 12 ft of 16 AWG has 10 in (0.82 ft) at each end: 2 · (12 + 1.64) = 27.3 ft, so 28 ft.
     */
    @Test
    void whatIsThereIsNotBoughtAndCableByGaugeIsSoldByTheFoot() {
        List<Bought> list = Shopping.of(Asked.job(
                        "craft=trailer", "cable=awg", "feed=panel", "free-ways=2", "panel-limit=30 A", "present-load=6 A", "feed-rating=30 A", "feed-size=8 AWG",
                        "feed-route=6 ft", "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=1000 A", "switched=no")
                .item("kind=lights", "draws=12 W", "hours=5 h", "route=12 ft", "place=inside", "beside=alone", "sheath=single").plan());
        assertTrue(list.stream().anyMatch(each -> each.what().startsWith("16\u00a0AWG") && each.count().equals("28 ft")), list.toString());
        for (String there : List.of("8\u00a0AWG", "fuse panel", "class T", "bar for")) {
            assertTrue(list.stream().noneMatch(each -> each.what().contains(there)), there + list);
        }
    }

    /** Two ways, and one to spare: three; as many screws on the bar. */
    @Test
    void aNewFuseBoxIsBoughtWithItsWaysAndABarForTheWayBack() {
        Plan plan = Asked.job("feed=battery", "chemistry=lifepo4", "capacity=100 Ah", "box-route=1 m", "switched=no", "craft=trailer")
                .item("kind=usb", "how-many=2", "draws=18 W", "hours=3 h", "route=3 m", "place=inside", "beside=alone", "sheath=single").plan();
        List<Bought> list = Shopping.of(plan);
        Document page = Jsoup.parse(Balance.held(PlanSheet.of(new Links(""), plan, List.of(), "")));
        assertEquals("18 W at its USB ports", page.select(".plan [data-part=load-1] .what").first().text());
        assertTrue(list.stream().anyMatch(each -> each.what().startsWith("fuse panel") && each.what().contains("3 ways")), list.toString());
        assertTrue(list.stream().anyMatch(each -> each.what().startsWith("bar for") && each.what().contains("3 screws")), list.toString());
    }

    /** At 10 m 2 mm² and thinner lose at most 1.2 V; 1 mm² loses 20.3 m · 19.95 mΩ/m · 1.2 A = 0.49 V: still 1 mm². At 30 m 60.3 m · 19.95 = 1.203 Ω · 1.33 A is too much. */
    @Test
    void aLongerWayIsSaidToChangeTheRun() {
        List<String> words = Difference.between(lamp("4 m").plan(), lamp("30 m").plan());
        assertTrue(words.stream().anyMatch(each -> each.startsWith("Run to Lights: 1\u00a0mm², 4\u00a0m") && each.contains("became Run to Lights: 1.5\u00a0mm², 30\u00a0m")), words.toString());
        assertEquals(List.of(), Difference.between(lamp("4 m").plan(), lamp("4 m").plan()));
    }

    /** A switch that there was not is new, and has taken no other choice's place; taken away again it is no more. */
    @Test
    void whatIsNewAndWhatIsGoneIsSaidAsThat() {
        Plan without = lampSaid("no");
        Plan with = lampSaid("yes");
        assertTrue(Difference.between(without, with).stream().anyMatch(each -> each.startsWith("New: Switch: by hand")), Difference.between(without, with).toString());
        assertTrue(Difference.between(with, without).stream().anyMatch(each -> each.startsWith("No more: Switch: by hand")), Difference.between(with, without).toString());
        assertTrue(Difference.between(without, with).stream().noneMatch(each -> each.contains("became Switch")));
    }

    @Test
    void theSheetsNameEveryPartAndEveryReasonAndTheLessonsWithTheirTime() {
        Plan plan = lamp("4 m").plan();
        Document page = Jsoup.parse(Balance.held(PlanSheet.of(new Links(""), plan, List.of(new LessonFact("13-joints", "Joints", 30), new LessonFact("07-conductors", "Conductors", 20)), "0.kind=lights")));
        assertEquals(plan.circuit().nodes().size(), page.select(".plan [data-part]").size());
        assertEquals(plan.chosen().size(), page.select("ol.reasons > li").size());
        assertEquals("lessons/13-joints.html", page.select("#job-lessons ~ ol a").attr("href"));
        assertTrue(page.select("#job-lessons ~ p").text().contains("30 minutes"), page.select("#job-lessons ~ p").text());
        assertTrue(page.select("#job-bench").attr("href").startsWith("your-circuit.html#circuit="));
        assertEquals(0, page.select("[data-verdict=stop]").size());
    }

    private static Bought line(List<Bought> list, String what) {
        return list.stream().filter(each -> each.what().replace('\u00a0', ' ').startsWith(what)).findFirst().orElseThrow(() -> new AssertionError(list.toString()));
    }

    /** Lead and run: two runs with four ends each, and two holes. */
    @Test
    void theSmallThingsAreCountedByTheRuns() {
        List<Bought> list = Shopping.of(lamp("4 m").plan());
        assertEquals("8", line(list, "pieces of heat-shrink").count());
        assertEquals("4", line(list, "grommets").count());
        assertEquals("4", line(list, "labels").count());
        assertEquals("1", line(list, "holder for a class T fuse, rated 2 A").count());
        assertTrue(list.stream().noneMatch(each -> each.what().contains("relay") || each.what().startsWith("bar for")), list.toString());
    }

    /** Three fuse-links alike have three holders and the two spares of their kind, the places named. Three runs of 1 mm²: twelve ends, three to spare. */
    @Test
    void whatIsAlikeIsOneLine() {
        List<Bought> list = Shopping.of(Asked.job("feed=battery", "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=800 A", "box-route=1 m", "switched=no", "craft=trailer")
                .item("kind=radio", "how-many=3", "draws=6 W", "hours=2 h", "route=3 m", "place=inside", "beside=alone", "sheath=single").plan());
        Bought holder = line(list, "holder for a blade fuse-link, rated 1 A");
        assertEquals("3", holder.count());
        assertEquals(3, holder.where().split(", ").length, holder.where());
        Bought spare = line(list, "spare blade fuse-link of 1 A");
        assertEquals("2", spare.count());
        assertEquals(holder.where(), spare.where());
        // Lead, feed and three runs are all of 1 mm²: 20 ends, four to spare.
        assertEquals("24", line(list, "terminals for 1 mm²").count());
        assertTrue(line(list, "terminals for 1 mm²").what().endsWith("with 4 to spare"));
    }

    @Test
    void aRelayIsBoughtForAHotPlaceWithItsSocket() {
        Asked mat = Asked.job("feed=battery", "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=800 A", "switched=yes", "switch-route=1 m", "craft=trailer")
                .item("kind=mat", "draws=20 A", "hours=1 h", "route=2 m", "place=inside", "beside=alone", "sheath=single");
        List<Bought> relays = Shopping.of(mat.plan()).stream().filter(each -> each.what().contains("of the 70 A class, with its socket")).toList();
        assertEquals(1, relays.size());
        assertTrue(relays.get(0).what().startsWith("a relay for"), relays.toString());
    }

    @Test
    void nothingThatAReaderNeedsIsLeftOffTheSheets() {
        Plan plan = Asked.job("craft=boat").item("kind=bilge").item("kind=outlet").plan();
        Document page = Jsoup.parse(Balance.held(PlanSheet.of(new Links(""), plan, List.of(new LessonFact("12-outlets", "Outlets", 25)), "0.kind=bilge")));
        assertEquals(
                List.of("job-plan", "job-asks", "job-why", "job-taken", "job-shopping", "job-test", "job-found", "job-lessons"), page.select("section > h2").eachAttr("id"));
        assertEquals(plan.asks().stream().map(TakenAwayTest::plain).toList(), page.select("#job-asks ~ ul > li").eachText().stream().map(TakenAwayTest::plain).toList());
        assertEquals(
                plan.taken().stream().map(each -> plain(each.words() + " (" + each.standing() + ")")).toList(),
                page.select("#job-taken ~ ul > li").eachText().stream().map(TakenAwayTest::plain).toList());
        assertEquals(
                Shopping.of(plan).stream().map(each -> plain(each.what())).toList(),
                page.select("#job-shopping ~ div tbody th").eachText().stream().map(TakenAwayTest::plain).toList());
        assertTrue(page.select("#job-tools").size() == 1 && page.select("#job-shopping ~ p").text().contains("crimp tool"));
        assertTrue(page.select("#job-plan ~ p").text().startsWith("Worked out on the careful side: "), page.select("#job-plan ~ p").text());
        assertEquals(3, page.select("#job-plan ~ div[aria-label='Table: Sizes and devices'] tbody td").stream().filter(each -> each.text().startsWith("class T")).count(), "main fuse and one for each");
        assertEquals(4, page.select("#job-plan ~ div[aria-label='Table: Sizes and devices'] tbody td").stream().filter(each -> each.text().contains("two conductors")).count(), "lead, feed and a run for each");
        assertTrue(page.select("#job-link").attr("href").endsWith("first-job.html#0.kind=bilge"));
        assertTrue(!page.select("#job-test ~ details table").isEmpty());
        Document known = Jsoup.parse(Balance.held(PlanSheet.of(new Links(""), lampSaid(), List.of(), "")));
        assertEquals(List.of("job-plan", "job-why", "job-shopping", "job-test", "job-found"), known.select("section > h2").eachAttr("id"));
        assertEquals(0, known.select("#job-link").size());
    }

    /** All that is asked was said. */
    private static Plan lampSaid() {
        return lampSaid("no");
    }

    private static Plan lampSaid(String switched) {
        return Asked.job("craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=60 Ah", "switched=" + switched, "switch-route=1 m")
                .item("kind=lights", "draws=12 W", "hours=4 h", "most-device=10 A", "route=4 m", "place=inside", "beside=alone", "sheath=single").plan();
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    /** What matters always, and besides what has to do with a switch or an outlet. */
    @Test
    void theLessonsAreThoseOfTheJob() {
        assertEquals(List.of("01-what-can-hurt-you", "10-fuse-links-and-breakers", "13-joints", "16-proving-it"), lessons("lights", "no"));
        assertEquals(List.of("01-what-can-hurt-you", "10-fuse-links-and-breakers", "11-switching", "13-joints", "16-proving-it"), lessons("lights", "yes"));
        assertEquals(List.of("01-what-can-hurt-you", "10-fuse-links-and-breakers", "12-outlets", "13-joints", "16-proving-it"), lessons("usb", "no"));
        assertEquals(List.of("01-what-can-hurt-you", "10-fuse-links-and-breakers", "12-outlets", "13-joints", "16-proving-it"), lessons("outlet", "no"));
    }

    private static List<String> lessons(String kind, String switched) {
        List<LessonFact> all = List.of(
                new LessonFact("01-what-can-hurt-you", "a", 10), new LessonFact("08-voltage-drop", "b", 10), new LessonFact("10-fuse-links-and-breakers", "c", 10),
                new LessonFact("11-switching", "d", 10), new LessonFact("12-outlets", "e", 10), new LessonFact("13-joints", "f", 10), new LessonFact("16-proving-it", "g", 10));
        Plan plan = Asked.job("craft=trailer", "short-circuit-current=800 A", "switched=" + switched).item("kind=" + kind, "route=2 m").plan();
        return Jsoup.parse(PlanSheet.of(new Links(""), plan, all, "")).select("#job-lessons ~ ol a").eachAttr("href").stream()
                .map(each -> each.substring("lessons/".length(), each.length() - ".html".length())).toList();
    }
}
