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

class RunTimeTest {
    private static final double ROUNDED = 0.0005;

    /** 100 Ah × 50 % ÷ 1.4 = 35.714 Ah, ÷ 10 A. */
    private static Trial coldLead() {
        return Trial.of(
                "run-time", "chemistry=lead-acid", "capacity=100 Ah", "load-current=10 A", "temperature=0 °C", "resting-voltage=12.2 V",
                "internal-resistance=12 mΩ");
    }

    private static Trial lithium(String... more) {
        String[] entries = new String[more.length + 3];
        entries[0] = "capacity=100 Ah";
        entries[1] = "load-current=10 A";
        entries[2] = "chemistry=lifepo4";
        System.arraycopy(more, 0, entries, 3, more.length);
        return Trial.of("run-time", entries);
    }

    /** Who does not say what battery it is gets the half of lead-acid, not the 80 % of LiFePO4. */
    @Test
    void opensWithTheBatteryThatGivesLess() {
        assertEquals(50, Trial.of("run-time", "capacity=100 Ah", "load-current=10 A").value("usable-capacity"), 1e-9);
        assertEquals(100, Trial.of("battery-size", "energy-per-day=600 Wh", "days=1", "battery-voltage=12 V").value("capacity"), 1e-9);
    }

    @Test
    void dividesTheUsablePartByTheCurrent() {
        assertEquals(80, lithium().value("usable-capacity"), 1e-9);
        assertEquals(8, lithium().value("run-time"), 1e-9);
        assertEquals(9, lithium("usable-depth=90 %").value("run-time"), 1e-9);
        assertFalse(lithium().answers("voltage-under-load"));
    }

    @Test
    void takesTheColdOffALeadAcidBattery() {
        assertEquals(35.714, coldLead().value("usable-capacity"), ROUNDED);
        assertEquals(3.5714, coldLead().value("run-time"), ROUNDED);
        assertEquals(12.08, coldLead().value("voltage-under-load"), 1e-9);
    }

    @ParameterizedTest(name = "{0} by the {1} leaves {2} Ah of 100 Ah")
    @CsvSource({
        "26.7 °C, sizing-worksheet, 100", "35 °C, sizing-worksheet, 100", "26.5 °C, sizing-worksheet, 96.1538", "10 °C, sizing-worksheet, 84.0336",
        "9.5 °C, sizing-worksheet, 76.9231", "-6.7 °C, sizing-worksheet, 62.8931", "5 °C, army-manual, 75", "-0.5 °C, army-manual, 40",
    })
    void takesTheColderRow(String temperature, String table, double left) {
        Trial trial = Trial.of(
                "run-time", "chemistry=lead-acid", "capacity=100 Ah", "load-current=1 A", "usable-depth=100 %", "temperature=" + temperature,
                "cold-table=" + table);
        assertEquals(left, trial.value("usable-capacity"), ROUNDED);
    }

    @ParameterizedTest
    @CsvSource({
        "-7 °C, sizing-worksheet, '-7 °C, colder than the last row of the table, -6.7 °C'",
        "-20 °C, army-manual, '-20 °C, colder than the last row of the table, -17.8 °C'",
    })
    void refusesColderThanPrint(String temperature, String table, String words) {
        String refusal = Trial.of(
                        "run-time", "chemistry=lead-acid", "capacity=100 Ah", "load-current=1 A", "temperature=" + temperature,
                        "cold-table=" + table)
                .refusal()
                .replace('\u00a0', ' ')
                .replace('\u2212', '-');
        assertTrue(refusal.startsWith("temperature: Temperature of the battery is " + words), refusal);
    }

    @Test
    void takesNothingOffLithiumButSaysWhy() {
        Trial cool = lithium("temperature=5 °C");
        assertEquals(8, cool.value("run-time"), 1e-9);
        assertEquals(Verdict.NOT_KNOWN, cool.finding("Cold takes from a LiFePO4 battery too: one maker prints 80\u00a0% of the capacity at 0 °C").verdict());
        assertFalse(lithium("temperature=10 °C").hasFinding("Cold takes from a LiFePO4 battery"));
    }

    @ParameterizedTest(name = "at {0}: drawing {1}, charging {2}")
    @CsvSource({
        "-20.5 °C, STOP, STOP", "-20 °C, PASSED, STOP", "-0.5 °C, PASSED, STOP", "0 °C, PASSED, PASSED", "45 °C, PASSED, PASSED",
        "46 °C, PASSED, STOP", "60 °C, PASSED, STOP",
    })
    void holdsLithiumToItsTemperatures(String temperature, Verdict drawing, Verdict charging) {
        Trial trial = lithium("temperature=" + temperature);
        assertEquals(drawing, trial.finding("for drawing from LiFePO4").verdict());
        assertEquals(charging, trial.finding("for charging LiFePO4").verdict());
    }

    @Test
    void namesTheLimitThatIsBroken() {
        assertEquals(-20, lithium("temperature=-25 °C").finding("for drawing").limit().value(), 1e-9);
        assertEquals(60, lithium("temperature=20 °C").finding("for drawing").limit().value(), 1e-9);
        assertEquals(0, lithium("temperature=-5 °C").finding("for charging").limit().value(), 1e-9);
        assertEquals(45, lithium("temperature=50 °C").finding("for charging").limit().value(), 1e-9);
        assertTrue(lithium("temperature=-5 °C").finding("for charging").remedy().startsWith("Do not charge it"));
        assertFalse(lithium().hasFinding("charging"));
    }

    @Test
    void holdsTheCurrentToTheLimitOfTheBattery() {
        assertEquals(Verdict.PASSED, lithium("battery-limit=11 A").finding("limit of the battery").verdict());
        assertEquals(Verdict.CAUTION, lithium("battery-limit=10 A").finding("limit of the battery").verdict());
        assertEquals(Verdict.STOP, lithium("battery-limit=9.9 A").finding("limit of the battery").verdict());
    }

    @Test
    void holdsTheVoltageUnderLoadToTheEndOfDischarge() {
        assertEquals(10.5, coldLead().finding("end of discharge").limit().value(), 1e-9);
        assertEquals(Verdict.PASSED, coldLead().finding("end of discharge").verdict());
        Trial low = lithium("resting-voltage=12 V", "internal-resistance=210 mΩ");
        assertEquals(Verdict.STOP, low.finding("end of discharge").verdict());
        assertEquals(10, low.finding("end of discharge").limit().value(), 1e-9);
        assertEquals(Verdict.CAUTION, lithium("resting-voltage=12 V", "internal-resistance=200 mΩ").finding("end of discharge").verdict());
    }

    @Test
    void refusesACurrentTheResistanceCannotLetThrough() {
        assertTrue(lithium("resting-voltage=12 V", "internal-resistance=1.2 Ω").refusal().startsWith("load-current: Current drawn cannot flow"));
        assertEquals("resting-voltage: Voltage at rest is needed here: enter a number", lithium("internal-resistance=5 mΩ").refusal());
    }

    @Test
    void pointsToPeukertAboveTheRatedCurrent() {
        assertEquals(Verdict.CAUTION, coldLead().finding("20 h rating").verdict());
        Trial slow = Trial.of("run-time", "chemistry=lead-acid", "capacity=100 Ah", "load-current=5000 mA");
        assertEquals(Verdict.PASSED, slow.finding("20 h rating").verdict());
        assertFalse(lithium().hasFinding("20 h rating"));
    }

    @Test
    void comparesTheDepthWithThePlanningValue() {
        assertEquals(Verdict.PASSED, lithium("usable-depth=80 %").finding("planning value").verdict());
        assertEquals(Verdict.CAUTION, lithium("usable-depth=85 %").finding("planning value").verdict());
        assertFalse(lithium().hasFinding("planning value"));
    }

    @Test
    void recognisesEverySlip() {
        // with 35.714 Ah of 71.43 Ah usable: 7.143, 20, 7 and 3.571 ÷ 1000 h; 13 + 0.5 V
        assertEquals("depth-left-out", coldLead().slipBehind("run-time", "7.143 h"));
        assertEquals("divided-by-the-depth", coldLead().slipBehind("run-time", "20 h"));
        assertEquals("cold-turned-over", coldLead().slipBehind("run-time", "7.0 h"));
        assertEquals("milliamperes-for-amperes", coldLead().slipBehind("run-time", "0.0035714 h"));
        Trial loaded = lithium("resting-voltage=13 V", "internal-resistance=50 mΩ");
        assertEquals("drop-added", loaded.slipBehind("voltage-under-load", "13.5 V"));
        // 100 Ah × 20 % ÷ 10 A; 100 Ah ÷ 10 A
        assertEquals("what-is-left-for-what-is-used", lithium().slipBehind("run-time", "2 h"));
        assertEquals("depth-left-out", lithium().slipBehind("run-time", "10 h"));
        Trial deep = Trial.of(
                "run-time", "chemistry=lead-acid", "capacity=100 Ah", "load-current=10 A", "temperature=0 °C", "usable-depth=60 %");
        assertEquals("cold-left-out", deep.slipBehind("run-time", "6 h"));
    }

    @Test
    void carriesWhatWasTakenToThePanel() {
        assertEquals(Map.of("deficit", "80\u00a0Ah", "chemistry", "lifepo4"), lithium().working().nextQuestions().get(0).carried());
        assertEquals(1, lithium().working().nextQuestions().size());
        assertEquals("peukert", coldLead().working().nextQuestions().get(1).calculatorKey());
        assertEquals(Map.of("capacity", "100\u00a0Ah", "load-current", "10\u00a0A"), coldLead().working().nextQuestions().get(1).carried());
    }
}
