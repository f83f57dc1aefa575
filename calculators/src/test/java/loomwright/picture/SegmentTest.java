package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SegmentTest {
    private static final Box BOX = new Box(10, 20, 30, 40);

    @Test
    void crossesTheBoxItPassesThroughOrLiesIn() {
        assertTrue(new Segment(0, 30, 50, 30).crosses(BOX));
        assertTrue(new Segment(20, 0, 20, 60).crosses(BOX));
        assertTrue(new Segment(0, 10, 40, 50).crosses(BOX));
        assertTrue(new Segment(15, 25, 16, 26).crosses(BOX));
    }

    @Test
    void missesTheBoxItPassesBy() {
        assertFalse(new Segment(0, 50, 50, 50).crosses(BOX));
        assertFalse(new Segment(0, 30, 8, 30).crosses(BOX));
        assertFalse(new Segment(0, 35, 20, 55).crosses(BOX));
        assertFalse(new Segment(5, 0, 5, 60).crosses(BOX));
    }

    @Property
    void agreesWithManyPointsOnTheLine(
            @ForAll @DoubleRange(max = 60) double x1,
            @ForAll @DoubleRange(max = 60) double y1,
            @ForAll @DoubleRange(max = 60) double x2,
            @ForAll @DoubleRange(max = 60) double y2) {
        boolean hit = false;
        boolean near = false;
        for (double share = 0; share <= 1; share += 0.002) {
            double x = x1 + share * (x2 - x1);
            double y = y1 + share * (y2 - y1);
            hit |= x >= 10 && x <= 30 && y >= 20 && y <= 40;
            near |= x >= 9.9 && x <= 30.1 && y >= 19.9 && y <= 40.1;
        }
        boolean crosses = new Segment(x1, y1, x2, y2).crosses(BOX);
        if (hit) {
            assertTrue(crosses);
        }
        assertEquals(crosses, crosses && near, "nothing is crossed from afar");
    }
}
