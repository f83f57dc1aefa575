package loomwright.load;

import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures in print. What is only multiplied is exact, so the tolerance is half of the last digit of the hand working. */
class OutletLoadPublishedTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            ISO 4165 as described: up to 12 A, asked for the 10 A of the trade   | current=10 A;kind=iso-4165 | loading-percent | 83.33 % | 0.005 %
            ISO 4165 as described: up to 12 A leaves 2 A beside 10 A             | current=10 A;kind=iso-4165 | headroom | 2 A | 0.0005 A
            Outlet articles: lighter about 10 A on a vehicle fuse of 20 A, half  | current=10 A;kind=lighter;rating=20 A | loading-percent | 50 % | 0.05 %
            Contacts of 10 mΩ at the 12 A of ISO 4165: 12 × 12 × 0.010 W         | current=12 A;kind=iso-4165;contact-resistance=10 mΩ | contact-heat | 1.44 W | 0.005 W
            By hand: 20 mA is 0.020 A, times 24 h                                | current=1 A;kind=iso-4165;standing-current=20 mA | standing-charge | 0.48 Ah | 0.005 Ah
            """)
    void agreesWithPrint(String print, String entries, String asked, String printed, String tolerance) {
        Trial trial = Trial.of("outlet-load", entries.split(";"));
        assertTrue(trial.away(asked, printed) <= Trial.number(tolerance), () -> print + " is off by " + trial.away(asked, printed));
    }
}
