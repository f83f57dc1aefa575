package loomwright.supply;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** How much of a battery a plan may use: the reader's figure, or the published planning value of its kind. */
final class UsableDepth {
    static final QuantityField FIELD = QuantityField.of(
                    "usable-depth",
                    "Usable depth of discharge",
                    "The share of the capacity you plan to use. Empty takes the published planning value: 80 % of LiFePO4, 50 % of lead-acid.",
                    1, 100, Units.PERCENT)
            .optional();

    private UsableDepth() {}

    static Quantity of(Entries entries, WorkingBuilder working, Chemistry chemistry) {
        Row row = chemistry.depth();
        Quantity planning = row.quantity("value", Units.PERCENT);
        if (!entries.has(FIELD.key())) {
            return working.lookUp(
                    "Read the usable depth from the table", Symbols.DEPTH, row, "value", Units.PERCENT,
                    "A battery that is emptied every time wears out sooner, so a plan uses a part only.");
        }
        Quantity own = entries.quantity(FIELD.key());
        working.finding(Comparison.of("The depth of discharge", own)
                .atMost(planning, "the planning value for " + chemistry.label(), row.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Take the planning value, or the figure of the maker.")
                .finding());
        return own;
    }
}
