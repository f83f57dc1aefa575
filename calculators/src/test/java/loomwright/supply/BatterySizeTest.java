package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

class BatterySizeTest {
    /** 1200 Wh at 12 V are 100 Ah; × 2 days ÷ 50 % × 1.3. */
    private static Trial cold() {
        return Trial.of(
                "battery-size", "energy-per-day=1.2 kWh", "chemistry=lead-acid", "days=2", "temperature=5 °C");
    }

    @Test
    void countsDaysDepthAndCold() {
        assertEquals(100, cold().value("charge-per-day"), 1e-9);
        assertEquals(520, cold().value("capacity"), 1e-9);
        assertEquals(500, cold().value("rule-of-five"), 1e-9);
    }

    @Test
    void countsNoColdWithoutATemperatureOrForLithium() {
        assertEquals(200, Trial.of("battery-size", "energy-per-day=1200", "chemistry=lead-acid").value("capacity"), 1e-9);
        Trial lithium = Trial.of("battery-size", "energy-per-day=1200", "chemistry=lifepo4", "temperature=-5 °C");
        assertEquals(125, lithium.value("capacity"), 1e-9);
        assertEquals(Verdict.STOP, lithium.finding("for charging LiFePO4").verdict());
        assertFalse(cold().hasFinding("LiFePO4"));
        assertFalse(Trial.of("battery-size", "energy-per-day=1200", "chemistry=lifepo4").hasFinding("charging"));
    }

    @Test
    void refusesColderThanTheWorksheet() {
        assertTrue(Trial.of("battery-size", "energy-per-day=1200", "chemistry=lead-acid", "temperature=-10 °C")
                .refusal()
                .startsWith("temperature: Temperature of the battery is"));
    }

    @Test
    void recognisesEverySlip() {
        // 100 × 2 × 1.3; 100 × 2 × 0.5 × 1.3; 100 ÷ 0.5 × 1.3; 400 ÷ 1.3; 400
        assertEquals("watt-hours-for-ampere-hours", cold().slipBehind("charge-per-day", "1200 Ah"));
        assertEquals("multiplied-by-the-depth", cold().slipBehind("capacity", "130 Ah"));
        assertEquals("cold-turned-over", cold().slipBehind("capacity", "307.7 Ah"));
        assertEquals("cold-left-out", cold().slipBehind("capacity", "400 Ah"));
        Trial three = Trial.of("battery-size", "energy-per-day=1200", "chemistry=lead-acid", "days=3", "temperature=5 °C");
        assertEquals("depth-left-out", three.slipBehind("capacity", "390 Ah"));
        assertEquals("days-left-out", three.slipBehind("capacity", "260 Ah"));
        Trial warm = Trial.of("battery-size", "energy-per-day=1200", "chemistry=lifepo4", "days=3");
        assertEquals("depth-left-out", warm.slipBehind("capacity", "300 Ah"));
        assertEquals("multiplied-by-the-depth", warm.slipBehind("capacity", "240 Ah"));
        assertEquals("days-left-out", warm.slipBehind("capacity", "125 Ah"));
    }

    @Test
    void carriesOn() {
        var next = cold().working().nextQuestions();
        assertEquals(Map.of("energy-per-day", "1200\u00a0Wh", "battery-voltage", "12\u00a0V", "chemistry", "lead-acid"), next.get(0).carried());
        assertEquals(Map.of("capacity", "520\u00a0Ah", "chemistry", "lead-acid"), next.get(1).carried());
    }
}
