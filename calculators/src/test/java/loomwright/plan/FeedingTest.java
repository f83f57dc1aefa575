package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Protection;
import loomwright.protection.DeviceKind;
import org.junit.jupiter.api.Test;

/** Where a job is fed from. */
class FeedingTest {
    private static final List<String> PANEL = List.of("panel-limit=30 A", "present-load=6 A", "free-ways=2", "feed-rating=25 A", "feed-size=10 mm2", "feed-route=2 m");

    private static Asked fedFrom(String feed, List<String> panel) {
        List<String> job = new ArrayList<>(List.of("chemistry=lead-acid", "capacity=100 Ah", "short-circuit-current=1000 A", "switched=no"));
        job.addAll(panel);
        job.add("feed=" + feed);
        return Asked.job(job.toArray(String[]::new)).item("kind=radio", "draws=2 A", "route=3 m", "hours=1 h");
    }

    @Test
    void aPanelOfWhichAllIsKnownIsTakenAsItIs() {
        Feeding panel = Job.of(fedFrom("panel", PANEL).answers()).panel();
        assertEquals("30 A, 6 A, 25 A, 10 mm², 2 m", String.join(", ", panel.limit().text(), panel.present().text(), panel.rating().text(), panel.size().text(), panel.route().text()).replace('\u00a0', ' '));
        assertEquals(2, panel.ways());
        assertNull(Job.of(fedFrom("battery", PANEL).answers()).panel());
        assertNull(Job.of(fedFrom("not-known", PANEL).answers()).panel());
    }

    @Test
    void nothingIsPutOnAPanelOfWhichAnythingIsNotKnown() {
        for (String left : PANEL) {
            List<String> rest = PANEL.stream().filter(each -> !each.equals(left)).toList();
            Job job = Job.of(fedFrom("panel", rest).answers());
            assertNull(job.panel(), left);
            String key = left.substring(0, left.indexOf('='));
            assertTrue(job.taken().stream().anyMatch(each -> each.fieldKey().equals(key)), left);
            assertNotNull(fedFrom("panel", rest).plan().circuit().node(Draft.MAIN));
        }
    }

    /** Free ways that are none at all leave nothing to use. */
    @Test
    void withoutAFreeWayItGetsACircuitOfItsOwn() {
        List<String> none = PANEL.stream().map(each -> each.replace("free-ways=2", "free-ways=0")).toList();
        assertEquals("A circuit of its own from the battery", fedFrom("panel", none).plan().chosen().get(0).what());
        assertEquals("Free ways of the fuse panel", fedFrom("panel", PANEL).plan().chosen().get(0).what());
    }

    /** A battery of which nothing is known may drive any current into a short circuit, so every device is of the kind that breaks most. */
    @Test
    void anUnknownBatteryAsksForTheKindThatBreaksMost() {
        Plan unknown = twoUsbOutlets("craft=trailer");
        assertEquals(List.of(DeviceKind.CLASS_T, DeviceKind.CLASS_T, DeviceKind.CLASS_T), kinds(unknown));
        assertEquals(List.of(DeviceKind.CLASS_T, DeviceKind.CLASS_T, DeviceKind.CLASS_T), kinds(twoUsbOutlets("chemistry=lifepo4")), "its kind alone is not enough");
        // The maker's 800 A are less than the 1000 A that a blade fuse-link breaks.
        assertEquals(List.of(DeviceKind.BLADE, DeviceKind.BLADE, DeviceKind.BLADE), kinds(twoUsbOutlets("short-circuit-current=800 A")));
    }

    private static Plan twoUsbOutlets(String known) {
        return Asked.job("feed=battery", "box-route=1 m", "switched=no", known)
                .item("kind=usb", "how-many=2", "draws=36 W", "hours=3 h", "route=5 m", "place=inside", "beside=few", "sheath=single").plan();
    }

    private static List<DeviceKind> kinds(Plan plan) {
        return plan.circuit().nodes().stream().filter(node -> node.figures() instanceof Protection)
                .map(node -> ((Protection) node.figures()).device()).toList();
    }
}
