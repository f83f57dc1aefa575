package loomwright.plan;

import static loomwright.plan.Asked.thing;
import static loomwright.plan.Asked.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Protection;
import loomwright.circuit.Switching;
import org.junit.jupiter.api.Test;

/** Steps of a plan that are taken again, since what comes first does not pass. Lead-acid with 800 A by its maker, so that blade fuse-links do. */
class MendingTest {
    private static Asked job(String... more) {
        return Asked.job(with(new String[] {"craft=trailer", "feed=battery", "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=800 A", "box-route=1 m"}, more));
    }

    private static double rating(Plan plan, String id) {
        assertNotNull(plan.circuit(), () -> String.valueOf(plan.obstacle()));
        return ((Protection) plan.circuit().node(id).figures()).rating().base();
    }

    /** 4 A ÷ 0.85 = 4.7 A would do with 5 A. At its start 60 A flow for half a second: 350 % of 15 A is 52.5 A, by then it has opened; of 20 A 70 A. */
    @Test
    void aFuseIsLargeEnoughForTheStart() {
        String[] pump = thing("kind=pump", "draws=4 A", "start=60 A");
        Plan single = job("switched=no").item(pump).plan();
        assertEquals(20, rating(single, "main-fuse"), 1e-9);
        Plan two = job("switched=no").item(pump).item(thing("kind=radio", "draws=2 A")).plan();
        assertEquals(20, rating(two, "fuse-1"), 1e-9);
        assertTrue(rating(two, "main-fuse") > 20, "the first device opens last");
        assertEquals(5, rating(job("switched=no").item(thing("kind=pump", "draws=4 A", "start=17 A")).plan(), "main-fuse"), 1e-9);
    }

    /** Seventeen amperes are 340 % of 5 A; 17.6 A are 352 %, and the next rating that is sold is 7.5 A. */
    @Test
    void theBorderOfTheStartIsThatOfTheGate() {
        assertEquals(7.5, rating(job("switched=no").item(thing("kind=pump", "draws=4 A", "start=17.6 A")).plan(), "main-fuse"), 1e-9);
    }

    /** A motor asks a contact for twice its current: 18 A of 9 A, so 20 A. A mat of 20 A at 12 V takes 24.3 A at 14.6 V, ÷ 0.85 = 28.6 A: 30 A, more than any switch sold here. */
    @Test
    void aSwitchByHandStandsDeviceAndLoadOrItIsARelay() {
        Plan motor = job("switched=yes", "switch-route=1 m").item(thing("kind=pump", "draws=9 A")).plan();
        assertEquals(20, ((Switching) motor.circuit().node("switch").figures()).continuousCurrent().base(), 1e-9);
        assertNotNull(motor.circuit().node("run-to-switch"));
        Plan mat = job("switched=yes", "switch-route=1 m").item(thing("kind=mat", "draws=20 A")).plan();
        assertEquals(30, rating(mat, "main-fuse"), 1e-9);
        assertNull(mat.circuit().node("run-to-switch"));
        assertNotNull(mat.circuit().node("trigger-fuse"));
        assertNull(job("switched=no").item(thing("kind=mat", "draws=20 A")).plan().circuit().node("switch"));
    }

    @Test
    void whatNoSizeMendsNamesTheAnswer() {
        Obstacle battery = job("battery-limit=5 A", "switched=no").item(thing("kind=mat", "draws=20 A")).plan().obstacle();
        assertEquals("battery-limit", battery.fieldKey());
        assertEquals(Answers.JOB, battery.item());
        Obstacle sheet = job("switched=no").item(thing("kind=radio", "draws=2 A")).item(thing("kind=pump", "draws=10 A", "most-device=5 A")).plan().obstacle();
        assertEquals("1 most-device", sheet.item() + " " + sheet.fieldKey());
        // 10.5 V ÷ 500 A = 21 mΩ; the battery has 16 mΩ and 20 m of 16 mm² 20 · 1.16 = 23 mΩ.
        Obstacle start = job("switched=no").item("kind=pump", "draws=4 A", "start=500 A", "hours=0.5 h", "route=10 m").plan().obstacle();
        assertEquals("0 start", start.item() + " " + start.fieldKey());
        Obstacle many = job("switched=no").item(thing("kind=radio", "how-many=12", "draws=1 A")).item(thing("kind=radio", "draws=1 A")).plan().obstacle();
        assertNotNull(many.words());
        assertTrue(many.words().contains("13"), many.words());
    }

    /** In the engine space among others 30 A need more than the thickest cable of the table carries there. */
    @Test
    void whereNoCableCarriesItThePlaceIsNamed() {
        Plan hot = job("switched=no").item("kind=mat", "draws=40 A", "hours=0.5 h", "route=2 m", "place=engine", "beside=many", "sheath=single").plan();
        assertNull(hot.circuit());
        assertTrue(List.of("place", "draws").contains(hot.obstacle().fieldKey()), hot.obstacle().toString());
    }
}
