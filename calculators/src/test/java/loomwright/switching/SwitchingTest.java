package loomwright.switching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Finding;
import loomwright.worked.Slips;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwitchingTest {
    private static final String[] HOT = {
        "current=20 A", "voltage-drop=1.2 V", "junction-to-case=1.3 K/W", "sink-to-air=2 K/W", "ambient=50 °C"
    };

    @Test
    void aCoilMayBeGivenByItsPower() {
        Trial byPower = Trial.of("coil-day", "coil-power=1.6 W", "supply-voltage=12 V");
        Trial byResistance = Trial.of("coil-day", "coil-resistance=90 Ω", "supply-voltage=12 V");
        assertEquals(byResistance.value("charge-per-day"), byPower.value("charge-per-day"), 1e-9);
    }

    @Test
    void asksForResistanceOrPowerAndNotBoth() {
        assertEquals(
                "coil-resistance: Resistance of the coil is empty, and so is its power: enter one of the two from the data sheet",
                Trial.of("coil-day").refusal());
        assertEquals(
                "coil-resistance: Resistance of the coil and Power of the coil are both entered: one is enough, so empty the other",
                Trial.of("coil-day", "coil-resistance=90 Ω", "coil-power=1.6 W").refusal());
    }

    @Test
    void stopsWhereARelayWouldNotPullIn() {
        assertEquals(
                Verdict.STOP, Trial.of("coil-day", "coil-resistance=90 Ω", "supply-voltage=7 V").finding("must have pulled in").verdict());
        assertEquals(
                Verdict.PASSED, Trial.of("coil-day", "coil-resistance=90 Ω", "supply-voltage=8 V").finding("must have pulled in").verdict());
    }

    @Test
    void saysThatTheCoilTakesMoreThanATriggerOnlyWhenItDoes() {
        assertTrue(Trial.of("coil-day", "coil-resistance=90 Ω").hasFinding("to trigger"));
        assertFalse(Trial.of("coil-day", "coil-resistance=900 Ω").hasFinding("to trigger"));
    }

    @Test
    void lossesAreEvenAtTheBreakEvenCurrent() {
        String[] parts = {"coil-power=1.7 W", "contact-resistance=2 mΩ", "on-resistance=6 mΩ", "trigger-current=15 mA"};
        double even = Trial.of("switch-compare", with(parts, "current=10 A")).value("break-even-current");
        String there = "current=" + String.format(java.util.Locale.ROOT, "%.9f", even) + " A";
        Trial trial = Trial.of("switch-compare", with(parts, there));
        assertEquals(trial.value("relay-power"), trial.value("solid-power"), 1e-6);
    }

    @Test
    void saysWhichSwitchLosesLessWhereThereIsNoBreakEven() {
        Trial solid = Trial.of("switch-compare", "current=10 A", "coil-resistance=90 Ω", "on-resistance=1 mΩ", "contact-resistance=2 mΩ");
        assertTrue(solid.hasFinding("At every current the solid-state switch loses less"));
        assertFalse(solid.answers("break-even-current"));
        Trial relay = Trial.of("switch-compare", "current=10 A", "coil-resistance=5000 Ω", "trigger-current=200 mA");
        assertTrue(relay.hasFinding("At every current the relay loses less"));
        Trial crossed = Trial.of(
                "switch-compare", "current=10 A", "coil-resistance=5000 Ω", "trigger-current=200 mA", "on-resistance=1 mΩ",
                "contact-resistance=2 mΩ");
        assertTrue(crossed.hasFinding("The relay loses less at small currents"));
    }

    @Test
    void stopsAThyristorOutputOnDirectCurrent() {
        Finding finding = Trial.of("switch-compare", "current=5 A", "coil-resistance=90 Ω", "solid-state-kind=thyristor")
                .finding("never turns d.c. off");
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("thyristor-text", finding.source().document().key());
    }

    @Test
    void cautionsAboveTheContinuousCurrentOfTheRelay() {
        Trial trial = Trial.of("switch-compare", "current=60 A", "coil-resistance=90 Ω");
        assertEquals(Verdict.PASSED, trial.finding("at 23 °C").verdict());
        assertEquals(Verdict.CAUTION, trial.finding("at 85 °C").verdict());
    }

    @Test
    void judgesTheJunctionAgainstItsLimitAndItsMargin() {
        assertEquals(Verdict.STOP, Trial.of("junction-temperature", HOT).finding("The junction").verdict());
        assertEquals(
                Verdict.CAUTION, Trial.of("junction-temperature", with(HOT, "junction-limit=140 °C")).finding("The junction").verdict());
        assertEquals(
                Verdict.PASSED, Trial.of("junction-temperature", with(HOT, "junction-limit=150 °C")).finding("The junction").verdict());
    }

    @Test
    void saysWhenNoHeatSinkCanDoIt() {
        assertTrue(Trial.of("junction-temperature", with(HOT, "junction-limit=80 °C")).hasFinding("No heat sink can do it"));
        assertFalse(Trial.of("junction-temperature", HOT).hasFinding("No heat sink can do it"));
    }

    @Test
    void warnsOfAHeatSinkTooHotToTouch() {
        assertEquals(Verdict.CAUTION, Trial.of("junction-temperature", HOT).finding("The heat sink").verdict());
        assertEquals(
                Verdict.PASSED,
                Trial.of("junction-temperature", with(HOT, "current=2 A")).finding("The heat sink").verdict());
    }

    /** A resistor carries the coil's current, a diode holds its own voltage. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"resistor, 167 V, 0.5 V", "diode-zener, 24.8 V, 0.05 V", "diode, 0.8 V, 0.05 V"})
    void theCoilMakesThePeakThatItsPartAllows(String part, String peak, String tolerance) {
        Trial trial = Trial.of("coil-suppression", "coil-resistance=55 Ω", "supply-voltage=13.5 V", "part=" + part);
        assertTrue(trial.away("peak-voltage", peak) <= Trial.number(tolerance));
        assertEquals(Verdict.CAUTION, trial.finding("reference relay").verdict());
    }

    @Test
    void cautionsAPeakAsHighAsWithNothing() {
        Trial trial = Trial.of("coil-suppression", "coil-resistance=55 Ω", "resistor=6800 Ω");
        assertEquals(Verdict.CAUTION, trial.finding("with nothing across it").verdict());
    }

    @ParameterizedTest(name = "{0} names the slip behind its own number")
    @CsvSource({
        "coil-day, coil-resistance=90 Ω;supply-voltage=14.4 V",
        "switch-compare, current=16 A;coil-power=1.7 W;contact-resistance=2 mΩ;on-resistance=6 mΩ",
        "junction-temperature, current=10 A;voltage-drop=1.2 V;junction-to-case=1.3 K/W;sink-to-air=1 K/W",
        "coil-suppression, coil-resistance=55 Ω"
    })
    void everySlipIsRecognised(String calculator, String entries) {
        Slips.assertEachIsRecognised(Trial.of(calculator, entries.split(";")));
    }

    private static String[] with(String[] entries, String more) {
        List<String> all = new ArrayList<>(List.of(entries));
        all.removeIf(entry -> entry.startsWith(more.substring(0, more.indexOf('=') + 1)));
        all.add(more);
        return all.toArray(new String[0]);
    }
}
