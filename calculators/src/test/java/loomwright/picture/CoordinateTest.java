package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class CoordinateTest {
    @Test
    void printsAtMostTwoDigitsAfterThePoint() {
        assertEquals("12", Coordinate.text(12));
        assertEquals("12.3", Coordinate.text(12.3));
        assertEquals("12.35", Coordinate.text(12.345));
        assertEquals("100", Coordinate.text(100));
    }

    @Test
    void writesAMinusThatSvgUnderstands() {
        assertEquals("-4.5", Coordinate.text(-4.5));
        assertEquals("0", Coordinate.text(-0.001));
    }

    @Test
    void refusesWhatLiesOnNoCanvas() {
        assertThrows(IllegalArgumentException.class, () -> Coordinate.text(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Coordinate.text(10000));
        assertThrows(IllegalArgumentException.class, () -> Coordinate.text(Double.NEGATIVE_INFINITY));
    }
}
