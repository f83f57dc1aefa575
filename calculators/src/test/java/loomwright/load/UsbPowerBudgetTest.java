package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UsbPowerBudgetTest {
    private static final double ROUNDED = 0.0005;

    /** 7.5 + 7.5 + 45 = 60 W, limited to 48 W; ÷ 0.8 + 1.2 = 61.2 W. */
    private static Trial triple() {
        return Trial.of(
                "usb-power-budget", "port-1-level=bc-1.2", "port-2-level=bc-1.2", "port-4-level=pd", "port-4-power=45 W", "shared-limit=48 W",
                "own-draw=1200 mW");
    }

    @Test
    void goesFromThePortsToTheSupply() {
        assertEquals(60, triple().value("ports-power"), 1e-9);
        assertEquals(48, triple().value("output-power"), 1e-9);
        assertEquals(61.2, triple().value("input-power"), 1e-9);
        assertEquals(13.2, triple().value("heat"), 1e-9);
        assertEquals(5.1, triple().value("current"), 1e-9);
        assertEquals(5.8286, triple().value("current-at-lowest"), ROUNDED);
        assertFalse(triple().answers("port-3-power"));
    }

    @Test
    void countsThePortsWhenTheLimitIsNotReached() {
        Trial trial = Trial.of("usb-power-budget", "port-1-level=type-c-3", "shared-limit=20 W");
        assertEquals(15, trial.value("output-power"), 1e-9);
        assertEquals(Verdict.PASSED, trial.finding("within their shared limit").verdict());
        for (var step : trial.working().steps()) {
            if (step instanceof ChoiceStep choice) {
                assertTrue(choice.candidates().get(0).taken());
                assertFalse(choice.candidates().get(1).taken());
            }
        }
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({
        "10 W, 5", "15 W, 5", "15.5 W, 9", "27 W, 9", "30 W, 15", "45 W, 15", "46 W, 20", "100 W, 20", "101 W, 28", "140 W, 28", "141 W, 36", "180 W, 36", "181 W, 48", "240 W, 48"
    })
    void settlesTheNextVoltageAboveAStep(String power, double voltage) {
        Trial trial = Trial.of("usb-power-budget", "port-1-level=pd", "port-1-power=" + power, "port-1-cable=5-a-50-v");
        assertEquals(voltage, trial.value("port-1-voltage"), 1e-9);
        assertEquals(Trial.number(power) / voltage, trial.value("port-1-current"), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            port-1-level=none | port-1-level: Port 1: level is “no port”, and so is every other: choose at least one
            port-3-level=pd | port-3-power: Port 3: power is empty: enter the watts of the port, from its label
            port-2-level=usb-2;port-2-power=5 W | port-2-power: Port 2: power is 5 W, but only a port with Power Delivery has a power of its own: choose that, or empty the power
            port-2-power=5 W | port-2-power: Port 2: power is 5 W, but only a port with Power Delivery has a power of its own: choose that, or empty the power
            port-1-level=usb-2;lowest-voltage=12.5 V | lowest-voltage: Lowest supply voltage is 12.5 V, above the Supply voltage of 12 V: enter a value at or below it
            """)
    void refusesWhatContradictsItself(String entries, String refusal) {
        assertEquals(refusal, Trial.of("usb-power-budget", entries.split(";")).refusal().replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @CsvSource({"60.001 W, 3-a, 60 W", "100.001 W, 5-a, 100 W"})
    void refusesMoreThanTheCableCarries(String power, String cable, String most) {
        String refusal = Trial.of("usb-power-budget", "port-1-level=pd", "port-1-power=" + power, "port-1-cable=" + cable)
                .refusal()
                .replace('\u00a0', ' ');
        assertTrue(refusal.startsWith("port-1-power: Port 1: power is " + power) && refusal.contains("takes at most " + most), refusal);
    }

    @Test
    void warnsOfASharedLimit() {
        assertEquals(Verdict.CAUTION, triple().finding("above their shared limit, 48").verdict());
        assertEquals(Verdict.NOT_KNOWN, Trial.of("usb-power-budget", "port-1-level=usb-2", "port-2-level=usb-2").finding("No shared limit").verdict());
        assertFalse(Trial.of("usb-power-budget", "port-1-level=usb-2").hasFinding("shared limit"));
        assertEquals(Verdict.PASSED, Trial.of("usb-power-budget", "port-1-level=type-c-3", "shared-limit=15 W").finding("shared limit").verdict());
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"79.9 %, below, CAUTION, 80", "80 %, within, PASSED, 90", "90 %, within, PASSED, 90", "90.1 %, above, CAUTION, 90"})
    void comparesTheEfficiencyWithPractice(String efficiency, String word, Verdict verdict, double limit) {
        Trial trial = Trial.of("usb-power-budget", "port-1-level=usb-2", "efficiency=" + efficiency);
        assertEquals(verdict, trial.finding(word + " what is planned").verdict());
        assertEquals(limit, trial.finding(word + " what is planned").limit().value(), 1e-9);
    }

    /** Only the least that is planned with is a guess; another figure is the reader's own. */
    @Test
    void saysThatTheUsualEfficiencyIsTakenForGranted() {
        assertTrue(Trial.of("usb-power-budget", "port-1-level=usb-2").finding("The efficiency").words().contains("the least efficiency that is planned with"));
        assertTrue(Trial.of("usb-power-budget", "port-1-level=usb-2", "efficiency=80 %").finding("The efficiency").words().contains("the least efficiency that is planned with"));
        for (String own : new String[] {"efficiency=80.001 %", "efficiency=79.999 %", "efficiency=90 %"}) {
            assertFalse(Trial.of("usb-power-budget", "port-1-level=usb-2", own).hasFinding("the least efficiency that is planned with"), own);
        }
    }

    @Test
    void aCableMayCarryAllItIsMarkedFor() {
        assertEquals(3, Trial.of("usb-power-budget", "port-1-level=pd", "port-1-power=60 W", "port-1-cable=3-a").value("port-1-current"), 1e-9);
        assertEquals(5, Trial.of("usb-power-budget", "port-1-level=pd", "port-1-power=100 W", "port-1-cable=5-a").value("port-1-current"), 1e-9);
    }

    @Test
    void namesTheCableOfPowerDelivery() {
        assertTrue(triple().hasFinding("Port 4 at 15\u00a0V and 3\u00a0A: its power, 45\u00a0W, is within what a cable for 3 A"));
        assertFalse(triple().hasFinding("Port 1 at"));
    }

    @Test
    void recognisesEverySlip() {
        // 1.5 + 1.5 + 3 A; 48 ÷ 5; (38.4 + 1.2) ÷ 12; 49.2 ÷ 12; (75 + 1.2) ÷ 12; 61.2 ÷ 12; 5.1 × 10.5 ÷ 12
        assertEquals("usb-amperes-for-supply-amperes", triple().slipBehind("current", "6 A"));
        assertEquals("watts-at-five-volts", triple().slipBehind("current", "9.6 A"));
        assertEquals("multiplied-by-the-efficiency", triple().slipBehind("current", "3.3 A"));
        assertEquals("efficiency-left-out", triple().slipBehind("current", "4.1 A"));
        assertEquals("shared-limit-left-out", triple().slipBehind("current", "6.35 A"));
        assertEquals("supply-voltage-for-lowest", triple().slipBehind("current-at-lowest", "5.1 A"));
        assertEquals("current-falls-with-voltage", triple().slipBehind("current-at-lowest", "4.4625 A"));
    }

    @Test
    void carriesTheDesignCurrent() {
        var next = triple().working().nextQuestions();
        assertEquals(Map.of("current", "5.829\u00a0A"), next.get(0).carried());
        assertEquals(Map.of("design-current", "5.829\u00a0A"), next.get(1).carried());
        assertEquals(Map.of("load-1-power", "61.2\u00a0W"), next.get(2).carried());
    }
}
