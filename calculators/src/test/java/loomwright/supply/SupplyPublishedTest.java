package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Figures in print. A worked answer is held to half of its last printed digit, unless the line says otherwise; a row of a table is exact,
 * and is held to the last digit of a double.
 */
class SupplyPublishedTest {
    private static final double EXACT = 1e-9;

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Load list example: 5 lamps of 15 W for 4 h, one set of 40 W for 5 h | day-energy | load-1-power=75 W; load-1-hours=4 h; load-2-power=40 W; load-2-hours=5 h | energy-per-day | 500 Wh | 0.5
            Load list example: the lamps | day-energy | load-1-power=75 W; load-1-hours=4 h | load-1-energy | 300 Wh | 0.5
            Load list example: the set | day-energy | load-2-power=40 W; load-2-hours=5 h | load-2-energy | 200 Wh | 0.5
            Battery sizing rule of five: 1000 Wh a day at 12 V, cut after two digits | battery-size | energy-per-day=1000 Wh | rule-of-five | 416.66 Ah | 0.01
            Ordnance lessons OD0010 para 14: 5 A for 20 h is 100 Ah | run-time | capacity=100 Ah; load-current=5 A; usable-depth=100 % | run-time | 20 h | 0.000000001
            Ordnance lessons OD0010 para 14: current of the 20 h rating | peukert | capacity=100 Ah; exponent=1.3; load-current=10 A | rated-current | 5 A | 0.000000001
            Ordnance lessons OD0010 para 14: the rating returned at 5 A | peukert | capacity=100 Ah; exponent=1.3; load-current=5 A | run-time | 20 h | 0.000000001
            C ÷ I^k by hand: 100 ÷ 10^1.2 = 100 ÷ 15.849 | peukert | capacity-is=one-ampere; capacity=100 Ah; exponent=1.2; load-current=10 A | run-time | 6.31 h | 0.005
            The same, set against the right form | peukert | capacity=100 Ah; exponent=1.2; load-current=10 A | other-form-time | 6.31 h | 0.005
            Battery page defining H, C, I, k and t: 100 Ah at 20 h, 1.2, 10 A | peukert | capacity=100 Ah; exponent=1.2; load-current=10 A | run-time | 8.71 h | 0.005
            C ÷ I^k by hand: 100 ÷ 20^1.2 = 100 ÷ 36.41 | peukert | capacity-is=one-ampere; capacity=100 Ah; exponent=1.2; load-current=20 A | run-time | 2.75 h | 0.005
            Car battery internal resistance, school exercise: 12 V, 0.2 Ω, 40 A | run-time | capacity=60 Ah; load-current=40 A; resting-voltage=12 V; internal-resistance=0.2 Ω | voltage-under-load | 4.0 V | 0.000000001
            Peak sun hour page: 1000 W/m² for 1 h is 1 kWh | panel-yield | panel-power=1000 W; peak-sun-hours=1 h; efficiency=100 % | yield-per-day | 1000 Wh | 0.5
            Six factors by hand: 0.90 × 0.95 × 0.92 × 0.97 × 0.95 × 0.95 | panel-yield | panel-power=100 W; peak-sun-hours=1 h; factor-1=90 %; factor-2=95 %; factor-3=92 %; factor-4=97 %; factor-5=95 %; factor-6=95 % | efficiency-in-all | 68.861 % | 0.0005
            P = E ÷ (h × η) by hand: 500 Wh ÷ (4 h × 0.70) = 178.57 W | panel-yield | panel-power=100 W; peak-sun-hours=4 h; energy-per-day=500 Wh | panel-needed | 178.57 W | 0.005
            Step-down controller sheet, 95 %: 50 W for 1 h take 52.63 Wh | two-routes | device-power=50 W; charging-hours=1 h; direct-efficiency=95 %; inverter-efficiency=90 %; inverter-standing=8 W; adapter-efficiency=90 % | direct-energy | 52.63 Wh | 0.005
            """)
    void agreesWithTheWorkedExample(String print, String calculator, String entries, String asked, String printed, double tolerance) {
        Trial trial = Trial.of(calculator, entries.split("; "));
        assertTrue(trial.away(asked, printed) <= tolerance, () -> print + " is off by " + trial.away(asked, printed));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Battery comparison chart: lead-acid, 50 % | run-time | chemistry=lead-acid; capacity=100 Ah; load-current=1 A | usable-capacity | 50 Ah
            Battery comparison chart: LiFePO4, 80 % | run-time | chemistry=lifepo4; capacity=100 Ah; load-current=1 A | usable-capacity | 80 Ah
            Common practice: 70 % in all | panel-yield | panel-power=100 W; peak-sun-hours=1 h | efficiency-in-all | 70 %
            TM 10-6140-200-14 para 1-9 a: 32 °F, 75 % | run-time | chemistry=lead-acid; capacity=100 Ah; load-current=1 A; usable-depth=100 %; cold-table=army-manual; temperature=32 °F | usable-capacity | 75 Ah
            TM 10-6140-200-14 para 1-9 a: 0 °F, 40 % | run-time | chemistry=lead-acid; capacity=100 Ah; load-current=1 A; usable-depth=100 %; cold-table=army-manual; temperature=0 °F | usable-capacity | 40 Ah
            Battery sizing worksheet: 80 °F, 1.00 | battery-size | chemistry=lead-acid; energy-per-day=1200 Wh; usable-depth=100 %; temperature=80 °F | capacity | 100 Ah
            Battery sizing worksheet: 70 °F, 1.04 | battery-size | chemistry=lead-acid; energy-per-day=1200 Wh; usable-depth=100 %; temperature=70 °F | capacity | 104 Ah
            Battery sizing worksheet: 60 °F, 1.11 | battery-size | chemistry=lead-acid; energy-per-day=1200 Wh; usable-depth=100 %; temperature=60 °F | capacity | 111 Ah
            Battery sizing worksheet: 50 °F, 1.19 | battery-size | chemistry=lead-acid; energy-per-day=1200 Wh; usable-depth=100 %; temperature=50 °F | capacity | 119 Ah
            Battery sizing worksheet: 40 °F, 1.30 | battery-size | chemistry=lead-acid; energy-per-day=1200 Wh; usable-depth=100 %; temperature=40 °F | capacity | 130 Ah
            Battery sizing worksheet: 30 °F, 1.40 | battery-size | chemistry=lead-acid; energy-per-day=1200 Wh; usable-depth=100 %; temperature=30 °F | capacity | 140 Ah
            Battery sizing worksheet: 20 °F, 1.59 | battery-size | chemistry=lead-acid; energy-per-day=1200 Wh; usable-depth=100 %; temperature=20 °F | capacity | 159 Ah
            NEC 210.20(A): 80 % of a 25 A fuse for 3 h or more | panel-headroom | new-current=1 A; panel-limit=100 A; feed-fuse=25 A | tightest-limit | 20 A
            """)
    void readsTheRowOfTheTable(String print, String calculator, String entries, String asked, String printed) {
        Trial trial = Trial.of(calculator, entries.split("; "));
        assertTrue(trial.away(asked, printed) <= EXACT, () -> print + " is off by " + trial.away(asked, printed));
    }

    @ParameterizedTest(name = "{0}: {1} is {2}")
    @CsvSource({
        "bci, 12.65 V, 100 %", "bci, 12.45 V, 75 %", "bci, 12.24 V, 50 %", "bci, 12.06 V, 25 %", "bci, 11.89 V, 0 %",
        "magazine, 12.66 V, 100 %", "magazine, 12.45 V, 75 %", "magazine, 12.30 V, 50 %", "magazine, 12.15 V, 25 %",
    })
    void readsTheStateOfChargeOfTheRow(String table, String voltage, String printed) {
        Trial trial = Trial.of("state-of-charge", "table=" + table, "voltage=" + voltage, "rest-time=8 h");
        assertTrue(trial.away("charge-at-least", printed) <= EXACT);
        assertTrue(trial.away("charge-at-most", printed) <= EXACT);
        assertTrue(trial.away("row-voltage-below", voltage) <= EXACT);
    }

    /** TM 10-6140-200-14 Table 1-1 prints -95, -62, -31 and +1 °F, which round to these degrees Celsius. */
    @ParameterizedTest(name = "TM 10-6140-200-14 Table 1-1: the acid freezes at {1} with the charge of {0}")
    @CsvSource({"12.65 V, -70.6", "12.45 V, -52.2", "12.24 V, -35.0", "12.06 V, -17.2"})
    void knowsWhereTheAcidFreezes(String voltage, double printed) {
        Trial trial = Trial.of("state-of-charge", "voltage=" + voltage, "rest-time=8 h", "temperature=20 °C");
        assertTrue(Math.abs(trial.finding("freezing point").limit().value() - printed) <= EXACT);
    }
}
