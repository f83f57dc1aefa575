package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two boxes on a canvas; the other one lies from 10 to 30 across and from 100 to 140 down. */
class BoxTest {
    private static final Box OTHER = new Box(10, 100, 30, 140);

    @ParameterizedTest(name = "{4}")
    @CsvSource({
        "15, 110, 20, 120, within it, true",
        "0, 90, 50, 150, all round it, true",
        "0, 110, 11, 120, over its left edge, true",
        "29, 110, 50, 120, over its right edge, true",
        "15, 90, 20, 101, over its upper edge, true",
        "15, 139, 20, 150, over its lower edge, true",
        "0, 110, 10, 120, touching its left edge, false",
        "30, 110, 50, 120, touching its right edge, false",
        "15, 90, 20, 100, touching its upper edge, false",
        "15, 140, 20, 150, touching its lower edge, false",
        "0, 110, 5, 120, to the left, false",
        "15, 150, 20, 160, below, false"
    })
    void overlapWhereTheyShareSpaceAndNotOnlyAnEdge(double left, double top, double right, double bottom, String place, boolean overlaps) {
        Box box = new Box(left, top, right, bottom);
        assertEquals(overlaps, box.overlaps(OTHER), place);
        assertEquals(overlaps, OTHER.overlaps(box), place);
    }

    @ParameterizedTest
    @CsvSource({
        "10, 100, 30, 140, true",
        "12, 102, 28, 138, true",
        "9, 102, 28, 138, false",
        "12, 99, 28, 138, false",
        "12, 102, 31, 138, false",
        "12, 102, 28, 141, false"
    })
    void liesInsideUpToTheEdges(double left, double top, double right, double bottom, boolean inside) {
        assertEquals(inside, new Box(left, top, right, bottom).inside(OTHER));
    }

    @Test
    void growsOnEverySide() {
        assertEquals(new Box(8, 98, 32, 142), OTHER.grown(2));
        assertEquals(20, OTHER.width());
        assertEquals(40, OTHER.height());
    }
}
