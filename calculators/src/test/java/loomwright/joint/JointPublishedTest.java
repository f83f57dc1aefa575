package loomwright.joint;

import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures in print for joints and for resistance from two readings. The tolerance is half of the last printed digit. */
class JointPublishedTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Heat-shrink pages: 1/2 in, 2 to 1, shrinks to 1/4 in | shrink-size | supplied=0.5 in;joint-diameter=0.4 in;cable-diameter=0.3 in | shrunk-diameter | 0.25 in | 0.005 in
            Car battery exercise: 12 V, 4.0 V at 40 A, 0.2 ohm | hidden-resistance | voltage-light=12 V;voltage-heavy=4.0 V;current-heavy=40 A;design-current=40 A | found-resistance | 0.2 Ω | 0.005 Ω
            UL 486A column: 14 AWG, 50 lb | pull-force | rule-set=ul-486a;size=14 AWG | least-pull | 50 lbf | 0.5 lbf
            UL 486A column: 10 AWG, 80 lb | pull-force | rule-set=ul-486a;size=10 AWG | least-pull | 80 lbf | 0.5 lbf
            UL 486A column: 2/0 AWG, 300 lb, whose newtons are misprinted | pull-force | rule-set=ul-486a;size=2/0 AWG | least-pull | 300 lbf | 0.5 lbf
            UL 486A column: 2 AWG, 180 lb | pull-force | rule-set=ul-486a;size=2 AWG | least-pull | 180 lbf | 0.5 lbf
            Military column: 12 AWG, 110 lb | pull-force | rule-set=military;size=12 AWG | least-pull | 110 lbf | 0.5 lbf
            ABYC E-11 in the Boatowner's handbook, Table 6.7: 16 AWG, 15 lb | pull-force | rule-set=abyc;size=16 AWG | least-pull | 15 lbf | 0.5 lbf
            ABYC E-11 in the Boatowner's handbook, Table 6.7: 12 AWG, 35 lb | pull-force | rule-set=abyc;size=12 AWG | least-pull | 35 lbf | 0.5 lbf
            """)
    void agreesWithPrint(String print, String calculator, String entries, String asked, String printed, String tolerance) {
        Trial trial = Trial.of(calculator, entries.split(";"));
        assertTrue(trial.away(asked, printed) <= Trial.number(tolerance), () -> print + " is off by " + trial.away(asked, printed));
    }
}
