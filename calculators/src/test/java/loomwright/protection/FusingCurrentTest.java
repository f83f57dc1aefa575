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

class FusingCurrentTest {
    private static Trial trial(String entries) {
        return Trial.of("fusing-current", entries.split(";"));
    }

    /** Printed to whole amperes or hundredths of a second: half the last digit. Preece is worked by hand from the printed constant. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Discussion of the fusing equation, right sign: 2581 circular mils, 5 s | size=2581 circular mil;time=5 s            | onderdonk-current | 169 A    | 0.5
            The same discussion: 14 AWG at 400 A                                  | size=14 AWG;current=400 A                  | onderdonk-time    | 2.26 s   | 0.005
            Brooks, Eq. 1: 10244 A × 0.064^1.5                                    | size=0.064 in                              | preece-current    | 165.86 A | 0.01
            Brooks, Eq. 1: one inch melts at the constant (0.5 in: ÷ 2^1.5)       | size=0.5 in                                | preece-current    | 3621.8 A | 0.05
            k of 288.7 A·√s/mm² that Onderdonk equals from 25 °C: 1 mm², 1 s      | size=1 mm²;time=1 s                        | onderdonk-current | 288.7 A  | 0.05
            Preece in millimetres, 80.0 A/mm^1.5, at 1 mm                         | size=1 mm                                  | preece-current    | 80.0 A   | 0.05
            """)
    void agreesWithPrint(String print, String entries, String asked, String expected, double tolerance) {
        double off = trial(entries).away(asked, expected);
        assertTrue(off <= tolerance, print + " is off by " + off);
    }

    @Test
    void isNeverMoreThanACaution() {
        Trial trial = trial("size=14 AWG;current=400 A;time=10 s");
        for (Finding finding : trial.working().findings()) {
            assertEquals(Verdict.CAUTION, finding.verdict(), finding.words());
        }
        assertTrue(trial.hasFinding("nor what a fuse-link may be rated at"));
    }

    @Test
    void saysWhereShortTimesEnd() {
        assertFalse(trial("size=14 AWG;time=5 s").hasFinding("The time for Onderdonk"));
        assertTrue(trial("size=14 AWG;time=5.5 s").hasFinding("The time for Onderdonk's equation, 5.5"));
        // 2.26 s × (400/200)² = 9.03 s
        assertTrue(trial("size=14 AWG;time=1 s;current=200 A").hasFinding("The time for Onderdonk's equation, 9.0"));
    }

    @Test
    void takesADiameterOrAnArea() {
        double byArea = trial("size=1550.0031 circular mil").value("onderdonk-current");
        assertEquals(byArea, trial("size=1 mm").value("onderdonk-current"), byArea * 1e-6);
        assertEquals(1, trial("size=1550.0031 circular mil").value("diameter"), 1e-6);
        assertFalse(trial("size=1 mm").answers("onderdonk-time"));
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource(delimiter = '|', textBlock = """
            sign-of-234                 | onderdonk-current | 178 A    | size=2581 circular mil;time=5 s
            sign-of-234                 | onderdonk-time    | 2.50 s   | size=14 AWG;current=400 A
            natural-logarithm           | onderdonk-current | 256.2 A  | size=2581 circular mil;time=5 s
            square-millimetres-for-mils | onderdonk-current | 85.56 A  | size=2581 circular mil;time=5 s
            milliseconds-for-seconds    | onderdonk-current | 5340 A   | size=2581 circular mil;time=5 s
            radius-for-diameter         | preece-current    | 28.28 A  | size=1 mm
            millimetres-for-inches      | preece-current    | 10244 A  | size=1 mm
            """)
    void recognisesKnownSlips(String key, String asked, String answer, String entries) {
        assertEquals(key, trial(entries).slipBehind(asked, answer));
    }

    @Property(tries = 100)
    void meltsSoonerTheHotterItStarts(@ForAll @DoubleRange(min = -40, max = 190) double celsius, @ForAll @DoubleRange(min = 0.01, max = 60) double seconds) {
        String time = String.format(Locale.ROOT, "size=14 AWG;time=%.6f s;ambient=", seconds);
        double cold = trial(time + String.format(Locale.ROOT, "%.6f °C", celsius)).value("onderdonk-current");
        double warm = trial(time + String.format(Locale.ROOT, "%.6f °C", celsius + 10)).value("onderdonk-current");
        assertTrue(warm < cold);
    }
}
