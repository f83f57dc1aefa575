package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a finding says on either side of its limit. */
class FindingWordsTest {
    @ParameterizedTest(name = "{2} {3}")
    @CsvSource(delimiter = '|', textBlock = """
            panel-headroom | new-current=18 A; panel-limit=20 A | PASSED | What the feed would carry, 18 A, is within the limit of the panel, 20 A.
            panel-headroom | new-current=20 A; panel-limit=20 A | CAUTION | What the feed would carry, 20 A, is only just within the limit of the panel, 20 A.
            panel-headroom | new-current=20.1 A; panel-limit=20 A | STOP | What the feed would carry, 20.1 A, is above the limit of the panel, 20 A.
            panel-headroom | new-current=1 A; panel-limit=50 A; feed-fuse=45 A; feed-ampacity=30 A | STOP | The feed's device, 45 A, is above what the feed behind it may carry, 30 A.
            panel-headroom | new-current=1 A; panel-limit=50 A; feed-fuse=30 A; feed-ampacity=30 A | PASSED | The feed's device, 30 A, is within what the feed behind it may carry, 30 A.
            panel-headroom | new-current=1 A; panel-limit=20 A; feed-fuse=40 A | STOP | The feed's device, 40 A, is above what the panel behind it may carry, 20 A.
            panel-headroom | new-current=22 A; panel-limit=50 A; feed-fuse=30 A; feed-device=breaker | STOP | What the feed would carry, 22 A, is above what the feed's device may carry for 3 h or more, 21 A.
            panel-headroom | new-current=10 A; panel-limit=20 A; starting-extra=11 A | CAUTION | What the feed carries for a moment at a start, 21 A, is above the tightest limit, 20 A.
            state-of-charge | voltage=12.24 V; rest-time=8 h | PASSED | The least state of charge, 50 %, is at least what a depth of 50 % leaves, 50 %.
            state-of-charge | voltage=12.2 V; rest-time=7 h | STOP | The rest of the battery, 7 h, is below the rest after which its voltage tells the charge, 8 h.
            state-of-charge | voltage=12.3 V; rest-time=8 h; temperature=-36 °C | STOP | The temperature of the battery, −36 °C, is below the freezing point of its acid with 50 % of charge, −35 °C.
            run-time | chemistry=lifepo4; capacity=100 Ah; load-current=10 A; temperature=-21 °C | STOP | The temperature of the battery, −21 °C, is below the least for drawing from LiFePO4, −20 °C.
            run-time | chemistry=lifepo4; capacity=100 Ah; load-current=10 A; temperature=-1 °C | STOP | The temperature of the battery, −1 °C, is below the least for charging LiFePO4, 0 °C.
            run-time | capacity=100 Ah; load-current=11 A; battery-limit=10 A | STOP | The current drawn, 11 A, is above the limit of the battery, 10 A.
            run-time | chemistry=lead-acid; capacity=100 Ah; load-current=6 A | CAUTION | The current drawn, 6 A, is above that of a 20 h rating, 5 A.
            run-time | chemistry=lifepo4; capacity=100 Ah; load-current=10 A; resting-voltage=12 V; internal-resistance=0.3 Ω | STOP | The voltage under load, 9 V, is below the end of discharge, 10 V.
            run-time | chemistry=lead-acid; capacity=100 Ah; load-current=5 A; usable-depth=60 % | CAUTION | The depth of discharge, 60 %, is above the planning value for lead-acid, 50 %.
            peukert | capacity=100 Ah; exponent=1.4; load-current=5 A | CAUTION | The exponent, 1.4, is above the greatest usual for lead-acid, 1.3.
            panel-yield | panel-power=100 W; peak-sun-hours=3 h; factor-1=71 % | CAUTION | The efficiency of all factors, 71 %, is above the planning value, 70 %.
            panel-yield | panel-power=100 W; peak-sun-hours=3 h; energy-per-day=211 Wh | CAUTION | What the panel gives in a day, 210 Wh, is below what is used in a day, 211 Wh.
            panel-yield | panel-power=132 W; peak-sun-hours=3 h; temperature=5 °C; capacity=50 Ah | STOP | The charging current of full sun, 11 A, is above what this battery takes below 10 °C, 10 A.
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
