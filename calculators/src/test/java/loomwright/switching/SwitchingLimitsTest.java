package loomwright.switching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said exactly at a limit, and one step beyond it. */
class SwitchingLimitsTest {
    /** 10 A × 1 V × (2 + 1 + 1) K/W = 40 K above the air: from 25 °C the junction comes to 65 °C and the sink to 35 °C. */
    @ParameterizedTest(name = "limit {0}")
    @CsvSource({"64.9 °C, STOP", "65 °C, CAUTION", "74.9 °C, CAUTION", "75 °C, PASSED"})
    void theJunctionMayReachItsLimitAndHasAMarginOfTenKelvin(String limit, Verdict verdict) {
        Finding finding = junction("junction-limit=" + limit, "sink-to-air=1 K/W", "ambient=25 °C").finding("The junction");
        assertEquals(verdict, finding.verdict(), finding.words());
        assertEquals(verdict == Verdict.PASSED, finding.words().contains("is within"));
    }

    /** 10 W × (2 + 1) K/W = 30 K are used up before the sink: with air of 30 °C and a limit of 60 °C nothing is left for it. */
    @Test
    void aHeatSinkOfNothingIsNone() {
        assertTrue(junction("junction-limit=60 °C", "sink-to-air=1 K/W", "ambient=30 °C").hasFinding("No heat sink can do it"));
        assertFalse(junction("junction-limit=60.1 °C", "sink-to-air=1 K/W", "ambient=30 °C").hasFinding("No heat sink can do it"));
    }

    /** Coil at 12 V: 12 V ÷ 1200 Ω = 10 mA, as much as the trigger takes. */
    @ParameterizedTest(name = "coil {0}, on {1}, contact {2}")
    @CsvSource({
        "1200 Ω, 2 mΩ, 2 mΩ, both lose the same",
        "1200 Ω, 1 mΩ, 2 mΩ, the solid-state switch loses less",
        "1200 Ω, 3 mΩ, 2 mΩ, the relay loses less",
        "1000 Ω, 2 mΩ, 2 mΩ, the solid-state switch loses less",
        "1500 Ω, 2 mΩ, 2 mΩ, the relay loses less"
    })
    void equalFiguresGiveNoBreakEven(String coil, String on, String contact, String words) {
        Trial trial = Trial.of(
                "switch-compare", "current=10 A", "supply-voltage=12 V", "coil-resistance=" + coil, "on-resistance=" + on,
                "contact-resistance=" + contact, "trigger-current=10 mA");
        assertTrue(trial.hasFinding("At every current " + words), trial.working().findings()::toString);
        assertFalse(trial.answers("break-even-current"));
    }

    private static Trial junction(String limit, String sink, String ambient) {
        return Trial.of(
                "junction-temperature", "current=10 A", "voltage-drop=1 V", "junction-to-case=2 K/W", "case-to-sink=1 K/W", limit, sink, ambient);
    }
}
