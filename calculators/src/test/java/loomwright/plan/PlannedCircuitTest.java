package loomwright.plan;

import static loomwright.plan.Asked.made;
import static loomwright.plan.Asked.thing;
import static loomwright.plan.Asked.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.circuit.Switching;
import org.junit.jupiter.api.Test;

/** Which parts a planned circuit has, how they hang together, and what they are called. */
class PlannedCircuitTest {
    private static final String[] BATTERY = {"craft=trailer", "chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=800 A"};
    private static final String[] PANEL = {
        "feed=panel", "free-ways=4", "panel-limit=100 A", "present-load=0 A", "feed-rating=50 A", "feed-size=16 mm²", "feed-route=1 m"};

    private static Asked job(String... more) {
        return Asked.job(with(BATTERY, more));
    }

    private static String name(Plan plan, String id) {
        return plan.circuit().part(id).name();
    }

    private static String before(Plan plan, String id) {
        Node node = plan.circuit().node(id);
        return node == null ? "none" : node.parent().id();
    }

    @Test
    void oneThingHasTheFirstFuseForItselfAndSeveralAFuseBox() {
        Plan one = made(job("feed=battery", "switched=no").item(thing("kind=radio", "draws=2 A")));
        assertEquals("Fuse of Radio", name(one, "main-fuse"));
        assertEquals("isolator", before(one, "run-1"));
        assertNull(one.circuit().node("fuse-box"));
        Plan two = made(job("feed=battery", "switched=no", "box-route=1 m").item(thing("kind=radio", "draws=2 A")).item(thing("kind=fan", "draws=12 W")));
        assertEquals("Main fuse", name(two, "main-fuse"));
        assertEquals("New fuse box", name(two, "fuse-box"));
        assertEquals("feed", before(two, "fuse-box"));
        assertEquals("Fuse of Radio", name(two, "fuse-1"));
        assertEquals("fuse-1", before(two, "run-1"));
        assertEquals("fuse-box", before(two, "fuse-2"));
        assertEquals(List.of("battery", "load-1", "load-2"), two.there());
    }

    /** A mat of 20 A wants a fuse of 30 A, more than a switch by hand carries: a relay, whose trigger begins at the panel. A radio keeps its switch by hand. */
    @Test
    void onAPanelEachThingHasASwitchOfItsOwnAndARelayTakesItsTriggerThere() {
        Plan plan = made(Asked.job(with(BATTERY, with(PANEL, "switched=yes", "switch-route=1 m"))).item(thing("kind=mat", "draws=20 A")).item(thing("kind=radio", "draws=2 A")));
        assertEquals(Switching.Device.RELAY, ((Switching) plan.circuit().node("switch-1").figures()).device());
        assertEquals("fuse-1", before(plan, "switch-1"));
        assertEquals("fuse-box", before(plan, "trigger-fuse"));
        assertEquals("on-switch", plan.circuit().node("switch-1").trigger().id());
        assertEquals(Switching.Device.MANUAL, ((Switching) plan.circuit().node("switch-2").figures()).device());
        assertEquals("run-to-switch-2", before(plan, "switch-2"));
        assertEquals("switch-2", before(plan, "run-2"));
        assertEquals("Main fuse of the panel", name(plan, "main-fuse"));
        assertEquals("Fuse panel", name(plan, "fuse-box"));
        assertEquals(List.of("battery", "load-1", "load-2", "lead", "main-fuse", "feed", "fuse-box"), plan.there());
        Plan byHand = made(Asked.job(with(BATTERY, with(PANEL, "switched=yes", "switch-route=1 m"))).item(thing("kind=radio", "draws=2 A")));
        assertNull(byHand.circuit().node("trigger-fuse"));
        assertEquals("run-to-switch-1", before(byHand, "switch-1"));
    }

    @Test
    void withItsOwnBatteryFeedOneSwitchPartsAllAndItsTriggerBeginsBehindTheIsolator() {
        Plan relay = made(job("feed=battery", "switched=yes", "switch-route=1 m", "box-route=1 m").item(thing("kind=mat", "draws=20 A")).item(thing("kind=radio", "draws=2 A")));
        assertEquals("isolator", before(relay, "trigger-fuse"));
        assertEquals("isolator", before(relay, "switch"));
        assertEquals("switch", before(relay, "feed"));
        assertEquals("none", before(relay, "switch-1"));
        Plan byHand = made(job("feed=battery", "switched=yes", "switch-route=1 m", "box-route=1 m").item(thing("kind=radio", "draws=1 A")).item(thing("kind=radio", "draws=2 A")));
        assertEquals("none", before(byHand, "trigger-fuse"));
        assertEquals("run-to-switch", before(byHand, "switch"));
    }

    /** 40 W ÷ 10.5 V = 3.81 A: in the warm ÷ 0.68 = 5.6 A, so 7.5 A; where it is no warmer than 20 °C ÷ 0.8 = 4.76 A, so 5 A. */
    @Test
    void whereTheSheetAllowsNoMoreTheFuseSitsCool() {
        String[] radio = {"kind=radio", "draws=40 W", "hours=5 h", "route=2 m", "place=inside", "beside=alone", "sheath=single"};
        assertEquals(7.5, ((Protection) made(job("feed=battery", "switched=no").item(radio)).circuit().node("main-fuse").figures()).rating().base(), 1e-9);
        Plan cool = made(job("feed=battery", "switched=no").item(with(radio, "most-device=5 A")));
        assertEquals(5, ((Protection) cool.circuit().node("main-fuse").figures()).rating().base(), 1e-9);
        Obstacle none = job("feed=battery", "switched=no").item(with(radio, "most-device=4 A")).plan().obstacle();
        assertEquals("0 most-device", none.item() + " " + none.fieldKey());
        assertTrue(none.words().contains("3.81\u00a0A") && none.words().contains("5\u00a0A") && none.words().contains("no more than 4\u00a0A"), none.words());
    }

    @Test
    void twelveRunsAreAJobAndThirteenAreNone() {
        assertNotNull(job("feed=battery", "switched=no").item(thing("kind=radio", "how-many=12", "draws=0.1 A")).plan().circuit());
        Obstacle many = job("feed=battery", "switched=no").item(thing("kind=radio", "how-many=12", "draws=0.1 A")).item(thing("kind=fan", "draws=1 W")).plan().obstacle();
        assertEquals("-1 how-many", many.item() + " " + many.fieldKey());
    }

    @Test
    void theAnswerInTheWayOfACableIsItsPlaceOrElseWhatItCarries() {
        // In the engine space among many others even 16 mm² carries little: Table 5 gives 100 A at the most, × 0.85 × 0.5.
        String[] hot = {"kind=mat", "draws=40 A", "hours=0.5 h", "route=2 m", "place=engine", "beside=many", "sheath=single"};
        Obstacle place = job("feed=battery", "switched=no").item(hot).plan().obstacle();
        assertEquals("0 place", place.item() + " " + place.fieldKey());
        assertTrue(place.words().contains("No cable up to 16\u00a0mm²") && place.words().endsWith("through an engine space."), place.words());
        Obstacle alone = job("feed=battery", "switched=no").item(thing("kind=mat", "draws=100 A")).plan().obstacle();
        assertEquals("0 draws", alone.item() + " " + alone.fieldKey());
        assertFalse(alone.words().contains("null"), alone.words());
    }

    /** A lamp makes about ten times its current: 10 A ask for more than the 70 A class of relay stands. */
    @Test
    void whatNoContactStandsNamesTheSwitch() {
        Obstacle lamps = job("feed=battery", "switched=yes", "switch-route=1 m").item(thing("kind=other", "draws=20 A")).plan().obstacle();
        assertEquals("-1 switched", lamps.item() + " " + lamps.fieldKey());
    }
}
