package loomwright.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.worked.Outcome;
import loomwright.worked.Working;
import org.junit.jupiter.api.Test;
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
    @CsvSource({"12 V, 20 A, true", "24.4 V, 10 A, true", "48 V, 5 A, false", "120 V, 1 A, false", "5 V, 3 A, true", "5 V, 15 A, false", "20 V, 5 A, true", "15 V, 3 A, true", "15 V, 5 A, false", "9 V, 4 A, false"})
    void voltagesAreThoseOfTheTradeAndAPortGivesAFewAmperes(String voltage, String current, boolean real) {
        assertEquals(real, Trade.isReal(Catalogue.find("ohm-and-power"), Map.of("voltage", voltage, "current", current)));
    }

    /** USB Power Delivery: at most 3 A at 5 V, 9 V and 15 V, 5 A at 20 V; a port of many watts has a higher voltage. */
    @ParameterizedTest
    @CsvSource({"9 V, 18 W, true", "9 V, 40 W, false", "15 V, 45 W, true", "15 V, 70 W, false", "15 V, 25 W, false", "20 V, 60 W, true", "20 V, 100 W, true", "20 V, 120 W, false"})
    void aPortGivesItsWattsAtTheVoltageThatCan(String voltage, String power, boolean real) {
        assertEquals(real, Trade.isReal(Catalogue.find("ohm-and-power"), Map.of("voltage", voltage, "power", power)));
    }

    /** Nobody asks a cable to take 22 % of the voltage. */
    @Test
    void aRunLeavesMostOfTheVoltage() {
        Working usual = drop("6 A", "4 m");
        assertTrue(Trade.isRun(drop("6 A", "8 m"), usual));
        // 7 A × 24 m × 7.6 mΩ/m = 1.28 V is 10.6 % of 12 V; twice the current is more than 12 %
        assertFalse(Trade.isRun(drop("14 A", "12 m"), usual));
        assertTrue(Trade.isRun(drop("14 A", "12 m"), drop("16 A", "12 m")), "unless the lesson asks about such a run");
    }

    private static Working drop(String current, String route) {
        return Outcome.of(Catalogue.find("voltage-drop"), Map.of("current", current, "route-length", route, "conductor", "iso-6722-1", "size", "2.5 mm2", "supply-voltage", "12 V")).working();
    }
}
