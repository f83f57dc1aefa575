package loomwright.protection;

import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Verdict;

/**
 * How much of its rating a device holds for hours. A breaker is not loaded like a fuse-link of the same number: one in print carries 70 % for as
 * long as it likes and trips at 100 %.
 *
 * @source fuse-links: NEC 210.20(A), a mains rule that 12 V work has borrowed; breakers: the table marine-breaker-trip, row holds
 */
public final class Holding {
    private static final Symbol CURRENT = Symbol.of("I", "b", "design current", Dimension.CURRENT);
    private static final Symbol RATING = Symbol.of("I", "n", "rating of the device", Dimension.CURRENT);
    private static final Formula LOADING =
            new Formula(Symbol.of("b", "load as a share of the rating", Dimension.NUMBER), CURRENT.over(RATING));

    private Holding() {}

    /** The share of its rating that a device of this kind holds for hours. */
    public static Quantity share(DeviceKind kind) {
        return kind.isBreaker() ? row(kind).quantity("current-share") : row(kind).quantity("load");
    }

    /** The printed row of that share. */
    public static Row row(DeviceKind kind) {
        return kind.isBreaker() ? PublishedTables.marineBreakerTrip().row("holds") : FuseSteps.continuousRule();
    }

    /** The column of that share. */
    public static String column(DeviceKind kind) {
        return kind.isBreaker() ? "current-share" : "load";
    }

    /**
     * A load of hours held against what the device holds.
     *
     * @param name the device, in the middle of a sentence, such as {@code breaker Q1}
     */
    public static Comparison check(String name, DeviceKind kind, Quantity rating, Quantity current) {
        Quantity loading = LOADING.value(Values.of(CURRENT, current).with(RATING, rating), Units.PERCENT);
        Source source = row(kind).source();
        return Comparison.of("The load on " + name + " as a share of its rating", loading)
                .atMost(share(kind), kind.isBreaker() ? "what a published breaker carries for hours" : "what a fuse-link may carry for hours", source)
                .exact()
                .otherwise(
                        Verdict.CAUTION,
                        kind.isBreaker()
                                ? "It may trip without a fault. Take a larger breaker that the conductor still allows, a thicker conductor with it, or less load."
                                : "It runs hot and may open without a fault. Take a larger rating that the conductor still allows, or less load.");
    }
}
