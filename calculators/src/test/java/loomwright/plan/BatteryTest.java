package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Supply;
import org.junit.jupiter.api.Test;

/** What the answers say of the battery, and what stands for what they leave open. */
class BatteryTest {
    private final List<Taken> taken = new ArrayList<>();

    private Battery battery(String... job) {
        taken.clear();
        return Battery.of(Asked.job(job).item("kind=radio").answers().job(), taken);
    }

    private List<String> takenFor() {
        return taken.stream().map(Taken::fieldKey).toList();
    }

    /** Of lead-acid less may be taken out; LiFePO4 drives more through a short circuit. */
    @Test
    void leftOpenItIsTheHarderOfBothKindsAndSaid() {
        Battery open = battery();
        assertEquals("lead-acid", open.texts().get("chemistry"));
        assertEquals("lifepo4-100-ah", open.texts().get("battery"));
        assertEquals("100 Ah", open.texts().get("capacity"));
        assertFalse(open.isKnown());
        assertEquals(List.of("chemistry", "capacity"), takenFor());
    }

    @Test
    void kindAndSizeTogetherMakeItKnown() {
        Battery lead = battery("chemistry=lead-acid", "capacity=60 Ah");
        assertEquals("lead-acid", lead.texts().get("chemistry"));
        assertEquals("lead-acid-100-ah", lead.texts().get("battery"));
        assertEquals("60 Ah", lead.texts().get("capacity"));
        assertTrue(lead.isKnown());
        assertEquals(List.of(), takenFor());
        Battery lithium = battery("chemistry=lifepo4", "capacity=200 Ah");
        assertEquals("lifepo4", lithium.texts().get("chemistry"));
        assertEquals("lifepo4-100-ah", lithium.texts().get("battery"));
        assertTrue(lithium.isKnown());
        assertFalse(battery("chemistry=lifepo4").isKnown());
        assertEquals(List.of("capacity"), takenFor());
        assertFalse(battery("capacity=60 Ah").isKnown());
        assertEquals(List.of("chemistry"), takenFor());
    }

    @Test
    void theMakersShortCircuitCurrentStandsForAllElse() {
        Battery said = battery("short-circuit-current=800 A");
        assertTrue(said.isKnown());
        assertEquals("short-circuit-current", said.texts().get("battery"));
        assertEquals("800 A", said.texts().get("short-circuit-current"));
    }

    @Test
    void whatWasSaidOfItReachesTheCircuit() {
        Supply supply = Supply.of(battery("battery-limit=50 A", "panel-power=100 W", "peak-sun-hours=3 h", "days-wanted=2 d").part());
        assertEquals(50, supply.currentLimit().base(), 1e-9);
        assertEquals(100, supply.solarPower().base(), 1e-9);
        assertEquals(3 * 3600, supply.peakSunHours().base(), 1e-9);
        assertEquals(2 * 86400, supply.daysWanted().base(), 1e-9);
        assertFalse(takenFor().contains("peak-sun-hours"));
    }

    @Test
    void aPanelWithoutItsSunGetsADullDayAndNoPanelGetsNone() {
        assertEquals("2 h", battery("panel-power=100 W").texts().get("peak-sun-hours"));
        assertEquals(List.of("chemistry", "capacity", "peak-sun-hours"), takenFor());
        assertFalse(battery("peak-sun-hours=3 h").texts().containsKey("peak-sun-hours"));
        assertFalse(battery().texts().containsKey("battery-limit"));
    }
}
