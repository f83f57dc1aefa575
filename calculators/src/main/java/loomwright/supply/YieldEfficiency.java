package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** The efficiency between panel and battery: entered, multiplied from single factors, or the published planning value. */
final class YieldEfficiency {
    private YieldEfficiency() {}

    static Quantity of(Entries entries, WorkingBuilder working) {
        Expression product = null;
        Expression sum = null;
        Values values = Values.none();
        int count = 0;
        for (int number = 1; number <= YieldFields.FACTORS; number++) {
            if (entries.has(YieldFields.factor(number))) {
                Symbol factor = Symbol.of("η", YieldFields.number(number), "factor " + YieldFields.number(number), Dimension.NUMBER);
                values = values.with(factor, entries.quantity(YieldFields.factor(number)));
                product = product == null ? factor : product.times(factor);
                sum = sum == null ? factor : sum.plus(factor);
                count++;
            }
        }
        if (product == null) {
            return entries.has("efficiency") ? entries.quantity("efficiency") : planning(working);
        }
        if (entries.has("efficiency")) {
            throw new Refusal("efficiency", "Efficiency in all is entered, and so are single factors: empty one or the other");
        }
        Quantity efficiency = working.compute(
                "Multiply the factors", new Formula(YieldFormulas.EFFICIENCY, product), values, Units.PERCENT,
                "Each loss takes its share of what the one before has left.");
        if (count > 1) {
            working.slip(
                    "factors-averaged", "efficiency-in-all", "The mean of the factors taken",
                    "One loss follows the other, so the factors multiply.",
                    new Formula(YieldFormulas.EFFICIENCY, sum.over(Expression.number(count))), values);
        }
        compare(working, efficiency);
        return efficiency;
    }

    private static Quantity planning(WorkingBuilder working) {
        return working.lookUp(
                "Read the efficiency for planning from the table", YieldFormulas.EFFICIENCY, row(), "value", Units.PERCENT,
                "Heat, dirt, cables and charging take the rest.");
    }

    private static void compare(WorkingBuilder working, Quantity efficiency) {
        working.finding(Comparison.of("The efficiency of all factors", efficiency)
                .atMost(row().quantity("value", Units.PERCENT), "the planning value", row().source())
                .exact()
                .otherwise(Verdict.CAUTION, "Ask whether a loss is missing: heat, dirt, cables, charging.")
                .finding());
    }

    static Row row() {
        return PublishedTables.solarSizing().row("off-grid-efficiency");
    }
}
