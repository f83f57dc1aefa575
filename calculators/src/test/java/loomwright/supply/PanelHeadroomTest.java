package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

class PanelHeadroomTest {
    /** 80 % of 1 + 0.5 + 4 A, and 17 A more, on a panel for 20 A. */
    private static Trial full() {
        return Trial.of(
                "panel-headroom", "way-1-current=1 A", "way-2-current=500 mA", "way-6-current=4 A", "diversity=80 %", "new-current=17 A",
                "panel-limit=20 A", "feed-fuse=20 A", "feed-ampacity=35 A", "starting-extra=11 A");
    }

    /** Nobody said what protects the feed: that is no pass. */
    @Test
    void aFeedOfWhichNobodySaidTheDeviceIsNotKnown() {
        Finding open = Trial.of("panel-headroom", "new-current=5 A", "panel-limit=30 A").finding("What protects the feed");
        assertEquals(Verdict.NOT_KNOWN, open.verdict());
        assertEquals("feed-fuse", open.missing().key());
    }

    @Test
    void addsWhatTheFeedCarries() {
        assertEquals(4.4, full().value("current-now"), 1e-9);
        assertEquals(21.4, full().value("current-after"), 1e-9);
        assertEquals(16, full().value("tightest-limit"), 1e-9);
        assertEquals(11.6, full().value("headroom-now"), 1e-9);
        assertEquals(-5.4, full().value("headroom-after"), 1e-9);
        assertEquals(133.75, full().value("share-of-limit"), 1e-9);
        assertEquals(32.4, full().value("current-at-start"), 1e-9);
    }

    @Test
    void startsFromAnEmptyPanel() {
        Trial trial = Trial.of("panel-headroom", "new-current=6 A", "panel-limit=20 A");
        assertEquals(0, trial.value("current-now"), 1e-12);
        assertEquals(6, trial.value("current-after"), 1e-12);
        assertEquals(14, trial.value("headroom-after"), 1e-12);
        assertFalse(trial.answers("current-at-start"));
        assertEquals(2, trial.working().findings().size());
    }

    @Test
    void takesTheTightestOfTheLimits() {
        assertEquals(20, limit("feed-fuse=20 A", "continuous=no"), 1e-9);
        assertEquals(12, limit("feed-fuse=15 A"), 1e-9);
        assertEquals(15, limit("feed-fuse=15 A", "continuous=no"), 1e-9);
        assertEquals(18, limit("feed-ampacity=18 A"), 1e-9);
        assertEquals(20, limit("feed-ampacity=25 A"), 1e-9);
        for (var step : full().working().steps()) {
            if (step instanceof ChoiceStep choice) {
                assertEquals(3, choice.candidates().size());
                assertFalse(choice.candidates().get(0).taken());
                assertTrue(choice.candidates().get(1).taken());
                assertEquals("16\u00a0A", choice.candidates().get(1).name());
            }
        }
    }

    @Test
    void checksEachLimitByItself() {
        assertEquals(Verdict.STOP, full().finding("the limit of the panel").verdict());
        assertEquals(Verdict.STOP, full().finding("what the feed's device may carry for 3 h or more, 16").verdict());
        assertEquals(Verdict.PASSED, full().finding("the ampacity of the feed").verdict());
        assertTrue(full().finding("feed's device may carry").source().text().contains("210.20(A)"));
        Trial exact = Trial.of("panel-headroom", "new-current=20 A", "panel-limit=20 A", "feed-fuse=20 A", "continuous=no");
        assertEquals(Verdict.CAUTION, exact.finding("What the feed would carry").verdict());
        assertEquals(Verdict.CAUTION, exact.finding("the rating of the feed's device").verdict());
    }

    /** 33 CFR 183.455(c)(1): 150 % of the Table 5 current, 37.5 A for the 25 A of 16 AWG with 105 °C insulation. */
    @Test
    void holdsTheFeedFuseToTheConductor() {
        assertEquals(37.5, fused("37.5 A", "33-cfr-183").finding("the feed behind it").limit().value(), 1e-9);
        assertEquals(Verdict.PASSED, fused("37.5 A", "33-cfr-183").finding("the feed behind it").verdict());
        assertTrue(fused("37.5 A", "33-cfr-183").hasFinding("Assuming an ampacity that was read in Table 5"));
        assertEquals(Verdict.STOP, fused("40 A", "33-cfr-183").finding("the feed behind it").verdict());
        assertEquals(Verdict.STOP, fused("37.5 A", "conductor-ampacity").finding("the feed behind it").verdict());
        assertEquals(Verdict.PASSED, fused("25 A", "conductor-ampacity").finding("the feed behind it").verdict());
        Trial unknown = Trial.of("panel-headroom", "new-current=1 A", "panel-limit=20 A", "feed-fuse=40 A");
        assertEquals("feed-ampacity", unknown.finding("guards the feed").missing().key());
        assertFalse(Trial.of("panel-headroom", "new-current=1 A", "panel-limit=20 A", "feed-ampacity=40 A").hasFinding("150"));
    }

    @Test
    void looksAtTheStart() {
        assertEquals(Verdict.CAUTION, full().finding("at a start").verdict());
        Trial small = Trial.of("panel-headroom", "new-current=9 A", "panel-limit=20 A", "starting-extra=11 A");
        assertEquals(Verdict.PASSED, small.finding("at a start").verdict());
        assertFalse(Trial.of("panel-headroom", "new-current=9 A", "panel-limit=20 A").hasFinding("at a start"));
    }

    @Test
    void recognisesEverySlip() {
        // 4.4; 5.5 + 17; 80 % of 22.5; 5.5 ÷ 0.8 + 17; 21.4 + 11; 16 − 4.4; 20 − 21.4; 16 ÷ 21.4
        assertEquals("new-load-left-out", full().slipBehind("current-after", "4.4 A"));
        assertEquals("diversity-left-out", full().slipBehind("current-after", "22.5 A"));
        assertEquals("diversity-on-the-new-load", full().slipBehind("current-after", "18 A"));
        assertEquals("diversity-turned-over", full().slipBehind("current-after", "23.875 A"));
        assertEquals("start-for-steady", full().slipBehind("current-after", "32.4 A"));
        assertEquals("headroom-before", full().slipBehind("headroom-after", "11.6 A"));
        assertEquals("limit-of-the-panel-only", full().slipBehind("headroom-after", "-1.4 A"));
        assertEquals("share-turned-over", full().slipBehind("share-of-limit", "74.77 %"));
    }

    @Test
    void asksForAFeedOfItsOwnWhenThePanelIsFull() {
        var next = full().working().nextQuestions();
        assertEquals("What does a feed of its own lose?", next.get(0).words());
        assertEquals(Map.of("current", "17\u00a0A"), next.get(0).carried());
        assertEquals(Map.of("design-current", "17\u00a0A"), next.get(1).carried());
        Trial fits = Trial.of("panel-headroom", "new-current=20 A", "panel-limit=20 A");
        assertEquals("What does the cable to the new load lose?", fits.working().nextQuestions().get(0).words());
    }

    private static double limit(String... more) {
        String[] entries = new String[more.length + 2];
        entries[0] = "new-current=1 A";
        entries[1] = "panel-limit=20 A";
        System.arraycopy(more, 0, entries, 2, more.length);
        return Trial.of("panel-headroom", entries).value("tightest-limit");
    }

    private static Trial fused(String rating, String rule) {
        return Trial.of(
                "panel-headroom", "new-current=1 A", "panel-limit=100 A", "feed-fuse=" + rating, "feed-ampacity=25 A", "fuse-rule=" + rule);
    }
}
