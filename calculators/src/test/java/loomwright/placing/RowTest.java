package loomwright.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A row of two cut-outs of 30 mm, 50 mm apart, in a panel of 400 mm with 20 mm to its edges; each takes 20 mm to either side behind it. All in millimetres. */
class RowTest {
    private static Row row(Row.Frame... frames) {
        return new Row(400, 30, 50, 2, 20, 20, List.of(frames));
    }

    /** The first centre is 20 + 15 from the left at least; the second as far from the right, so the first 400 − 35 − 50. */
    @Test
    void theRowKeepsToItsEdges() {
        assertEquals(35, row().leastFirst(), 1e-9);
        assertEquals(315, row().greatestFirst(), 1e-9);
        assertTrue(row().fits(35) && row().fits(315));
        assertFalse(row().fits(34.9) || row().fits(315.1));
        assertEquals(35, row().nearest(10), 1e-9);
        assertEquals(315, row().nearest(390), 1e-9);
        assertEquals(200, row().nearest(200), 1e-9);
    }

    /** A frame from 150 to 170. Begun at 110 the second meets it; 80 is the nearest: the second ends at 150. Begun at 150 the first meets it; behind it the first begins at 190. */
    @Test
    void theNearestPlaceBesideAFrameIsWhereACutOutJustClearsIt() {
        Row row = row(new Row.Frame(150, 170));
        assertEquals(80, row.nearest(110), 1e-6);
        assertEquals(190, row.nearest(150), 1e-6);
        assertEquals(2, row.meets(new Row.Frame(150, 170), 110));
        assertEquals(1, row.meets(new Row.Frame(150, 170), 150));
        assertEquals(0, row.meets(new Row.Frame(150, 170), 80));
        assertEquals(0, row.meets(new Row.Frame(150, 170), 190));
    }

    /** Frames so near that nothing fits between or beside them. */
    @Test
    void whereNothingFitsThereIsNoPlace() {
        assertTrue(Double.isNaN(row(new Row.Frame(60, 80), new Row.Frame(130, 150), new Row.Frame(200, 220), new Row.Frame(270, 290), new Row.Frame(340, 360)).nearest(200)));
    }
}
