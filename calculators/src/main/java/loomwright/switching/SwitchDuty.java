package loomwright.switching;

import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/**
 * Whether a switch or relay contact is rated for what it makes and breaks on direct current.
 *
 * <p>Rating wanted = continuous current · factor of the kind of load. The rating is that for a resistive load on direct current.
 *
 * @source FAA AC 43.13-1B, Table 11-4: the table switch-derating; written for aircraft
 */
public final class SwitchDuty {
    static final Symbol CURRENT = Symbol.of("I", "continuous current", Dimension.CURRENT);
    static final Symbol FACTOR = Symbol.of("f", "factor of the kind of load", Dimension.NUMBER);
    static final Formula WANTED = new Formula(Symbol.of("I", "w", "rating wanted", Dimension.CURRENT), CURRENT.times(FACTOR));

    private SwitchDuty() {}

    /**
     * The rating held against what the load asks of it.
     *
     * @param name the switch, in the middle of a sentence, such as {@code switch S1}
     * @param rating what it is rated for on direct current, resistive; null if nobody said
     * @param ratedBy where the rating comes from
     * @param current the continuous current of what it switches
     * @param highestVoltage the highest voltage of the system; it chooses the rows for 12 V or for 28 V
     * @param key the field that takes the rating
     */
    public static Finding check(
            String name, Quantity rating, Source ratedBy, Quantity current, SwitchedLoad load, Quantity highestVoltage, String key) {
        Row row = load.row(highestVoltage);
        if (row == null) {
            return Finding.notKnown(
                    "What " + name + " switches has capacitors at its input; for a moment they take many times " + current.text(3)
                            + ", and no factor for that is published.",
                    current, Source.of(Document.COMPUTED, "no table for this kind of load"),
                    new MissingFigure(key, "current that " + name + " may make into capacitors", "its data sheet, as making or inrush current"));
        }
        Quantity wanted = WANTED.value(Values.of(CURRENT, current).with(FACTOR, row.quantity("factor", Units.ONE)), Units.AMPERE);
        if (rating == null) {
            return Finding.notKnown(
                    "For " + row.text("load") + " the table asks " + name + " for " + wanted.text(3) + "; what it is rated for is not given.",
                    wanted, row.source(),
                    new MissingFigure(key, "direct-current rating of " + name, "the switch, or its data sheet; a figure for a.c. does not count"));
        }
        return Comparison.of("The rating of " + name, rating.in(Units.AMPERE))
                .atLeast(wanted, row.text("factor") + " times the current, as the table asks for " + row.text("load"), row.source())
                .restingOn(ratedBy)
                .exact()
                .settledBy(new MissingFigure(key, "direct-current rating of " + name, "the switch, or its data sheet"))
                .otherwise(Verdict.STOP, "Take a switch or relay rated for more on direct current, or one whose data sheet names this kind of load.")
                .finding();
    }
}
