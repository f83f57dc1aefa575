package loomwright.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Slips;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CutOutLayoutTest {
    private static final List<String> BENCH = List.of(
            "panel-width=300 mm", "panel-height=120 mm", "count=3", "hole-diameter=29 mm", "centre-distance=50 mm", "first-centre=60 mm",
            "row-height=60 mm", "clear-depth=80 mm");

    private static Trial bench(String... more) {
        List<String> entries = new ArrayList<>(BENCH);
        for (String entry : more) {
            entries.removeIf(each -> each.startsWith(entry.substring(0, entry.indexOf('=') + 1)));
            entries.add(entry);
        }
        return Trial.of("cut-out-layout", entries.toArray(new String[0]));
    }

    /** By hand: 60 + 2 × 50 = 160; 60 − 14.5 = 45.5; 300 − 160 − 14.5 = 125.5; 50 − 29 = 21. */
    @Test
    void laysTheRowOut() {
        Trial trial = bench();
        assertEquals(160, trial.value("last-centre"), 1e-9);
        assertEquals(45.5, trial.value("left-edge"), 1e-9);
        assertEquals(125.5, trial.value("right-edge"), 1e-9);
        assertEquals(45.5, trial.value("lower-edge"), 1e-9);
        assertEquals(45.5, trial.value("upper-edge"), 1e-9);
        assertEquals(21, trial.value("web-left"), 1e-9);
        assertEquals(60, trial.value("nearest-first-centre"), 1e-9);
        assertTrue(trial.working().findings().stream().allMatch(finding -> finding.verdict() == Verdict.PASSED));
    }

    /**
     * A frame from 100 mm to 120 mm with 20 mm of room on either side keeps centres out of 80 mm to 140 mm. Two fit from 30 mm (30, 80);
     * three only from 140 mm (140, 190, 240).
     */
    @Test
    void findsTheNearestPlaceBesideAFrame() {
        Trial three = bench("frame-1-from=100 mm", "frame-1-to=120 mm");
        assertEquals(Verdict.STOP, three.finding("Frame 1").verdict());
        assertTrue(three.finding("Frame 1").words().contains("cut-out 2"));
        assertEquals(140, three.value("nearest-first-centre"), 1e-9);
        Trial two = bench("frame-1-from=100 mm", "frame-1-to=120 mm", "count=2");
        assertEquals(30, two.value("nearest-first-centre"), 1e-9);
    }

    @Test
    void saysWhenTheRowFitsNowhere() {
        Trial trial = bench("panel-width=140 mm");
        assertEquals(Verdict.STOP, trial.finding("right edge").verdict());
        assertFalse(trial.answers("nearest-first-centre"));
        Trial framed = bench("frame-1-from=0 mm", "frame-1-to=300 mm");
        assertTrue(framed.finding("Frame 1").remedy().contains("fits nowhere"));
    }

    @Test
    void stopsAtEveryLimit() {
        assertEquals(Verdict.STOP, bench("first-centre=20 mm").finding("left edge").verdict());
        assertEquals(Verdict.STOP, bench("row-height=20 mm").finding("lower edge").verdict());
        assertEquals(Verdict.STOP, bench("row-height=100 mm").finding("upper edge").verdict());
        assertEquals(Verdict.STOP, bench("centre-distance=35 mm").finding("left between two").verdict());
        assertEquals(Verdict.STOP, bench("clear-depth=50 mm").finding("behind the panel").verdict());
    }

    @Test
    void oneCutOutHasNoWeb() {
        assertFalse(bench("count=1").answers("web-left"));
    }

    @Test
    void aFrameHasTwoSidesInTheRightOrder() {
        assertEquals(
                "frame-1-to: First frame: right side is empty: enter both sides of the frame, or neither",
                bench("frame-1-from=10 mm").refusal());
        assertEquals(
                "frame-2-to: Second frame: right side lies left of its left side: enter both from the left edge of the panel",
                bench("frame-2-from=50 mm", "frame-2-to=40 mm").refusal());
    }

    @Test
    void everySlipIsRecognised() {
        Slips.assertEachIsRecognised(bench("first-centre=70 mm"));
    }

    /** The nearest place is one that fits, and trying every tenth of a millimetre finds none nearer. */
    @Property(tries = 200)
    void nothingThatFitsLiesNearer(
            @ForAll @IntRange(min = 100, max = 400) int width,
            @ForAll @IntRange(min = 1, max = 4) int count,
            @ForAll @IntRange(min = 0, max = 300) int wanted,
            @ForAll @IntRange(min = 0, max = 300) int frame) {
        Row row = new Row(width, 29, 50, count, 10, 20, List.of(new Row.Frame(frame, frame + 25)));
        double nearest = row.nearest(wanted);
        double tried = Double.NaN;
        for (int tenth = 0; tenth <= 4000; tenth++) {
            double first = tenth / 10.0;
            if (row.fits(first) && !(Math.abs(first - wanted) >= Math.abs(tried - wanted))) {
                tried = first;
            }
        }
        assertEquals(Double.isNaN(tried), Double.isNaN(nearest));
        if (!Double.isNaN(nearest)) {
            assertTrue(row.fits(nearest));
            assertTrue(Math.abs(nearest - wanted) <= Math.abs(tried - wanted) + 1e-6);
        }
    }
}
