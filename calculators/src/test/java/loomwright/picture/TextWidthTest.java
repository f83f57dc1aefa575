package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TextWidthTest {
    @Test
    void isNeverBelowTheWidthOfAWideFace() {
        for (Map.Entry<Character, Double> letter : FaceWidths.all().entrySet()) {
            double estimate = TextWidth.ems(String.valueOf(letter.getKey()), false);
            assertTrue(estimate >= letter.getValue() - 0.001, "letter " + letter);
        }
    }

    @Test
    void isNotWastefulForRunningText() {
        String words = "resistance of the circuit, 10 % of 12 V";
        double ratio = Lettering.SMALL.width(words) / FaceWidths.width(words, 14, false);
        assertTrue(ratio < 1.08, "ratio " + ratio);
    }

    @Test
    void growsWithSizeAndWeight() {
        assertEquals(16.0 / 14, Lettering.PLAIN.width("drop") / Lettering.SMALL.width("drop"), 1e-9);
        assertTrue(Lettering.STRONG.width("drop") > Lettering.PLAIN.width("drop"));
    }
}
