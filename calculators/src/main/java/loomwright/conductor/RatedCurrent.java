package loomwright.conductor;

import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.WorkingBuilder;

/**
 * The current that one rule set lets one conductor carry: a row of its table, and the rows of its own factors.
 *
 * @param row the row of the size
 * @param column the column of the insulation
 * @param warmth the row of the factor for warm surroundings, or null if none applies
 * @param warmthColumn the column of that factor
 * @param bundle the row of the factor for bundled conductors, or null if there is none
 * @param bundleBinds whether the rule set makes that factor compulsory here
 * @param own a factor that the reader entered, or null if there is none
 */
public record RatedCurrent(
        Row row, String column, Row warmth, String warmthColumn, Row bundle, boolean bundleBinds, Quantity own) {

    /** The current by the rule set alone. */
    RatedCurrent(Row row, String column, Row warmth, String warmthColumn, Row bundle, boolean bundleBinds) {
        this(row, column, warmth, warmthColumn, bundle, bundleBinds, null);
    }

    /** The same times a factor of the reader's own; as it is if there is none. */
    RatedCurrent times(Quantity ownFactor) {
        return new RatedCurrent(row, column, warmth, warmthColumn, bundle, bundleBinds, ownFactor);
    }


    /** The current, without a step. */
    public Quantity value() {
        return formula().value(values(), Units.AMPERE);
    }

    Quantity tableCurrent() {
        return row.quantity(column);
    }

    /** The factors behind the current of the table, such as {@code  × 0.82 × 0.60}; empty if there are none. */
    String factorsText() {
        String warm = warmth == null ? "" : " × " + warmth.quantity(warmthColumn, Units.ONE).text();
        String bundled = bundleBinds ? " × " + bundle.quantity("factor", Units.ONE).text() : "";
        return warm + bundled + (own == null ? "" : " × " + own.text());
    }

    /** The figures for the formulas; factors that do not apply are absent. */
    Values values() {
        Values values = Values.of(AmpacitySymbols.TABLE_CURRENT, tableCurrent());
        if (warmth != null) {
            values = values.with(AmpacitySymbols.WARMTH_FACTOR, warmth.quantity(warmthColumn, Units.ONE));
        }
        if (bundle != null) {
            values = values.with(AmpacitySymbols.BUNDLE_FACTOR, bundle.quantity("factor", Units.ONE));
        }
        return own == null ? values : values.with(AmpacitySymbols.OWN_FACTOR, own);
    }

    /** Adds the steps that lead to the current. */
    Quantity show(WorkingBuilder working) {
        return show(working, true);
    }

    /** The same, for a figure that is the ampacity or only above it. */
    Quantity show(WorkingBuilder working, boolean isRated) {
        boolean unchanged = warmth == null && !bundleBinds && own == null;
        Quantity current = working.lookUp(
                "Read the current of " + row.name() + " from the table",
                unchanged ? AmpacitySymbols.AMPACITY : AmpacitySymbols.TABLE_CURRENT, row, column,
                "The table holds at its own conditions: they are named among the checks.");
        if (warmth != null) {
            working.lookUp(
                    "Read the factor for warm surroundings", AmpacitySymbols.WARMTH_FACTOR, warmth, warmthColumn, Units.ONE,
                    "In a warm place there is less room for the conductor's own heat. There is no reading between rows: the next warmer "
                            + "one counts.");
        }
        if (bundleBinds) {
            working.lookUp(
                    "Read the factor for conductors bundled together", AmpacitySymbols.BUNDLE_FACTOR, bundle, "factor", Units.ONE,
                    "Conductors side by side warm each other, at any voltage. 33 CFR makes the factor compulsory from 50 V up only.");
        }
        if (unchanged) {
            return current;
        }
        return working.compute(
                "Multiply by what applies", formula(), values(), Units.AMPERE,
                isRated ? "Each factor takes its share of the current." : "The conductor carries less than this.");
    }

    private Formula formula() {
        return AmpacityFormulas.of(warmth != null, bundleBinds, own != null);
    }
}
