package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShortCircuitHeatingTest {
    private static Trial trial(String entries) {
        // what the cases of print and of slips are worked with, unless they say otherwise
        String insulated = entries.contains("insulation=") ? entries : entries + ";insulation=pvc-70";
        return Trial.of("short-circuit-heating", insulated.split(";"));
    }

    /**
     * The first line is a worked example in print, cut after one decimal (3000 × √0.4 = 1897.37): half an ampere root second. The others
     * put the printed k of the row into the equation by hand: 1000 A for 1 s asks for 1000/k mm², to four figures.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Worked example citing BS 7671:2018+A2:2022: 3000 A, 0.4 s   | current=3000 A;clearing-time=0.4 s                            | root-heating | 1897.5 A·√s | 0.5
            The same divided by k = 115                                 | current=3000 A;clearing-time=0.4 s;insulation=pvc-70          | least-size   | 16.5 mm²    | 0.05
            BS 7671 Table 43.1, 70 °C thermoplastic: 1000/115           | current=1 kA;clearing-time=1 s;insulation=pvc-70              | least-size   | 8.696 mm²   | 0.0005
            BS 7671 Table 43.1, 90 °C thermoplastic: 1000/100           | current=1 kA;clearing-time=1 s;insulation=thermoplastic-90    | least-size   | 10 mm²      | 0.0005
            BS 7671 Table 43.1, 60 °C rubber: 1000/141                  | current=1 kA;clearing-time=1 s;insulation=rubber-60           | least-size   | 7.092 mm²   | 0.0005
            BS 7671 Table 43.1, XLPE: 1000/143                          | current=1 kA;clearing-time=1 s;insulation=xlpe-90             | least-size   | 6.993 mm²   | 0.0005
            BS 7671 Table 54.2, protective, 70 °C: 1000/143             | current=1 kA;clearing-time=1000 ms;insulation=protective-pvc  | least-size   | 6.993 mm²   | 0.0005
            BS 7671 Table 54.2, protective, 90 °C: 1000/176             | current=1 kA;clearing-time=1 s;insulation=protective-xlpe     | least-size   | 5.682 mm²   | 0.0005
            BS 7671 Table 43.1: 2.5 mm² at 115, (287.5/1000)² s         | current=1 kA;size=2.5 mm²;insulation=pvc-70                   | longest-time | 0.08266 s   | 0.000005
            """)
    void agreesWithPrint(String print, String entries, String asked, String expected, double tolerance) {
        double off = trial(entries).away(asked, expected);
        assertTrue(off <= tolerance, print + " is off by " + off);
    }

    @Test
    void givesTheMeltingIntegralInAmperesSquaredSeconds() {
        assertEquals(3_600_000, trial("current=3 kA;clearing-time=400 ms").value("let-through"), 1e-6);
    }

    @Test
    void holdsTheConductorAgainstTheLeastSize() {
        Finding passed = trial("current=1000 A;clearing-time=0.07 s;size=2.5 mm²").finding("The cross-section of the conductor");
        assertEquals(Verdict.PASSED, passed.verdict());
        // √(1000² × 0.08) ÷ 115 = 2.459 mm²: 2.5 mm² has 1.6 % more
        assertEquals(Verdict.CAUTION, trial("current=1000 A;clearing-time=0.08 s;size=2.5 mm²").finding("The cross-section").verdict());
        Finding stopped = trial("current=1000 A;clearing-time=0.09 s;size=2.5 mm²").finding("The cross-section of the conductor");
        assertEquals(Verdict.STOP, stopped.verdict());
        // 1000 A × √0.09 s ÷ 115
        assertEquals(2.6087, stopped.limit().value(), 0.0001);
        assertTrue(stopped.source().locus().contains("43.1"));
    }

    /** BS 7671 Table 43.1: k = 100 for 90 °C thermoplastic, the smallest; 1000 A for 1 s asks for 1000 ÷ 100 = 10 mm². */
    @Test
    void takesTheInsulationThatFailsFirstIfNoneWasNamed() {
        Trial unnamed = Trial.of("short-circuit-heating", "current=1000 A", "clearing-time=1 s", "size=12 mm²");
        assertEquals(10, unnamed.value("least-size"), 1e-9);
        assertTrue(unnamed.hasFinding("Assuming thermoplastic insulation for 90 °C, which fails first"));
        assertFalse(trial("current=1000 A;clearing-time=1 s;size=12 mm²").hasFinding("Assuming"));
    }

    @Test
    void saysWhereTheEquationEnds() {
        assertTrue(trial("current=100 A;clearing-time=5.1 s").hasFinding("is above the time in which all heat may be taken"));
        assertFalse(trial("current=100 A;clearing-time=5 s").hasFinding("is above the time"));
        // (115 × 2.5 ÷ 100)² = 8.27 s
        assertEquals(Verdict.CAUTION, trial("current=100 A;size=2.5 mm²").finding("The time that the conductor stands").verdict());
        assertFalse(trial("current=1000 A;size=2.5 mm²").hasFinding("The time that the conductor stands"));
    }

    @Test
    void answersOnlyWhatCanBeKnown() {
        assertFalse(trial("current=100 A;size=2.5 mm²").answers("least-size"));
        assertFalse(trial("current=100 A;clearing-time=1 s").answers("longest-time"));
        assertEquals(
                "clearing-time: Time until the device has opened and Size of conductor are both empty: enter one of them, or both for a check",
                trial("current=100 A").refusal());
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource(delimiter = '|', textBlock = """
            k-of-other-insulation    | least-size   | 13.27 mm²    | current=3000 A;clearing-time=0.4 s
            k-of-other-insulation    | least-size   | 16.5 mm²     | current=3000 A;clearing-time=0.4 s;insulation=xlpe-90
            root-left-out            | least-size   | 10.43 mm²    | current=3000 A;clearing-time=0.4 s
            root-left-out            | root-heating | 1200 A·√s    | current=3000 A;clearing-time=0.4 s
            seconds-and-milliseconds | least-size   | 0.5217 mm²   | current=3000 A;clearing-time=0.4 s
            seconds-and-milliseconds | least-size   | 521.7 mm²    | current=3000 A;clearing-time=400 ms
            k-of-other-insulation    | longest-time | 0.1278 s     | current=1000 A;size=2.5 mm²
            square-left-out          | longest-time | 0.2875 s     | current=1000 A;size=2.5 mm²
            gauge-for-area           | longest-time | 2.592 s      | current=1000 A;size=14 AWG
            """)
    void recognisesKnownSlips(String key, String asked, String answer, String entries) {
        assertEquals(key, trial(entries).slipBehind(asked, answer));
    }

    /** The two forms of the equation undo each other. */
    @Property(tries = 200)
    void theLeastSizeStandsTheCurrentForJustThatTime(
            @ForAll @DoubleRange(min = 10, max = 20_000) double amperes, @ForAll @DoubleRange(min = 0.01, max = 5) double seconds) {
        String current = String.format(Locale.ROOT, "current=%.6f A", amperes);
        double least = trial(current + String.format(Locale.ROOT, ";clearing-time=%.9f s", seconds)).value("least-size");
        if (least >= 0.05 && least <= 300) {
            double longest = trial(current + String.format(Locale.ROOT, ";size=%.12f mm²", least)).value("longest-time");
            assertEquals(seconds, longest, seconds * 1e-6);
        }
    }
}
