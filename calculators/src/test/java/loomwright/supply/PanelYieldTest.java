package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelYieldTest {
    private static final double ROUNDED = 0.005;

    private static Trial panel(String... more) {
        String[] entries = new String[more.length + 2];
        entries[0] = "panel-power=120 W";
        entries[1] = "peak-sun-hours=3.5 h";
        System.arraycopy(more, 0, entries, 2, more.length);
        return Trial.of("panel-yield", entries);
    }

    @Test
    void multipliesPowerSunAndEfficiency() {
        // 120 W × 3.5 h × 0.7; ÷ 12 V; 120 W ÷ 12 V
        assertEquals(294, panel().value("yield-per-day"), 1e-9);
        assertEquals(24.5, panel().value("charge-per-day"), 1e-9);
        assertEquals(10, panel().value("full-sun-current"), 1e-9);
        assertEquals(378, panel("efficiency=90 %").value("yield-per-day"), 1e-9);
        assertFalse(panel().answers("balance"));
        assertFalse(panel().answers("days-to-recover"));
    }

    @Test
    void keepsTheBalanceOfTheDay() {
        Trial trial = panel("energy-per-day=0.25 kWh", "deficit=40 Ah");
        assertEquals(44, trial.value("balance"), 1e-9);
        assertEquals(102.04, trial.value("panel-needed"), ROUNDED);
        // 12 V × 40 Ah ÷ 44 Wh
        assertEquals(10.909, trial.value("days-to-recover"), ROUNDED);
        assertEquals(Verdict.PASSED, trial.finding("is at least what is used in a day, 250\u00a0Wh").verdict());
    }

    @Test
    void recoversWithTheWholeYieldWhenNothingIsUsed() {
        assertEquals(480.0 / 294, panel("deficit=40 Ah").value("days-to-recover"), ROUNDED);
    }

    @Test
    void neverRecoversWithoutSurplus() {
        Trial trial = panel("energy-per-day=350 Wh", "deficit=40 Ah");
        assertFalse(trial.answers("days-to-recover"));
        assertEquals(-56, trial.value("balance"), 1e-9);
        assertTrue(trial.finding("is below what is used in a day").remedy().endsWith("What was taken is never put back."));
        assertFalse(panel("energy-per-day=350 Wh").finding("is below what is used").remedy().contains("never put back"));
        assertFalse(panel("energy-per-day=294 Wh", "deficit=40 Ah").answers("days-to-recover"));
        assertEquals(Verdict.CAUTION, panel("energy-per-day=294 Wh").finding("is only just above what is used").verdict());
    }

    @Test
    void multipliesSingleFactors() {
        Trial trial = panel("factor-2=90 %", "factor-6=50 %");
        assertEquals(45, trial.value("efficiency-in-all"), 1e-9);
        assertEquals(Verdict.PASSED, trial.finding("The efficiency of all factors").verdict());
        assertEquals("factors-averaged", trial.slipBehind("efficiency-in-all", "70 %"));
        assertEquals(Verdict.CAUTION, panel("factor-1=90 %").finding("is above the planning value").verdict());
        assertEquals(Verdict.PASSED, panel("factor-1=70 %").finding("is within the planning value").verdict());
        assertFalse(panel().hasFinding("The efficiency of all factors"));
    }

    @Test
    void refusesFactorsBesideTheWhole() {
        assertEquals(
                "efficiency: Efficiency in all is entered, and so are single factors: empty one or the other",
                panel("efficiency=70 %", "factor-3=90 %").refusal());
    }

    @ParameterizedTest(name = "charging at {0}: {1}")
    @CsvSource({"-0.1 °C, STOP", "0 °C, PASSED", "32 °F, PASSED", "45 °C, PASSED", "45.1 °C, STOP"})
    void holdsLithiumToItsChargingTemperatures(String temperature, Verdict verdict) {
        assertEquals(verdict, panel("temperature=" + temperature).finding("for charging LiFePO4").verdict());
    }

    @Test
    void remindsOfTheColdWhenNoTemperatureIsGiven() {
        assertEquals(Verdict.NOT_KNOWN, panel().finding("must not be charged below 0\u00a0°C").verdict());
        assertFalse(panel("chemistry=lead-acid").hasFinding("LiFePO4"));
        assertFalse(panel("chemistry=lead-acid", "temperature=-5 °C").hasFinding("LiFePO4"));
    }

    /** A fifth of the capacity number below 10 °C: 10 A for 50 Ah. */
    @Test
    void chargesACoolLithiumBatterySlowly() {
        assertEquals(Verdict.PASSED, panel("temperature=9.9 °C", "capacity=60 Ah").finding("what this battery takes below 10\u00a0°C, 12\u00a0A").verdict());
        assertEquals(Verdict.CAUTION, panel("temperature=9.9 °C", "capacity=50 Ah").finding("what this battery takes below").verdict());
        assertEquals(Verdict.STOP, panel("temperature=0 °C", "capacity=49 Ah").finding("what this battery takes below 10\u00a0°C, 9.8\u00a0A").verdict());
        assertFalse(panel("temperature=10 °C", "capacity=10 Ah").hasFinding("what this battery takes below"));
        assertFalse(panel("temperature=-1 °C", "capacity=10 Ah").hasFinding("what this battery takes below"));
        assertFalse(panel("temperature=5 °C").hasFinding("what this battery takes below"));
    }

    @Test
    void recognisesEverySlip() {
        // 420; 600; 120 × 12 × 0.7 = 1008; 250 × 0.7 ÷ 3.5 = 50; 250 ÷ 3.5 = 71.43; 480 ÷ 294 = 1.633
        Trial trial = panel("energy-per-day=250 Wh", "deficit=40 Ah");
        assertEquals("efficiency-left-out", trial.slipBehind("yield-per-day", "420 Wh"));
        assertEquals("divided-by-the-efficiency", trial.slipBehind("yield-per-day", "600 Wh"));
        assertEquals("daylight-for-peak-sun", trial.slipBehind("yield-per-day", "1008 Wh"));
        assertEquals("multiplied-by-the-efficiency", trial.slipBehind("panel-needed", "50 W"));
        assertEquals("efficiency-left-out-of-the-panel", trial.slipBehind("panel-needed", "71.43 W"));
        assertEquals("whole-yield-for-the-rest", trial.slipBehind("days-to-recover", "1.633 d"));
    }

    @Test
    void carriesTheChargingCurrentToItsCable() {
        assertEquals(Map.of("current", "10\u00a0A"), panel().working().nextQuestions().get(0).carried());
        assertTrue(panel().working().nextQuestions().get(0).calculatorKey().equals("voltage-drop"));
    }
}
