package loomwright.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loomwright.catalogue.Catalogue;
import org.junit.jupiter.api.Test;

/** Formulas as they are read aloud, written down by hand from their letters. */
class SpokenTest {
    @Test
    void aFormulaIsReadInTheMeaningsOfItsLetters() {
        assertEquals("voltage equals current times resistance", spoken(0));
        assertEquals("voltage equals square root of (power times resistance)", spoken(2));
        assertEquals("resistance equals voltage squared divided by power", spoken(7));
    }

    private static String spoken(int at) {
        return Catalogue.find("ohm-and-power").description().formulas().get(at).formula().spoken();
    }
}
