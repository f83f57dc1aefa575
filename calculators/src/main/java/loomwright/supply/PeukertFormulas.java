package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/**
 * Peukert's law in its two forms, right and wrong.
 *
 * <p>A power of an ampere has no meaning, so every base of a power is a ratio of two currents.
 */
final class PeukertFormulas {
    static final Symbol ONE_AMPERE_CAPACITY = Symbol.of("C", "1", "capacity at 1 A", Dimension.CHARGE);
    static final Symbol RATED_TIME = Symbol.of("H", "time the capacity is given for", Dimension.TIME);
    static final Symbol RATED_CURRENT = Symbol.of("I", "H", "rated current", Dimension.CURRENT);
    static final Symbol EXPONENT = Symbol.of("k", "Peukert exponent", Dimension.NUMBER);
    static final Symbol TIME = Symbol.of("t", "time until it is empty", Dimension.TIME);
    static final Symbol OTHER_TIME = Symbol.of("t", "x", "time by the other form", Dimension.TIME);
    static final Symbol DELIVERED = Symbol.of("Q", "ampere-hours delivered", Dimension.CHARGE);
    static final Symbol SHARE = Symbol.of("q", "delivered share of the rating", Dimension.NUMBER);
    static final Symbol PLANNED = Symbol.of("t", "D", "time to the usable depth", Dimension.TIME);

    private static final Expression ONE_AMPERE = Expression.fixed(Quantity.of(1, Units.AMPERE));
    private static final Expression RATIO = Symbols.CAPACITY.over(Symbols.CURRENT.times(RATED_TIME));

    /** Form B: t = H × (C ÷ (I × H))^k, with C given for H hours. */
    static final Formula BY_RATED_HOURS = new Formula(TIME, byRatedHours());

    /** Form A: t = C1 ÷ I^k, with C1 the capacity at 1 A. */
    static final Formula BY_ONE_AMPERE = new Formula(TIME, byOneAmpere(ONE_AMPERE_CAPACITY));

    /** Form A fed with the capacity at the rated time, as most printed examples do. */
    static final Formula ONE_AMPERE_MISUSED = new Formula(OTHER_TIME, byOneAmpere(Symbols.CAPACITY));

    /** Form B fed with the capacity at 1 A. */
    static final Formula RATED_HOURS_MISUSED =
            new Formula(OTHER_TIME, RATED_TIME.times(ONE_AMPERE_CAPACITY.over(Symbols.CURRENT.times(RATED_TIME)).toThe(EXPONENT)));

    static final Formula CURRENT_OF_RATING = new Formula(RATED_CURRENT, Symbols.CAPACITY.over(RATED_TIME));
    static final Formula TO_ONE_AMPERE = new Formula(
            ONE_AMPERE_CAPACITY, ONE_AMPERE.times(RATED_TIME).times(RATED_CURRENT.over(ONE_AMPERE).toThe(EXPONENT)));
    static final Formula DELIVERED_CHARGE = new Formula(DELIVERED, Symbols.CURRENT.times(TIME));
    static final Formula SHARE_OF_RATING = new Formula(SHARE, DELIVERED.over(Symbols.CAPACITY));
    static final Formula SHARE_OF_ONE_AMPERE = new Formula(SHARE, DELIVERED.over(ONE_AMPERE_CAPACITY));
    static final Formula PLANNED_TIME = new Formula(PLANNED, Symbols.DEPTH.times(TIME));

    static final Formula DEPTH_LEFT_OUT = new Formula(PLANNED, TIME);
    static final Formula AS_TIME = new Formula(TIME, OTHER_TIME);
    static final Formula EXPONENT_LEFT_OUT = new Formula(TIME, Symbols.CAPACITY.over(Symbols.CURRENT));
    static final Formula ONE_AMPERE_WITHOUT_EXPONENT = new Formula(TIME, ONE_AMPERE_CAPACITY.over(Symbols.CURRENT));
    static final Formula RATIO_TURNED_OVER =
            new Formula(TIME, RATED_TIME.times(Symbols.CURRENT.times(RATED_TIME).over(Symbols.CAPACITY).toThe(EXPONENT)));
    static final Formula MULTIPLIED_BY_EXPONENT = new Formula(TIME, RATED_TIME.times(RATIO).times(EXPONENT));
    static final Formula ONE_AMPERE_DIVIDED_BY_EXPONENT =
            new Formula(TIME, ONE_AMPERE_CAPACITY.over(Symbols.CURRENT.times(EXPONENT)));

    private PeukertFormulas() {}

    private static Expression byRatedHours() {
        return RATED_TIME.times(RATIO.toThe(EXPONENT));
    }

    private static Expression byOneAmpere(Symbol capacity) {
        return capacity.over(ONE_AMPERE.times(Symbols.CURRENT.over(ONE_AMPERE).toThe(EXPONENT)));
    }
}
