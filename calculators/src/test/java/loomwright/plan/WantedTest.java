package loomwright.plan;

import static loomwright.plan.Asked.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What becomes of the answers about the things: their names, what is entered for them, and what is said of each careful value. */
class WantedTest {
    private static final String[] ALL_SAID = {"hours=2 h", "most-device=10 A", "route=3 m", "place=inside", "beside=alone", "sheath=single"};

    private static Job job(Asked asked) {
        return Job.of(asked.answers());
    }

    private static String[] said(String... more) {
        return with(more, ALL_SAID);
    }

    private static Asked known() {
        return Asked.job("craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=60 Ah", "switched=no", "box-route=1 m");
    }

    private static List<String> names(Asked asked) {
        return job(asked).needs().stream().map(Need::name).toList();
    }

    private static List<String> taken(Asked asked) {
        return job(asked).taken().stream().map(Taken::fieldKey).toList();
    }

    private static Taken taken(Asked asked, String field) {
        return job(asked).taken().stream().filter(each -> each.fieldKey().equals(field)).findFirst().orElseThrow();
    }

    @Test
    void thingsOfOneKindAreNumberedThroughAndOneAloneIsNot() {
        assertEquals(List.of("Radio"), names(known().item("kind=radio")));
        assertEquals(
                List.of("Fan 1", "Fan 2", "Radio", "Fan 3", "Fan 4", "Fan 5"),
                names(known().item("kind=fan", "how-many=2").item("kind=radio").item("kind=fan", "how-many=3")));
        // Several lights of one line hang on one run.
        assertEquals(List.of("Lights"), names(known().item("kind=lights", "how-many=4")));
        assertEquals(List.of("Lights 1", "Lights 2"), names(known().item("kind=lights", "how-many=4").item("kind=lights")));
    }

    @Test
    void lightsOfOneRunDrawTogetherAndAllElseByItself() {
        assertEquals("48 W", job(known().item(said("kind=lights", "draws=12 W", "how-many=4"))).needs().get(0).texts().get("power"));
        assertEquals("12 W", job(known().item(said("kind=fan", "draws=12 W", "how-many=4"))).needs().get(0).texts().get("power"));
        assertEquals("3 A", job(known().item(said("kind=pump", "draws=3 A"))).needs().get(0).texts().get("current"));
        assertEquals("36 W", job(known().item(said("kind=usb", "draws=36 W"))).needs().get(0).texts().get("ports-power"));
        assertEquals("usb-outlet", job(known().item(said("kind=usb", "draws=36 W"))).needs().get(0).texts().get("converter"));
        assertFalse(job(known().item(said("kind=radio", "draws=36 W"))).needs().get(0).texts().containsKey("converter"));
    }

    @Test
    void nothingIsTakenWhereAllWasSaid() {
        assertEquals(List.of(), taken(known().item(said("kind=radio", "draws=2 A"))));
        assertEquals(List.of("box-route"), taken(Asked.job("craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=60 Ah", "switched=no")
                .item(said("kind=radio", "draws=2 A")).item(said("kind=radio", "draws=2 A"))), "one thing alone needs no fuse box");
        assertEquals(List.of("switch-route"), taken(Asked.job("craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=60 Ah", "switched=yes")
                .item(said("kind=radio", "draws=2 A"))));
        assertEquals(List.of("switched"), taken(Asked.job("craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=60 Ah").item(said("kind=radio", "draws=2 A"))));
    }

    /** The rows of the table usual-loads; a motor takes four times its running current at its start, of 30 W at 12 V 2.5 A four times: 10 A. */
    @Test
    void everyCarefulValueIsSaidWithItsFigure() {
        Asked fan = known().item("kind=fan");
        assertEquals(List.of("draws", "hours", "start", "most-device", "route", "place", "beside", "sheath"), taken(fan));
        assertEquals("Nobody said what it takes: 30 W is taken, as for a fan.", taken(fan, "draws").words());
        assertEquals("invented", taken(fan, "draws").standing());
        assertTrue(taken(fan, "hours").words().contains("10\u00a0h a day"), taken(fan, "hours").words());
        assertTrue(taken(fan, "start").words().contains("4 times its running current is taken, 10\u00a0A"), taken(fan, "start").words());
        assertTrue(taken(fan, "route").words().contains("6\u00a0m"), taken(fan, "route").words());
        assertTrue(taken(fan, "place").words().contains("55 °C under a roof in the sun"), taken(fan, "place").words());
        assertTrue(taken(fan, "beside").words().contains("24 conductors"), taken(fan, "beside").words());
        Need need = job(fan).needs().get(0);
        assertEquals("10 A", need.texts().get("start-current"));
        assertEquals("10 h", need.texts().get("hours"));
        assertEquals(6, need.route().base(), 1e-9);
        assertTrue(need.lasting(), "how long it is on was left open");
    }

    /** A blade holds 80 % of its rating for hours: of an outlet of 10 A that is 8 A. */
    @Test
    void anOutletDrawsWhatItsFuseHoldsForHours() {
        Asked outlet = known().item("kind=outlet", "most-device=10 A", "hours=2 h", "route=3 m");
        assertEquals("8 A", job(outlet).needs().get(0).texts().get("current"));
        assertTrue(taken(outlet, "draws").words().endsWith("is taken, 8\u00a0A."), taken(outlet, "draws").words());
        assertEquals("10 A", job(known().item("kind=outlet")).needs().get(0).texts().get("current"));
        assertEquals("10 A", job(outlet).needs().get(0).texts().get("outlet-rating"));
    }

    @Test
    void threeHoursLast() {
        assertTrue(job(known().item("kind=radio", "hours=3 h")).needs().get(0).lasting());
        assertFalse(job(known().item("kind=radio", "hours=2.9 h")).needs().get(0).lasting());
    }

    @Test
    void onlyWhatHasAMotorOrMayHaveOneStarts() {
        assertEquals("7 A", job(known().item("kind=other", "draws=2 A", "start=7 A")).needs().get(0).texts().get("start-current"));
        assertFalse(job(known().item("kind=other", "draws=2 A")).needs().get(0).texts().containsKey("start-current"));
        assertFalse(job(known().item("kind=radio", "draws=2 A", "start=7 A")).needs().get(0).texts().containsKey("start-current"));
        // Of 2 A four times.
        assertEquals("8 A", job(known().item("kind=pump", "draws=2 A")).needs().get(0).texts().get("start-current"));
    }

    @Test
    void whatIsTakenOfOneOfSeveralThingsNamesIt() {
        Asked two = known().item(said("kind=radio", "draws=2 A")).item(said("kind=fan"));
        assertTrue(taken(two, "draws").words().startsWith("Thing 2, Fan: nobody said what it takes"), taken(two, "draws").words());
        Asked first = known().item("kind=radio", "hours=2 h", "most-device=10 A", "route=3 m", "place=inside", "beside=alone", "sheath=single").item(said("kind=fan", "draws=1 A", "start=2 A"));
        assertTrue(taken(first, "draws").words().startsWith("Thing 1, Radio: nobody said"), taken(first, "draws").words());
        assertTrue(taken(known().item("kind=fan"), "draws").words().startsWith("Nobody said"));
    }

    /** In a trailer no way is longer than 6 m; a boat is longer. Where cable is sold by AWG a length is one of feet. */
    @Test
    void aLengthThatNobodySaidIsThatOfTheCraft() {
        assertEquals("6\u00a0m", job(Asked.job("craft=trailer").item("kind=fan")).needs().get(0).route().text());
        assertEquals("10\u00a0m", job(Asked.job("craft=boat").item("kind=fan")).needs().get(0).route().text());
        assertEquals("10\u00a0m", job(Asked.job().item("kind=fan")).needs().get(0).route().text());
        Job american = job(Asked.job("craft=trailer", "cable=awg").item("kind=fan"));
        assertTrue(american.needs().get(0).route().text().endsWith("ft"), american.needs().get(0).route().text());
        assertEquals(6, american.needs().get(0).route().base(), 0.16, "to the half foot");
        assertTrue(american.cables().byGauge());
        assertFalse(job(Asked.job("cable=mm2").item("kind=fan")).cables().byGauge());
    }
}
