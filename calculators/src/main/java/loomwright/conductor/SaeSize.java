package loomwright.conductor;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.WorkingBuilder;

/**
 * The SAE gauge of a number, set against the AWG of the same number.
 *
 * @param named whether the size was entered as SAE gauge
 * @param row its row, or null if there is no such SAE gauge
 * @param area its area in mm², or null if it has not been read yet
 */
record SaeSize(boolean named, Row row, Quantity area) {
    static final SaeSize NONE = new SaeSize(false, null, null);

    /**
     * The SAE gauge of a number.
     *
     * @throws loomwright.worked.Refusal if the size is named by SAE and there is no such SAE gauge
     */
    static SaeSize of(WorkingBuilder working, Quantity size, boolean named) {
        Table table = PublishedTables.saeGaugeArea();
        if (!named) {
            return new SaeSize(false, table.find("size", size), null);
        }
        Row row = SizeRow.of(table, size, "SAE gauge numbers", "say that it is AWG");
        return new SaeSize(true, row, read(working, row));
    }

    /** Adds the comparison of SAE gauge and AWG, if there is one. */
    void compare(WorkingBuilder working, Quantity size, Quantity entered) {
        if (row == null) {
            return;
        }
        Quantity sae = named ? area : read(working, row);
        Quantity awg = named
                ? working.convert(
                        "Turn the AWG of the same number into square millimetres", size, Units.SQUARE_MILLIMETRE,
                        "To see what SAE gauge lacks against it.")
                : entered;
        Values values = Values.of(GaugeSymbols.AWG_AREA, awg).with(GaugeSymbols.SAE_AREA, sae);
        Quantity shortfall = working.compute(
                "See how much copper SAE gauge lacks", GaugeFormulas.SAE_SHORTFALL, values, Units.PERCENT,
                "The two share their numbers, so one is easily taken for the other.");
        working.result("sae-area", sae);
        working.result("sae-shortfall", shortfall);
    }

    /** The share of copper that SAE gauge lacks. */
    Quantity shortfall() {
        return GaugeFormulas.SAE_SHORTFALL.value(
                Values.of(GaugeSymbols.AWG_AREA, awgArea()).with(GaugeSymbols.SAE_AREA, saeArea()), Units.PERCENT);
    }

    Quantity awgArea() {
        return row.quantity("size").in(Units.SQUARE_MILLIMETRE);
    }

    Quantity saeArea() {
        return row.quantity("sae-area").in(Units.SQUARE_MILLIMETRE);
    }

    /** The gauge number as SAE cable carries it, such as {@code 12 SAE}. */
    String name() {
        return row.name().replace("AWG", "SAE");
    }

    private static Quantity read(WorkingBuilder working, Row row) {
        Quantity circularMils = working.lookUp(
                "Read the area of " + row.name().replace("AWG", "SAE") + " from the table", GaugeSymbols.SAE_AREA, row, "sae-area",
                "SAE gauge follows no rule of diameters: its areas are listed.");
        return working.convert("Turn it into square millimetres", circularMils, Units.SQUARE_MILLIMETRE,
                "To compare it with the other sizes.");
    }
}
