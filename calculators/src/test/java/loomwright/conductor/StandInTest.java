package loomwright.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Trial;
import org.junit.jupiter.api.Test;

/**
 * Which row stands for a size that Table 5 of 33 CFR 183.425 does not list. Areas of ASTM B258: 18 AWG 0.823 mm², 16 AWG 1.309 mm², 14 AWG 2.081 mm², 12 AWG 3.309 mm²; a metric size needs 5 % more
 * than the gauge in its place.
 */
class StandInTest {
    private static final Table BOAT = AmpacityRuleSet.BOAT.table();

    private static Quantity size(String text) {
        return QuantityText.read(text, null).quantity();
    }

    private static String name(Row row) {
        return row == null ? "none" : row.name().replace('\u00a0', ' ');
    }

    private static List<String> looked(String size) {
        for (var step : Trial.of("ampacity", "size=" + size, "insulation-temperature=t60").working().steps()) {
            if (step instanceof ChoiceStep choice) {
                return choice.candidates().stream().map(each -> (each.taken() ? "taken " : "left ") + each.name() + ": " + each.reason()).map(each -> each.replace('\u00a0', ' ')).toList();
            }
        }
        return List.of();
    }

    /** 2.1 mm² · 0.95 = 1.995 mm², less than 14 AWG. */
    @Test
    void aRowWithEnoughLessCopperStandsIn() {
        assertEquals(
                List.of("taken 16 AWG: 1.31 mm², less copper than 2.1 mm²", "left 14 AWG: 2.08 mm²: too close, for a metric size may have a little less copper than its name",
                        "left 12 AWG: 3.31 mm², more copper than 2.1 mm²"),
                looked("2.1 mm²"));
        assertEquals(List.of("taken 14 AWG: 2.08 mm², less copper than 2.5 mm²", "left 12 AWG: 3.31 mm², more copper than 2.5 mm²"), looked("2.5 mm²"));
        assertEquals(List.of(), looked("14 AWG"), "the row of the size itself");
    }

    @Test
    void aGaugeStandsForItself() {
        assertEquals("14 AWG", name(StandIn.row(BOAT, "t60", size("14 AWG"))));
        assertEquals("14 AWG", name(StandIn.thickEnough(BOAT, size("14 AWG"))));
        assertEquals("none", name(StandIn.row(BOAT, "t60", size("20 AWG"))));
    }

    @Test
    void thickEnoughIsTheThinnestThatHasNoLessCopper() {
        assertEquals("12 AWG", name(StandIn.thickEnough(BOAT, size("2.1 mm²"))));
        assertEquals("18 AWG", name(StandIn.thickEnough(BOAT, size("0.5 mm²"))));
        assertNull(StandIn.thickEnough(BOAT, size("500 mm²")));
        assertEquals("18 AWG", name(StandIn.thinnest(BOAT, "t60")));
        assertEquals("12 AWG", name(StandIn.thicker(BOAT, StandIn.thickEnough(BOAT, size("14 AWG")))));
    }
}
