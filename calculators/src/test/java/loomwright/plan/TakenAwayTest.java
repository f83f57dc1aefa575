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
}
