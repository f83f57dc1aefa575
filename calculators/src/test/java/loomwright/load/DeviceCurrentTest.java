package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeviceCurrentTest {
    private static final double ROUNDED = 0.0005;

    @Test
    void dividesTheWattsByEfficiencyAndVoltage() {
        // 60 W ÷ 0.85 = 70.588 W; ÷ 12 V, ÷ 10.5 V, ÷ 14.6 V
        Trial trial = Trial.of("device-current", "power=60 W", "efficiency=85 %");
        assertEquals(60, trial.value("device-power"), 1e-12);
        assertEquals(70.588, trial.value("input-power"), ROUNDED);
        assertEquals(5.882, trial.value("current"), ROUNDED);
        assertEquals(6.723, trial.value("current-at-lowest"), ROUNDED);
        assertEquals(4.835, trial.value("current-at-highest"), ROUNDED);
        assertEquals(6.723, trial.value("largest-current"), ROUNDED);
    }

    @Test
    void makesWattsOfTheLabelsVoltsAndAmperes() {
        assertEquals(15, Trial.of("device-current", "device-voltage=5 V", "device-current=3000 mA").value("device-power"), 1e-12);
    }

    @Test
    void lettingTheVoltageFallLowersTheCurrentOfAFixedResistance() {
        // 12 W at 12 V is 1 A; × 10.5 ÷ 12 and × 14.6 ÷ 12
        Trial trial = Trial.of("device-current", "power=12 W", "load-kind=resistive");
        assertEquals(1, trial.value("current"), 1e-12);
        assertEquals(0.875, trial.value("current-at-lowest"), 1e-12);
        assertEquals(1.2167, trial.value("current-at-highest"), ROUNDED);
        assertEquals(1.2167, trial.value("largest-current"), ROUNDED);
    }

    @Test
    void takesTheWattsOfAHeaterAtTheVoltageOfItsLabel() {
        // 60 W at 12 V is 5 A, a resistance of 2.4 Ω; 13.8 V ÷ 2.4 Ω = 5.75 A, 14.6 V ÷ 2.4 Ω = 6.083 A
        Trial trial = Trial.of("device-current", "power=60 W", "device-voltage=12 V", "load-kind=resistive", "supply-voltage=13.8 V");
        assertEquals(5.75, trial.value("current"), 1e-9);
        assertEquals(6.083, trial.value("largest-current"), ROUNDED);
    }

    @Test
    void leavesTheCurrentOfALoadThatHoldsIt() {
        Trial trial = Trial.of("device-current", "power=12 W", "load-kind=constant-current");
        for (String key : new String[] {"current", "current-at-lowest", "current-at-highest", "largest-current"}) {
            assertEquals(1, trial.value(key), 1e-12, key);
        }
    }

    @Test
    void showsWhichOfTheCurrentsIsTaken() {
        var steps = Trial.of("device-current", "power=12 W").working().steps();
        ChoiceStep choice = (ChoiceStep) steps.get(steps.size() - 1);
        assertEquals("at 10.5\u00a0V: no other is larger", choice.candidates().get(0).reason());
        assertTrue(choice.candidates().get(0).taken());
        assertFalse(choice.candidates().get(1).taken());
        assertFalse(choice.candidates().get(2).taken());
    }

    /** 60 W ÷ 0.80 ÷ 10.5 V = 7.143 A; 60 W ÷ 0.95 ÷ 10.5 V = 6.015 A; 60 W ÷ 10.5 V = 5.714 A. */
    @ParameterizedTest(name = "{0}: {1} A")
    @CsvSource({"not-known, 7.143", "usb-outlet, 7.143", "module, 7.143", "synchronous, 6.015", "none, 5.714"})
    void takesTheLeastEfficiencyOfTheKindOfConverter(String converter, double amperes) {
        assertEquals(amperes, Trial.of("device-current", "power=60 W", "converter=" + converter).value("largest-current"), ROUNDED);
    }

    @Test
    void opensWithAConverterAndSaysThatItsEfficiencyIsAssumed() {
        Trial trial = Trial.of("device-current", "power=60 W");
        assertEquals(75, trial.value("input-power"), 1e-9);
        assertTrue(trial.finding("planned with").words().startsWith("Assuming the least efficiency of its kind: "));
        assertFalse(Trial.of("device-current", "power=60 W", "efficiency=80 %").hasFinding("Assuming"));
    }

    @Test
    void needsNoChoiceAtOneVoltage() {
        Trial trial = Trial.of("device-current", "power=2984 W", "efficiency=80 %", "supply-voltage=48", "lowest-voltage=48", "highest-voltage=48");
        assertEquals(2, trial.working().steps().size());
        assertEquals(trial.value("current"), trial.value("largest-current"), 0);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            -                     | -                  | power: Power of the device is empty: enter the watts of the label, or Voltage at the device and Current at the device
            device-voltage=5 V    | -                  | device-current: Current at the device is empty: the label's volts and amperes make its watts together. Enter both, or Power of the device
            device-current=5 A    | -                  | device-voltage: Voltage at the device is empty: the label's volts and amperes make its watts together. Enter both, or Power of the device
            power=5 W             | device-current=1 A | device-current: Current at the device is not needed beside Power of the device: empty it, or empty the power and enter Voltage at the device
            power=5 W             | lowest-voltage=13 V | lowest-voltage: Lowest supply voltage is 13 V, above the Supply voltage of 12 V: enter a value at or below it
            power=5 W             | supply-voltage=24 V | highest-voltage: Highest supply voltage is 14.6 V, below the Supply voltage of 24 V: enter a value at or above it
            """)
    void refusesWhatDoesNotGoTogether(String first, String second, String message) {
        String[] entries = first == null ? new String[0] : second == null ? new String[] {first} : new String[] {first, second};
        assertEquals(message, Trial.of("device-current", entries).refusal().replace('\u00a0', ' '));
    }

    @Test
    void refusesAHeaterBehindAConverter() {
        assertEquals(
                "device-voltage: Voltage at the device is 5 V, but the supply gives 10.5 V to 14.6 V: then a converter stands between. "
                        + "Choose the load that holds its power, and enter the converter's efficiency",
                Trial.of("device-current", "power=5 W", "device-voltage=5 V", "load-kind=resistive").refusal().replace('\u00a0', ' '));
        assertEquals(
                "efficiency: Efficiency of the converter is 85 %: a load behind a converter holds its power. Choose that, or no converter and no efficiency",
                Trial.of("device-current", "power=5 W", "efficiency=85 %", "load-kind=constant-current").refusal().replace('\u00a0', ' '));
    }

    @Test
    void saysWhatCurrentToDesignFor() {
        Finding worst = Trial.of("device-current", "power=90 W", "efficiency=85 %").finding("design current");
        assertEquals(Verdict.CAUTION, worst.verdict());
        assertEquals(
                "The current at 12 V, 8.82 A, is below the design current, which is drawn at 10.5 V, 10.1 A.", worst.words().replace('\u00a0', ' '));
        assertEquals(
                Verdict.PASSED, Trial.of("device-current", "power=90 W", "load-kind=constant-current").finding("design current").verdict());
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            efficiency=85 %  | power=60 W          | PASSED  | 85 %, is within
            efficiency=80 %  | power=60 W          | PASSED  | 80 %, is within
            efficiency=90 %  | power=60 W          | PASSED  | 90 %, is within
            efficiency=95 %  | power=60 W          | CAUTION | 95 %, is above
            efficiency=60 %  | power=60 W          | PASSED  | 60 %, is within
            efficiency=100 % | device-voltage=5 V  | CAUTION | so there is a converter
            """)
    void holdsTheEfficiencyAgainstThePlanningFigure(String efficiency, String device, String verdict, String part) {
        String more = device.startsWith("power") ? "load-kind=constant-power" : "device-current=1 A";
        Finding finding = Trial.of("device-current", efficiency, device, more).finding("planned with");
        assertEquals(verdict, finding.verdict().name());
        assertTrue(finding.words().replace('\u00a0', ' ').contains(part), finding.words());
        assertEquals("common practice", finding.source().standing().words());
    }

    @Test
    void saysNothingOfConvertersWhereThereIsNone() {
        assertFalse(Trial.of("device-current", "power=12 W", "load-kind=resistive").hasFinding("onverter"));
        assertFalse(Trial.of("device-current", "device-voltage=12 V", "device-current=1 A").hasFinding("onverter"));
    }

    @Test
    void warnsOfAWindowThatHidesTheWorstCurrent() {
        assertEquals(
                Verdict.CAUTION, Trial.of("device-current", "power=60 W", "lowest-voltage=11.5 V").finding("for the end where this load draws most, 11.5").verdict());
        assertEquals(
                Verdict.CAUTION,
                Trial.of("device-current", "power=60 W", "highest-voltage=13 V", "load-kind=resistive").finding("for the end where this load draws most, 13").verdict());
        assertFalse(Trial.of("device-current", "power=60 W", "highest-voltage=13 V").hasFinding("for the end where this load draws most, 13"));
        assertFalse(Trial.of("device-current", "power=60 W").hasFinding("the end where this load draws most"));
    }

    @ParameterizedTest(name = "{0} {1}: {3} for {2} is {4}")
    @CsvSource({
        "device-voltage=5 V, device-current=3 A, device-power, 1.667 W, divided-volts-by-amperes",
        "device-voltage=5 V, device-current=500 mA, device-power, 2500 W, milliamperes-as-amperes-label",
        "device-voltage=5 V, device-current=3 A, current, 3 A, device-side-amperes",
        "power=45 W, device-voltage=20 V, current, 2.25 A, device-side-amperes",
        "power=45 W, load-kind=constant-power, current, 9 A, amperes-at-5-v",
        "power=45 W, load-kind=constant-power, current, 2.25 A, amperes-at-20-v",
        "power=60 W, load-kind=constant-power, input-power, 51 W, efficiency-multiplied",
        "power=60 W, load-kind=constant-power, input-power, 60 W, efficiency-left-out",
        "power=60 W, load-kind=constant-power, current, 4.25 A, efficiency-multiplied-current",
        "power=60 W, load-kind=constant-power, current, 5 A, efficiency-left-out-current",
        "power=60 W, supply-voltage=12.8 V, current, 5.882 A, nominal-voltage",
        "power=60 W, load-kind=constant-power, current, 5882 A, milliamperes-as-amperes",
        "power=60 W, load-kind=constant-power, current-at-lowest, 5.714 A, efficiency-left-out-current-at-lowest",
        "power=60 W, load-kind=constant-power, current-at-lowest, 5.882 A, supply-voltage-for-lowest",
        "power=60 W, load-kind=constant-power, current-at-lowest, 5.147 A, as-a-resistance-lowest",
        "power=60 W, load-kind=constant-power, current-at-highest, 5.882 A, supply-voltage-for-highest",
        "power=60 W, load-kind=constant-power, current-at-highest, 7.157 A, as-a-resistance-highest",
        "power=60 W, load-kind=constant-power, largest-current, 5.882 A, usual-for-largest",
        "power=60 W, load-kind=constant-power, largest-current, 5.714 A, efficiency-left-out-largest-current"
    })
    void knowsTheSlipBehindAConverter(String first, String second, String asked, String answer, String slip) {
        assertEquals(slip, Trial.of("device-current", first, second, "efficiency=85 %").slipBehind(asked, answer));
    }

    @ParameterizedTest(name = "heater: {1} for {0} is {2}")
    @CsvSource({
        "current-at-lowest, 1.143 A, as-constant-power-lowest",
        "current-at-highest, 0.822 A, as-constant-power-highest",
        "largest-current, 1 A, usual-for-largest"
    })
    void knowsTheSlipWithAHeater(String asked, String answer, String slip) {
        assertEquals(slip, Trial.of("device-current", "power=12 W", "load-kind=resistive").slipBehind(asked, answer));
    }

    @Test
    void leavesOutMistakesThatDoNoHarmHere() {
        var slips = Trial.of("device-current", "power=12 W", "load-kind=constant-current").working().slips();
        assertEquals(1, slips.size(), slips.toString());
        assertEquals("milliamperes-as-amperes", slips.get(0).key());
    }

    @Test
    void carriesTheDesignCurrentOn() {
        var next = Trial.of("device-current", "power=90 W", "efficiency=85 %").working().nextQuestions().get(0);
        assertEquals("voltage-drop", next.calculatorKey());
        assertEquals("10.08\u00a0A", next.carried().get("current"));
    }
}
