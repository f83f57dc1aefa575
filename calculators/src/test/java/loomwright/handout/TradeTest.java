package loomwright.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import loomwright.catalogue.Catalogue;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers that nobody meets on the job stand on no sheet. */
class TradeTest {
    @ParameterizedTest
    @CsvSource({
        "8 A, 4.2 m, 2.5 mm2, true",
        "8 A, 13 ft, 14 AWG, true",
        "8 A, 4.2 m, 2.6 mm2, false",
        "8 A, 4.2 m, 7 AWG, false",
        "8 A, 300 ft, 14 AWG, false",
        "8 A, 22 m, 2.5 mm2, false",
        "18 A, 4.2 m, 4 AWG, false",
        "40 A, 4.2 m, 2.5 mm2, false",
    })
    void aRunIsOfASoldSizeFitsIntoAVanAndSuitsItsLoad(String current, String length, String size, boolean real) {
        assertEquals(real, Trade.isReal(Catalogue.find("voltage-drop"), Map.of("current", current, "route-length", length, "size", size)));
    }

    @ParameterizedTest
    @CsvSource({"12 V, 20 A, true", "24.4 V, 10 A, true", "48 V, 5 A, false", "120 V, 1 A, false", "5 V, 3 A, true", "5 V, 15 A, false", "20 V, 5 A, true"})
    void voltagesAreThoseOfTheTradeAndAPortGivesAFewAmperes(String voltage, String current, boolean real) {
        assertEquals(real, Trade.isReal(Catalogue.find("ohm-and-power"), Map.of("voltage", voltage, "current", current)));
    }
}
