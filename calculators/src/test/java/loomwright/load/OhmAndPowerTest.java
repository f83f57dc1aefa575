package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.quantity.Units;
import loomwright.worked.FormulaStep;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OhmAndPowerTest {
    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({
        "voltage=12 V, current=3 A", "voltage=12 V, resistance=4 Ω", "voltage=12 V, power=36 W",
        "current=3 A, resistance=4 Ω", "current=3 A, power=36 W", "resistance=4 Ω, power=36 W"
    })
    void findsAllFourFromAnyTwo(String first, String second) {
        Trial trial = Trial.of("ohm-and-power", first, second);
        assertEquals(12, trial.value("voltage"), 1e-12);
        assertEquals(3, trial.value("current"), 1e-12);
        assertEquals(4, trial.value("resistance"), 1e-12);
        assertEquals(36, trial.value("power"), 1e-12);
        assertEquals(2, trial.working().steps().size());
    }

    @Test
    void showsTheNumbersPutIn() {
        FormulaStep step = (FormulaStep) Trial.of("ohm-and-power", "resistance=4 Ω", "power=36 W").working().steps().get(0);
        assertEquals("I = √(P ÷ R)", step.formula().symbolicText());
        assertEquals("I = √(36\u00a0W ÷ 4\u00a0Ω) = 3\u00a0A", step.formula().workedText(step.values(), step.result()));
    }

    @Test
    void turnsMilliamperesIntoAmperesFirst() {
        Trial trial = Trial.of("ohm-and-power", "current=500 mA", "power=6 W");
        assertEquals(12, trial.value("voltage"), 1e-12);
        assertEquals(Units.AMPERE, trial.working().steps().get(0).result().unit());
    }

    /** The next calculators take 0.001 A to 1000 A, and 0.01 W to 10 kW at what a 12 V system may have. */
    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource(delimiter = '|', value = {
        "voltage=12 V | current=0.001 A | voltage-drop device-current", "voltage=12 V | current=0.0009 A | device-current", "voltage=12 V | current=0.0008 A | ",
        "voltage=12.5 V | current=800 A | voltage-drop device-current", "voltage=12.5 V | current=800.1 A | voltage-drop", "voltage=12 V | current=1000 A | voltage-drop", "voltage=12 V | current=1000.1 A | ",
        "voltage=5 V | current=1 A | voltage-drop", "voltage=40 V | current=1 A | voltage-drop"
    })
    void offersOnlyWhatTheNextCalculatorTakes(String first, String second, String offered) {
        assertEquals(
                offered == null ? "" : offered,
                String.join(" ", Trial.of("ohm-and-power", first, second).working().nextQuestions().stream().map(each -> each.calculatorKey()).toList()));
    }

    @Test
    void refusesEmptyFieldsByName() {
        assertEquals(
                "voltage: Voltage, Current, Resistance and Power are all empty: enter two of them", Trial.of("ohm-and-power").refusal());
    }

    @Test
    void refusesOneAloneAndNamesTheOthers() {
        assertEquals(
                "voltage: Only Current is entered: enter one of Voltage, Resistance or Power as well",
                Trial.of("ohm-and-power", "current=2 A").refusal());
        assertEquals(
                "current: Only Voltage is entered: enter one of Current, Resistance or Power as well",
                Trial.of("ohm-and-power", "voltage=2 V").refusal());
    }

    @Test
    void refusesThreeOrFourAndNamesThem() {
        assertEquals(
                "power: Voltage, Current and Power are entered: two are enough and give the rest, so empty the others",
                Trial.of("ohm-and-power", "voltage=12 V", "current=2 A", "power=24 W").refusal());
        assertEquals(
                "power: Voltage, Current, Resistance and Power are entered: two are enough and give the rest, so empty the others",
                Trial.of("ohm-and-power", "voltage=12 V", "current=2 A", "power=24 W", "resistance=6").refusal());
    }

    @Test
    void refusesTwoThatDoNotGoTogether() {
        assertEquals(
                "power: Current of 0.01\u00a0mA and Power of 1\u00a0kW do not go together: the voltage would be above 1000\u00a0V. "
                        + "Look at the units of both",
                Trial.of("ohm-and-power", "current=0.01 mA", "power=1 kW").refusal());
        assertEquals(
                "resistance: Voltage of 1\u00a0mV and Resistance of 1000\u00a0Ω do not go together: the current would be below "
                        + "0.00001\u00a0A. Look at the units of both",
                Trial.of("ohm-and-power", "voltage=1 mV", "resistance=1000 Ω").refusal());
    }

    @Test
    void looksAtTheUpperEndOfTheWindowForAFixedResistance() {
        // 14.6 V ÷ 90 Ω = 0.1622 A; 14.6 V × 14.6 V ÷ 90 Ω = 2.368 W
        var finding = Trial.of("ohm-and-power", "voltage=12 V", "resistance=90 Ω").finding("moves between 10.5\u00a0V and 14.6\u00a0V");
        assertEquals(Verdict.CAUTION, finding.verdict());
        assertTrue(finding.words().contains("draws 0.1622\u00a0A and turns 2.368\u00a0W into heat"), finding.words());
        assertEquals("common practice", finding.source().standing().words());
        assertEquals(
                Verdict.PASSED, Trial.of("ohm-and-power", "voltage=14.6 V", "resistance=90 Ω").finding("upper end").verdict());
    }

    @Test
    void saysNothingOfTheWindowElsewhere() {
        assertFalse(Trial.of("ohm-and-power", "voltage=48 V", "resistance=90 Ω").hasFinding("12 V system"));
        assertTrue(Trial.of("ohm-and-power", "voltage=12 V", "power=6 W").working().findings().isEmpty());
    }

    @ParameterizedTest(name = "{0}, {1}: {3} for the {2} is {4}")
    @CsvSource({
        "voltage=12 V, resistance=90 Ω, current, 1080 A, multiplied-current",
        "voltage=12 V, resistance=90 Ω, current, 7.5 A, turned-over-current",
        "voltage=12 V, resistance=90 Ω, current, 133 A, milliamperes-as-amperes",
        "voltage=12 V, resistance=90 Ω, power, 0.133 W, square-forgotten-power",
        "voltage=12 V, resistance=90 Ω, power, 1080 W, multiplied-power",
        "voltage=12 V, power=6 W, current, 72 A, multiplied-current",
        "voltage=12 V, power=6 W, current, 2 A, turned-over-current",
        "voltage=12 V, power=6 W, resistance, 2 Ω, square-forgotten-resistance",
        "voltage=12 V, current=4 A, resistance, 48 Ω, multiplied-resistance",
        "voltage=12 V, current=4 A, resistance, 0.333 Ω, turned-over-resistance",
        "voltage=12 V, current=4 A, power, 3 W, divided-power",
        "current=5 A, resistance=0.06 Ω, voltage, 83.3 V, divided-voltage",
        "current=5 A, resistance=0.06 Ω, voltage, 0.012 V, divided-the-other-way-voltage",
        "current=5 A, resistance=0.06 Ω, power, 0.3 W, square-forgotten-power",
        "current=2 A, power=6 W, voltage, 12 V, multiplied-voltage",
        "current=2 A, power=6 W, voltage, 0.333 V, turned-over-voltage",
        "current=2 A, power=6 W, resistance, 3 Ω, square-forgotten-resistance",
        "resistance=4 Ω, power=36 W, current, 9 A, root-forgotten-current",
        "resistance=4 Ω, power=36 W, voltage, 144 V, root-forgotten-voltage",
        "voltage=12 V, current=133 mA, power, 1596 W, milliamperes-as-amperes-power",
        "voltage=12 V, current=133 mA, resistance, 0.0902 Ω, milliamperes-as-amperes-resistance",
        "resistance=4 Ω, current=500 mA, voltage, 2000 V, milliamperes-as-amperes-voltage"
    })
    void knowsTheSlip(String first, String second, String asked, String answer, String slip) {
        assertEquals(slip, Trial.of("ohm-and-power", first, second).slipBehind(asked, answer));
    }

    @Test
    void carriesTheCurrentOn() {
        var next = Trial.of("ohm-and-power", "voltage=12 V", "power=6 W").working().nextQuestions();
        assertEquals("0.5\u00a0A", next.get(0).carried().get("current"));
        assertEquals("6\u00a0W", next.get(1).carried().get("power"));
        assertEquals("12\u00a0V", next.get(1).carried().get("supply-voltage"));
    }

    @Test
    void carriesNothingThatTheNextCalculatorWouldRefuse() {
        assertTrue(Trial.of("ohm-and-power", "voltage=48 V", "resistance=1000000 Ω").working().nextQuestions().isEmpty());
    }
}
