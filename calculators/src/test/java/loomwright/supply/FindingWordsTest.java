package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a finding says when a figure meets its limit exactly, and when it just misses it. */
class FindingWordsTest {
    @ParameterizedTest(name = "{2} {3}")
    @CsvSource(delimiter = '|', textBlock = """
            panel-headroom | new-current=20 A; panel-limit=20 A | PASSED | The feed would carry 20 A, not more than the limit of the panel, 20 A.
            panel-headroom | new-current=20.1 A; panel-limit=20 A | STOP | The feed would carry 20.1 A, more than the limit of the panel, 20 A.
            panel-headroom | new-current=1 A; panel-limit=50 A; feed-fuse=30 A; feed-ampacity=20 A | PASSED | The feed fuse of 30 A is not above 150 % of the ampacity, 30 A.
            panel-headroom | new-current=1 A; panel-limit=50 A; feed-fuse=31 A; feed-ampacity=20 A | STOP | The feed fuse of 31 A is above 150 % of the ampacity, 30 A.
            panel-headroom | new-current=9 A; panel-limit=20 A; starting-extra=11 A | PASSED | At a start the feed carries 20 A for a moment, not more than the tightest limit, 20 A.
            panel-headroom | new-current=10 A; panel-limit=20 A; starting-extra=11 A | CAUTION | At a start the feed carries 21 A for a moment, more than the tightest limit, 20 A.
            panel-headroom | new-current=30 A; panel-limit=50 A; feed-ampacity=30 A | PASSED | The feed would carry 30 A, not more than the ampacity of the feed, 30 A.
            state-of-charge | voltage=12.24 V; rest-time=8 h | PASSED | With at least 50 % the battery is not below 50 %, what a depth of 50 % leaves.
            state-of-charge | voltage=12.2 V; rest-time=8 h | CAUTION | With at least 25 % the battery is or may be below 50 %, what a depth of 50 % leaves.
            state-of-charge | voltage=12.2 V; rest-time=8 h | PASSED | The battery rested 8 h, not less than 8 h.
            state-of-charge | voltage=12.2 V; rest-time=7 h | STOP | The battery rested 7 h, less than 8 h.
            state-of-charge | voltage=12.3 V; rest-time=8 h; temperature=-34 °C | PASSED | At −34 °C the acid of a battery with 50 % of charge is above its freezing point, −35 °C.
            state-of-charge | voltage=12.3 V; rest-time=8 h; temperature=-35 °C | STOP | At −35 °C the acid of a battery with 50 % of charge is at or below its freezing point, −35 °C.
            run-time | capacity=100 Ah; load-current=10 A; temperature=-20 °C | PASSED | Drawing from LiFePO4 at −20 °C: within −20 °C to 60 °C.
            run-time | capacity=100 Ah; load-current=10 A; temperature=-21 °C | STOP | Drawing from LiFePO4 at −21 °C: outside −20 °C to 60 °C.
            run-time | capacity=100 Ah; load-current=10 A; temperature=0 °C | PASSED | Charging LiFePO4 at 0 °C: within 0 °C to 45 °C.
            run-time | capacity=100 Ah; load-current=10 A; temperature=-1 °C | STOP | Charging LiFePO4 at −1 °C: outside 0 °C to 45 °C.
            run-time | capacity=100 Ah; load-current=10 A; battery-limit=10 A | PASSED | The current of 10 A is within the limit of the battery, 10 A.
            run-time | capacity=100 Ah; load-current=11 A; battery-limit=10 A | STOP | The current of 11 A is above the limit of the battery, 10 A.
            run-time | chemistry=lead-acid; capacity=100 Ah; load-current=5 A | PASSED | The current of 5 A is no more than that of a 20 h rating, 5 A.
            run-time | chemistry=lead-acid; capacity=100 Ah; load-current=6 A | CAUTION | The current of 6 A is more than that of a 20 h rating, 5 A.
            run-time | capacity=100 Ah; load-current=10 A; resting-voltage=12 V; internal-resistance=0.2 Ω | PASSED | Under load the voltage of 10 V is not below the end of discharge, 10 V.
            run-time | capacity=100 Ah; load-current=10 A; resting-voltage=12 V; internal-resistance=0.3 Ω | STOP | Under load the voltage of 9 V is below the end of discharge, 10 V.
            run-time | capacity=100 Ah; load-current=10 A; usable-depth=80 % | PASSED | A depth of 80 % is within the planning value for LiFePO4, 80 %.
            run-time | chemistry=lead-acid; capacity=100 Ah; load-current=5 A; usable-depth=60 % | CAUTION | A depth of 60 % is above the planning value for lead-acid, 50 %.
            peukert | capacity=100 Ah; exponent=1.2; load-current=5 A | PASSED | The exponent of 1.2 is within the range printed for lead-acid, 1.1 to 1.3.
            peukert | capacity=100 Ah; exponent=1.4; load-current=5 A | CAUTION | The exponent of 1.4 is outside the range printed for lead-acid, 1.1 to 1.3.
            panel-yield | panel-power=100 W; peak-sun-hours=3 h; factor-1=70 % | PASSED | The factors give 70 %, no more than the planning value of 70 %.
            panel-yield | panel-power=100 W; peak-sun-hours=3 h; factor-1=71 % | CAUTION | The factors give 71 %, more than the planning value of 70 %.
            panel-yield | panel-power=100 W; peak-sun-hours=3 h; energy-per-day=210 Wh | PASSED | The panel gives 210 Wh a day, enough for the 210 Wh used.
            panel-yield | panel-power=100 W; peak-sun-hours=3 h; energy-per-day=211 Wh; deficit=5 Ah | CAUTION | The panel gives 210 Wh a day, less than the 211 Wh used: what was taken is never put back.
            panel-yield | panel-power=120 W; peak-sun-hours=3 h; temperature=5 °C; capacity=50 Ah | PASSED | Below 10 °C this battery takes at most 10 A; full sun gives up to 10 A.
            panel-yield | panel-power=132 W; peak-sun-hours=3 h; temperature=5 °C; capacity=50 Ah | STOP | Below 10 °C this battery takes at most 10 A; full sun gives up to 11 A.
            two-routes | device-power=60 W; charging-hours=2 h; direct-hours=2 h; inverter-efficiency=90 %; inverter-standing=0 W; adapter-efficiency=80 % | PASSED | Direct from 12 V takes 150 Wh a day, by inverter 167 Wh.
            """)
    void saysWhatWasFound(String calculator, String entries, String verdict, String words) {
        List<Finding> findings = Trial.of(calculator, entries.split("; ")).working().findings();
        Finding said = null;
        for (Finding finding : findings) {
            said = finding.words().replace('\u00a0', ' ').equals(words) ? finding : said;
        }
        assertNotNull(said, () -> "missing among " + findings);
        assertEquals(verdict, said.verdict().name());
        assertEquals(verdict.equals("PASSED"), said.remedy().isEmpty());
    }
}
