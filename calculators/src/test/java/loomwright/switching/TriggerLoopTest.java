package loomwright.switching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.worked.Finding;
import loomwright.worked.Slips;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

class TriggerLoopTest {
    private static Trial relay(String... more) {
        String[] entries = new String[more.length + 3];
        entries[0] = "coil-resistance=90 Ω";
        entries[1] = "size=0.5 mm2";
        entries[2] = "route-length=4.2 m";
        System.arraycopy(more, 0, entries, 3, more.length);
        return Trial.asPrinted("trigger-loop", entries);
    }

    /** By hand, ISO 6722-1, 0.5 mm²: 8.4 m × 37.1 mΩ/m = 311.64 mΩ; 10.5 V ÷ 90.31164 Ω = 116.26 mA; × 311.64 mΩ = 36.23 mV. */
    @Test
    void worksTheLoopOutAtBothEndsOfTheSupply() {
        Trial trial = relay();
        assertTrue(trial.away("current-at-lowest", "116.26 mA") <= 0.005);
        assertTrue(trial.away("wire-drop", "36.23 mV") <= 0.005);
        assertTrue(trial.away("voltage-at-trigger", "10.464 V") <= 0.0005);
        assertTrue(trial.away("current-at-highest", "161.7 mA") <= 0.05);
    }

    @Test
    void stopsATriggerThatDoesNotReach() {
        assertEquals(Verdict.PASSED, relay().finding("reaches the trigger").verdict());
        assertEquals(Verdict.STOP, relay("lowest-voltage=7 V").finding("reaches the trigger").verdict());
        Trial solid = Trial.of(
                "trigger-loop", "trigger-of=solid-state", "trigger-current=500 mA", "size=0.35 mm2", "route-length=190 m");
        assertEquals(Verdict.STOP, solid.finding("reaches the trigger").verdict());
    }

    @Test
    void cautionsOnCoilVoltageFuseAndLoading() {
        assertEquals(Verdict.CAUTION, relay("highest-voltage=17 V").finding("allows on its coil").verdict());
        assertEquals(Verdict.CAUTION, relay("fuse-rating=5 A").finding("what is common").verdict());
        assertEquals(Verdict.CAUTION, relay("fuse-rating=0.2 A").finding("share of its fuse-link").verdict());
    }

    @Test
    void holdsTheFuseLinkAgainstTheWireItGuards() {
        // BS 7671 Table 4F3A: 0.5 mm², 3 A; at 40 °C times 0.82 for insulation of 60 °C: 2.46 A.
        Finding assumed = relay().finding("before the trigger wire");
        assertEquals(Verdict.PASSED, assumed.verdict());
        assertEquals(2.46, assumed.limit().value(), 1e-9);
        assertTrue(assumed.words().startsWith("Assuming insulation for 60\u00a0°C and 40\u00a0°C around it"), assumed.words());
        assertEquals(Verdict.STOP, relay("fuse-rating=30 A").finding("before the trigger wire").verdict());
        // Thinner than every table: nobody knows what it carries, and 5 A is above what even 0.5 mm² does.
        assertEquals("wire-ampacity", relay("size=0.35 mm2", "fuse-rating=1 A").finding("guards the trigger wire").missing().key());
        assertEquals(Verdict.STOP, relay("size=0.35 mm2", "fuse-rating=5 A").finding("before the trigger wire").verdict());
        assertEquals(Verdict.PASSED, relay("fuse-rating=2 A", "wire-ampacity=3 A").finding("the trigger wire").verdict());
        assertEquals(Verdict.STOP, relay("fuse-rating=30 A", "wire-ampacity=3 A").finding("the trigger wire").verdict());
    }

    @Test
    void refusesAnUpsideDownSupply() {
        assertEquals(
                "lowest-voltage: Lowest supply voltage is above the highest, 12\u00a0V: enter the smaller of the two here",
                relay("lowest-voltage=13 V", "highest-voltage=12 V").refusal());
    }

    @Test
    void everySlipIsRecognised() {
        Slips.assertEachIsRecognised(Trial.of("trigger-loop", "coil-resistance=20 Ω", "size=0.5 mm2", "route-length=30 m"));
    }
}
