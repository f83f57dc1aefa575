package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import loomwright.source.Standing;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BreakingCapacityTest {
    private static Trial trial(String entries) {
        return Trial.of("breaking-capacity", entries.split(";"));
    }

    /** Printed ratings are exact. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Regular blade fuse sheet, p. 1: 1 kA at 32 V              | prospective-current=1 A;device=blade                                          | breaking-capacity | 1 kA
            Large blade fuse sheet, p. 1: 1 kA at 32 V                | prospective-current=1 A;device=large-blade                                    | breaking-capacity | 1 kA
            Article on breaking capacity: small strip, 1 kA           | prospective-current=1 A;device=small-strip                                    | breaking-capacity | 1000 A
            Article on breaking capacity: large strip, 2 kA           | prospective-current=1 A;device=large-strip                                    | breaking-capacity | 2000 A
            ABYC E-11 Table V.A: 650 A or less, main device           | prospective-current=1 A;cold-cranking-current=650 A                           | wanted-capacity   | 1500 A
            ABYC E-11 Table V.A: 650 A or less, branch device         | prospective-current=1 A;cold-cranking-current=650 A;place=branch              | wanted-capacity   | 750 A
            ABYC E-11 Table V.A: 651 A to 1100 A, main device         | prospective-current=1 A;cold-cranking-current=651 A                           | wanted-capacity   | 3000 A
            ABYC E-11 Table V.A: 651 A to 1100 A, branch device       | prospective-current=1 A;cold-cranking-current=1100 A;place=branch             | wanted-capacity   | 1500 A
            ABYC E-11 Table V.A: over 1100 A, main device             | prospective-current=1 A;cold-cranking-current=1101 A                          | wanted-capacity   | 5000 A
            ABYC E-11 Table V.A: over 1100 A, branch device           | prospective-current=1 A;cold-cranking-current=1101 A;place=branch             | wanted-capacity   | 2500 A
            Text on interrupting capacity: bank, more than 10 kA      | prospective-current=10.1 kA;cold-cranking-current=2201 A                      | wanted-capacity   | 20 kA
            """)
    void agreesWithPrint(String print, String entries, String asked, String expected) {
        assertEquals(0, trial(entries).away(asked, expected), 1e-9, print);
    }

    @Test
    void stopsABladeFuseLinkCloseToABattery() {
        Finding stop = trial("prospective-current=4 kA").finding("can break");
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals(1000, stop.limit().value(), 0);
        assertEquals(400, trial("prospective-current=4 kA").value("share-percent"), 1e-9);
        assertEquals(Verdict.CAUTION, trial("prospective-current=1000 A").finding("can break").verdict());
        assertEquals(Verdict.PASSED, trial("prospective-current=950 A").finding("can break").verdict());
        assertEquals(Verdict.STOP, trial("prospective-current=1001 A").finding("can break").verdict());
    }

    @Test
    void holdsTheVoltageAgainstTheDevice() {
        assertEquals(Verdict.PASSED, trial("prospective-current=1 A;system-voltage=32 V").finding("The highest voltage of the circuit").verdict());
        Finding stop = trial("prospective-current=1 A;system-voltage=33 V").finding("The highest voltage of the circuit");
        assertEquals(Verdict.STOP, stop.verdict());
        assertEquals("183.455(d)", stop.source().locus());
    }

    @ParameterizedTest
    @CsvSource({"class-t", "bolted-window", "terminal-cube"})
    void letsAFigureFromMemoryStopAndNeverPass(String device) {
        Trial trial = trial("prospective-current=100 kA;system-voltage=200 V;cold-cranking-current=700 A;device=" + device);
        for (Finding finding : trial.working().findings()) {
            assertTrue(finding.verdict() == Verdict.STOP || finding.verdict() == Verdict.NOT_KNOWN, finding.words());
        }
        assertEquals(Verdict.STOP, trial.finding("can break").verdict());
        assertEquals(Standing.FROM_MEMORY, trial.finding("can break").source().standing());
        Finding unknown = trial("prospective-current=1 A;device=" + device).finding("can break");
        assertEquals(Verdict.NOT_KNOWN, unknown.verdict());
        assertEquals("rated-capacity", unknown.missing().key());
    }

    @Test
    void takesADeviceWithItsOwnFigures() {
        String own = "device=given;rated-capacity=3 kA;rated-voltage=24 V;prospective-current=";
        assertEquals(Verdict.PASSED, trial(own + "2849 A").finding("can break").verdict());
        assertEquals(Verdict.CAUTION, trial(own + "2999 A").finding("can break").verdict());
        assertEquals(Verdict.STOP, trial(own + "3001 A").finding("can break").verdict());
        assertEquals(
                "rated-capacity: Breaking capacity of the device is needed here: enter a number",
                trial("device=given;prospective-current=1 kA").refusal());
        assertEquals(
                "rated-voltage: Direct voltage it holds for is needed here: enter a number",
                trial("device=given;rated-capacity=1 kA;prospective-current=1 kA").refusal());
    }

    @Test
    void sendsLargeBanksToTheirMaker() {
        assertTrue(trial("prospective-current=9 kA;cold-cranking-current=2201 A").finding("more than 2200").words().contains("at least the short-circuit"));
        assertTrue(trial("prospective-current=11 kA;cold-cranking-current=2201 A").finding("more than 2200").words().contains("at 125 V"));
        assertFalse(trial("prospective-current=9 kA;cold-cranking-current=2200 A").hasFinding("more than 2200"));
    }

    @Test
    void checksTheBoatRuleOnlyIfAsked() {
        assertFalse(trial("prospective-current=1 A").answers("wanted-capacity"));
        assertEquals(Verdict.STOP, trial("prospective-current=1 A;cold-cranking-current=600 A").finding("ABYC").verdict());
        assertEquals(Verdict.PASSED, trial("prospective-current=1 A;cold-cranking-current=600 A;place=branch").finding("ABYC").verdict());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            share-turned-over          | share-percent   | 66.67 %
            cranking-for-short-circuit | share-percent   | 70 %
            cranking-for-short-circuit | wanted-capacity | 700 A
            main-and-branch-swapped    | wanted-capacity | 1500 A
            AGREES                     | wanted-capacity | 3000 A
            """)
    void recognisesKnownSlips(String key, String asked, String answer) {
        assertEquals(key, trial("prospective-current=1500 A;cold-cranking-current=700 A").slipBehind(asked, answer));
    }

    @Property(tries = 100)
    void passesExactlyUpToTheBreakingCapacity(@ForAll @DoubleRange(min = 1, max = 5000) double amperes) {
        Trial trial = trial(String.format(Locale.ROOT, "prospective-current=%.6f A", amperes));
        // less than 5 % left is close
        assertEquals(amperes <= 950 ? Verdict.PASSED : amperes <= 1000 ? Verdict.CAUTION : Verdict.STOP, trial.finding("can break").verdict());
    }
}
