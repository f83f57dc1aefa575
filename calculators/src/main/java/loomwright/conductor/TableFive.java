package loomwright.conductor;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Candidate;
import loomwright.worked.Finding;
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * The one look-up in 33 CFR 183.425 Table 5: the row that may stand for a conductor (its own, or a thinner one, never a thicker one), and
 * the current of that row.
 *
 * <p>The table lists AWG. A metric size is a name that stands for a little less copper in some cables, so its row must have at least 5 %
 * less copper than the name. With that margin no row has less resistance than IEC 60228 allows a class 5 cable of the name.
 */
public final class TableFive {
    private static final double METRIC_MARGIN = 0.95;
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
        working.choose(
                "Take a row of Table 5 with less copper", candidates(size, taken), taken.quantity("size"),
                "The table lists AWG only. A thinner row errs to the cautious side; a thicker one may never stand in.", Source.of(
                        taken.source().document(), "183.425 Table 5"));
        return taken;
    }

    /** Says so, if the row is not that of the size itself. */
    public static void sayIfStandIn(WorkingBuilder working, Quantity size, Row row) {
        Quantity area = squareMillimetres(row);
        if (size.base() > area.base() * (1 + HAIR)) {
            Quantity less = Quantity.ofBase(1 - area.base() / size.base(), Units.PERCENT);
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "Table 5 has no row for " + size.text() + ". That of " + row.name() + " stands in, with " + less.text(3)
                            + " less copper.",
                    size.in(Units.SQUARE_MILLIMETRE), area, row.source(),
                    "If the maker of the cable gives a lower current than this, that figure rules."));
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
        Row taken = null;
        for (Row row : PublishedTables.no33Cfr183425Table5().rows()) {
            taken = row.quantity("size").base() <= most(size) ? row : taken;
        }
        return taken;
    }

    /** The copper its row may have at most. */
    private static double most(Quantity size) {
        boolean metric = size.unit() == Units.SQUARE_MILLIMETRE;
        return size.base() * (metric ? METRIC_MARGIN : 1 + HAIR);
    }

    private static List<Candidate> candidates(Quantity size, Row taken) {
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(new Candidate(taken.name(), true, squareMillimetres(taken).text(3) + ", less copper than " + size.text()));
        Row row = thicker(taken);
        while (row != null && row.quantity("size").base() <= size.base()) {
            candidates.add(new Candidate(
                    row.name(), false, squareMillimetres(row).text(3)
                            + ": too close, for a metric size may have a little less copper than its name"));
            row = thicker(row);
        }
        if (row != null) {
            candidates.add(new Candidate(row.name(), false, squareMillimetres(row).text(3) + ", more copper than " + size.text()));
        }
        return candidates;
    }

    private static Quantity squareMillimetres(Row row) {
        return row.quantity("size").in(Units.SQUARE_MILLIMETRE);
    }
}
