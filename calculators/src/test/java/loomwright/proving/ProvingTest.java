package loomwright.proving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Slips;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProvingTest {
    private static final String BENCH = "voltage-at-supply=12.8 V;current=8 A;size=2.5 mm2;route-length=4.2 m;parts-resistance=3 mΩ";

    private static Trial bench(String more) {
        return Trial.of("expected-reading", (BENCH + more).split(";"));
    }

    /** By hand: 8.4 m × 7.60 mΩ/m = 63.84 mΩ (ISO 6722-1, 2.5 mm²); 12.8 V − 8 A × (63.84 + 3) mΩ = 12.26528 V. */
    /** 70 mΩ at 30 A: 63 W, where 0.71 W brings a plastic holder to the end of its range. Nothing hidden makes no heat. */
    @Test
    void heatThatBurnsAJointIsAStop() {
        String readings = "voltage-light=12.6 V;voltage-heavy=11.2 V;current-heavy=20 A;design-current=30 A";
        assertEquals(Verdict.STOP, Trial.of("hidden-resistance", readings.split(";")).finding("if all of it is in one joint, 63").verdict());
        assertEquals(false, Trial.of("hidden-resistance", (readings + ";known-resistance=90 mΩ").split(";")).hasFinding("in one joint"));
    }

    @Test
    void expectsWhatIsLeftAfterTheWay() {
        assertTrue(bench("").away("expected", "12.26528 V") < 1e-9);
        assertFalse(bench("").answers("difference"));
    }

    /** 0.5 % of 12.26528 V and 0.02 V are 0.0813 V. */
    @Test
    void agreesWithinWhatTheMeterMayBeWrongBy() {
        assertTrue(bench("").away("uncertainty", "0.0813 V") < 0.00005);
        assertEquals(Verdict.PASSED, bench(";measured=12.2 V").finding("what the meter may be wrong by").verdict());
        assertEquals(Verdict.CAUTION, bench(";measured=12.1 V").finding("too low").verdict());
        assertEquals(Verdict.CAUTION, bench(";measured=12.5 V").finding("than it can be").verdict());
    }

    @Test
    void explainsALowReadingByAResistance() {
        Trial trial = bench(";measured=11.86528 V");
        assertTrue(trial.away("hidden-resistance", "50 mΩ") < 1e-6);
        assertEquals("joint-heat", trial.working().nextQuestions().get(0).calculatorKey());
    }

    @Test
    void refusesACurrentThatCannotFlow() {
        assertTrue(Trial.of("expected-reading", "voltage-at-supply=12 V", "current=400 A", "size=1 mm2", "route-length=5 m")
                .refusal()
                .startsWith("current: Current while measuring cannot flow through this run"));
    }

    @Test
    void twoReadingsMustDifferTheRightWay() {
        assertTrue(Trial.of("hidden-resistance", "voltage-light=12 V", "current-light=5 A", "voltage-heavy=11 V", "current-heavy=5 A",
                        "design-current=5 A")
                .refusal()
                .startsWith("current-heavy: Current of the second reading must be more"));
        assertTrue(Trial.of("hidden-resistance", "voltage-light=12 V", "voltage-heavy=12.5 V", "current-heavy=5 A", "design-current=5 A")
                .refusal()
                .startsWith("voltage-heavy: Second reading is higher than the first"));
    }

    @Test
    void judgesOnlyWhatOughtNotToBeThere() {
        String readings = "voltage-light=12.6 V;current-light=1 A;voltage-heavy=12.2 V;current-heavy=9 A;design-current=10 A";
        assertEquals(
                Verdict.CAUTION, Trial.of("hidden-resistance", (readings + ";known-resistance=20 mΩ").split(";")).finding("is above what ought to be there").verdict());
        assertEquals(
                Verdict.PASSED, Trial.of("hidden-resistance", (readings + ";known-resistance=60 mΩ").split(";")).finding("is within what ought to be there").verdict());
    }

    /** A hidden resistance put into a circuit is found again from its two readings. */
    @Property(tries = 200)
    void findsTheResistanceThatWasPutIn(
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double ohms, @ForAll @DoubleRange(min = 1, max = 10) double amperes) {
        double light = 13;
        double heavy = light - ohms * amperes;
        Trial trial = Trial.of(
                "hidden-resistance", "voltage-light=13 V", text("voltage-heavy", heavy, "V"), text("current-heavy", amperes, "A"),
                "design-current=5 A");
        assertEquals(1000 * ohms, trial.value("hidden-resistance"), 1e-3);
    }

    private static String text(String key, double value, String unit) {
        return key + "=" + String.format(java.util.Locale.ROOT, "%.9f", value) + " " + unit;
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "expected-reading, voltage-at-supply=12.8 V;current=8 A;size=2.5 mm2;route-length=4.2 m;parts-resistance=30 mΩ",
        "hidden-resistance, voltage-light=12.6 V;current-light=1 A;voltage-heavy=12.2 V;current-heavy=9 A;design-current=10 A;"
                + "known-resistance=20 mΩ"
    })
    void everySlipIsRecognised(String calculator, String entries) {
        Slips.assertEachIsRecognised(Trial.of(calculator, entries.split(";")));
    }
}
