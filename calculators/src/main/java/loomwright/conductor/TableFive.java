package loomwright.conductor;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * The one look-up in 33 CFR 183.425 Table 5: the row that may stand for a conductor (its own, or a thinner one, never a thicker one), and
 * the current of that row.
 *
 * <p>The table lists AWG. A metric size is a name that stands for a little less copper in some cables, so its row must have at least 5 %
 * less copper than the name. With that margin no row has less resistance than IEC 60228 allows a class 5 cable of the name.
 */
public final class TableFive {
    private static final double HAIR = 1e-6;

    /**
     * What the table lets a conductor carry below 50 V.
     *
     * @param table the current of its row
     * @param engineFactor the factor for an engine space, or null outside of one
     * @param ampacity the current it may carry
     */
    public record Current(Quantity table, Quantity engineFactor, Quantity ampacity) {}

    private TableFive() {}

    /** The current of a row, with its steps. */
    public static Current current(WorkingBuilder working, Row row, Insulation insulation, boolean engineSpace) {
        Quantity lowVoltage = Quantity.of(12, Units.VOLT);
        RatedCurrent rated = AmpacityRuleSet.BOAT.at(row, new Surroundings(insulation, engineSpace, null, 2, lowVoltage));
        Quantity factor = engineSpace ? rated.values().of(AmpacitySymbols.WARMTH_FACTOR) : null;
        return new Current(rated.tableCurrent(), factor, rated.show(working));
    }

    /** The row for a size, or null if every row has more copper. */
    static Row row(Quantity size) {
        Row own = own(size);
        return own == null ? thinner(size) : own;
    }

    /**
     * The row for a size, with a step if it is not the row of the size itself.
     *
     * @throws Refusal if every row has more copper
     */
    public static Row row(WorkingBuilder working, Quantity size) {
        Row own = own(size);
        if (own != null) {
            return own;
        }
        Row taken = thinner(size);
        if (taken == null) {
            Row thinnest = PublishedTables.no33Cfr183425Table5().rows().get(0);
            throw new Refusal(
                    "size",
                    "Size of conductor is " + size.text() + ", with too little copper for Table 5, which begins at " + thinnest.name()
                            + " ("
                            + squareMillimetres(thinnest).text(3) + "): take a thicker conductor, or the ampacity from its maker's data");
        }
        StandInStep.show(working, size, taken);
        return taken;
    }

    /** Says so, if the row is not that of the size itself. */
    public static void sayIfStandIn(WorkingBuilder working, Quantity size, Row row) {
        Quantity area = squareMillimetres(row);
        if (size.base() > area.base() * (1 + HAIR)) {
            working.finding(Comparison.of("The copper of " + size.text(), size.in(Units.SQUARE_MILLIMETRE))
                    .atLeast(area, "that of " + row.name() + ", whose row of Table 5 stands in for it", row.source())
                    .exact()
                    .finding());
        }
    }

    /** The next thicker row, or null. */
    public static Row thicker(Row row) {
        List<Row> rows = PublishedTables.no33Cfr183425Table5().rows();
        int at = rows.indexOf(row) + 1;
        return at < rows.size() ? rows.get(at) : null;
    }

    private static Row own(Quantity size) {
        return size.unit() == Units.AWG ? PublishedTables.no33Cfr183425Table5().find("size", size) : null;
    }

    private static Row thinner(Quantity size) {
        return StandIn.row(PublishedTables.no33Cfr183425Table5(), Insulation.T60.column(), size);
    }

    private static Quantity squareMillimetres(Row row) {
        return row.quantity("size").in(Units.SQUARE_MILLIMETRE);
    }
}
