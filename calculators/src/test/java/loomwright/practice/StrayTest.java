package loomwright.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.Working;
import org.junit.jupiter.api.Test;

/**
 * 10 A through 8.4 m of 7.60 mΩ/m. Steps: 0 8.4 m, 1 7.60 mΩ/m, 2 63.84 mΩ, 3 0.6384 V, 4 5.32 %, 5 11.3616 V, 6 6.384 W.
 */
class StrayTest {
    private static final String UNIT = "The digits are right, the unit is not";

    private final Working drop = Examples.of("voltage-drop").working();

    private String stray(int asked, double value, Unit unit) {
        return Stray.words(drop, drop.steps().get(asked).result(), Quantity.of(value, unit));
    }

    private void belongs(String words, int step, String unit) {
        assertTrue(words.contains("\u201c" + drop.steps().get(step).words() + "\u201d, " + unit + ":"), words);
    }

    @Test
    void theRightDigitsInAnotherUnitAreKnownByTheUnit() {
        assertTrue(stray(3, 638.4, Units.VOLT).startsWith(UNIT));
        assertTrue(stray(3, 638.4, Units.VOLT).contains(Quantity.of(638.4, Units.VOLT).text()));
        assertTrue(stray(3, 0.6384, Units.MILLIVOLT).startsWith(UNIT));
        assertTrue(stray(2, 0.06384, Units.MILLIOHM).startsWith(UNIT));
    }

    @Test
    void theFigureOfAnotherStepIsKnownByThatStep() {
        belongs(stray(3, 11.3616, Units.VOLT), 5, "in V");
        belongs(stray(5, 0.6384, Units.VOLT), 3, "in V");
        belongs(stray(3, 5.32, Units.VOLT), 4, "in %");
        belongs(stray(3, 6.384, Units.VOLT), 6, "in W");
        belongs(stray(3, 63.84, Units.VOLT), 2, "in mΩ");
        belongs(stray(4, 7.6, Units.PERCENT), 1, "in mΩ/m");
    }

    @Test
    void theRightFigureAndOneThatIsNowhereAreNoStrays() {
        assertEquals("", stray(3, 0.6384, Units.VOLT));
        assertEquals("", stray(3, 0.64, Units.VOLT));
        assertEquals("", stray(3, 3, Units.VOLT));
        assertEquals("", stray(6, 0.1, Units.WATT));
    }
}
