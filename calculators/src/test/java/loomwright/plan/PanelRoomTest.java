package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether a panel that is there has room. What it may carry is kept 5 % away from; the device of its feed holds four fifths of its rating for hours. */
class PanelRoomTest {
    /** A heated mat of 6 A at 12 V takes 7.3 A at 14.6 V: with the 12.7 A that are there 20 A. */
    private static Plan plan(String ways, String limit, String rating, String size) {
        return Asked.job(
                        "craft=trailer", "feed=panel", "free-ways=" + ways, "panel-limit=" + limit, "present-load=12.7 A", "feed-rating=" + rating, "feed-size=" + size, "feed-route=1 m",
                        "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=1000 A", "switched=no")
                .item("kind=mat", "draws=6 A", "hours=0.5 h", "route=1 m", "place=inside", "beside=alone", "sheath=single").plan();
    }

    private static String why(Plan plan) {
        Chosen first = plan.chosen().get(0);
        return first.what().startsWith("Free ways") ? "" : first.why().replace('\u00a0', ' ');
    }

    @Test
    void aPanelWithRoomIsTaken() {
        assertEquals("", why(plan("1", "30 A", "30 A", "10 mm2")));
        assertTrue(plan("1", "30 A", "30 A", "10 mm2").there().containsAll(List.of("battery", "lead", "main-fuse", "feed", "fuse-box")), "nobody buys what is there");
    }

    /** 20 A are 95 % of 21.05 A and four fifths of 25 A. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0 | 30 A | 30 A | 10 mm2 | it has 0 free ways, and 1 are needed",
        "1 | 21 A | 21 A | 10 mm2 | come too near to the 21 A that it may carry in all",
        "1 | 40 A | 24.9 A | 10 mm2 | more than the device of its feed, 24.9 A, holds for hours",
        "1 | 30 A | 30.1 A | 10 mm2 | is above what the panel may carry",
        "1 | 50 A | 50 A | 6 mm2 | carries less than the 50 A that guard it"
    })
    void aPanelWithoutRoomIsLeftAndItIsSaidWhy(String ways, String limit, String rating, String size, String words) {
        String why = why(plan(ways, limit, rating, size));
        assertTrue(why.startsWith("The panel takes no more: ") && why.contains(words), why);
    }

    @Test
    void atItsLimitsThereIsRoom() {
        assertEquals("", why(plan("1", "40 A", "25 A", "10 mm2")));
        assertEquals("", why(plan("1", "30 A", "30 A", "10 mm2")));
    }

    /** A way of 10 A behind a feed of 10 A might open second. */
    @Test
    void aWayIsBelowTheDeviceOfTheFeed() {
        Plan plan = Asked.job(
                        "craft=trailer", "feed=panel", "free-ways=1", "panel-limit=30 A", "present-load=0 A", "feed-rating=10 A", "feed-size=10 mm2", "feed-route=1 m",
                        "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=1000 A", "switched=no")
                .item("kind=mat", "draws=6 A", "hours=0.5 h", "route=1 m", "place=inside", "beside=alone", "sheath=single").plan();
        assertTrue(why(plan).contains("a way of 10 A behind a feed of 10 A might open second"), why(plan));
    }

    @Test
    void whatAPersonHasToDecideIsAsked() {
        assertEquals(List.of(), plan("1", "30 A", "30 A", "10 mm2").asks());
        assertEquals(List.of("Shall the bilge pump", "Has the boat a petrol engine"), openings("bilge", "craft=boat", "chemistry=lead-acid", "capacity=100 Ah"));
        assertEquals(List.of("Which battery is it?", "Has the craft a petrol engine"), openings("radio", "craft=not-known"));
        assertEquals(List.of("Which navigation lights", "The run and the fuse-link of the solar controller"), openings("navigation", "craft=shed", "chemistry=lead-acid", "capacity=100 Ah", "panel-power=50 W"));
    }

    private static List<String> openings(String kind, String... known) {
        Plan plan = Asked.job(known).item("kind=" + kind, "draws=12 W", "route=2 m").plan();
        assertNull(plan.obstacle(), () -> plan.obstacle().words());
        List<String> all = List.of(
                "Shall the bilge pump", "Which battery is it?", "Has the boat a petrol engine", "Has the craft a petrol engine", "Which navigation lights",
                "The run and the fuse-link of the solar controller");
        return plan.asks().stream().map(each -> all.stream().filter(each::startsWith).findFirst().orElse(each)).toList();
    }
}
