package loomwright.protection;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.NamedFormula;

/** The adiabatic equation: all the heat of a short circuit stays in the copper. */
public final class HeatingFormulas {
    private static final Dimension ROOT_TIME = Dimension.TIME.toTheHalves(1);

    static final Symbol CURRENT = Symbol.of("I", "short-circuit current", Dimension.CURRENT);
    static final Symbol TIME = Symbol.of("t", "time until the device has opened", Dimension.TIME);
    static final Symbol SIZE = Symbol.of("S", "cross-section", Dimension.AREA);
    static final Symbol K =
            Symbol.of("k", "constant of copper and its insulation", Dimension.CURRENT.times(ROOT_TIME).per(Dimension.AREA));
    static final Symbol ROOT_HEATING = Symbol.of("H", "current times the root of the time", Dimension.CURRENT.times(ROOT_TIME));
    static final Symbol ENERGY = Symbol.of("W", "current squared times time", Dimension.CURRENT.times(Dimension.CHARGE));
    static final Symbol LEAST_SIZE = Symbol.of("S", "min", "least cross-section", Dimension.AREA);
    static final Symbol LONGEST = Symbol.of("t", "max", "longest time the conductor stands the current", Dimension.TIME);

    static final Formula ROOT = new Formula(ROOT_HEATING, CURRENT.times(TIME.squareRoot()));
    static final Formula SQUARE = new Formula(ENERGY, CURRENT.squared().times(TIME));
    static final Formula LEAST = new Formula(LEAST_SIZE, CURRENT.squared().times(TIME).squareRoot().over(K));
    static final Formula WITHSTOOD = new Formula(ROOT_HEATING, K.times(SIZE));
    static final Formula LONGEST_TIME = new Formula(LONGEST, K.times(SIZE).over(CURRENT).squared());

    /** One second, put in where a slip drops a root or a square: its units would not come out without it. */
    private static final Expression ROOT_OF_A_SECOND = Expression.fixed(Quantity.of(1, Units.SECOND)).squareRoot();

    static final Formula ROOT_LEFT_OUT = new Formula(LEAST_SIZE, CURRENT.times(TIME).over(K.times(ROOT_OF_A_SECOND)));
    static final Formula SQUARE_LEFT_OUT = new Formula(LONGEST, K.times(SIZE).over(CURRENT).times(ROOT_OF_A_SECOND));
    static final Formula HEATING_ROOT_LEFT_OUT = new Formula(ROOT_HEATING, CURRENT.times(TIME).over(ROOT_OF_A_SECOND));

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("least-size", LEAST),
            new NamedFormula("longest-time", LONGEST_TIME),
            new NamedFormula("root-heating", ROOT),
            new NamedFormula("let-through", SQUARE));

    /** Up to here all heat may be taken to stay in the copper. source: note of the table of k values. */
    public static final Quantity VALID_TO = Quantity.of(5, Units.SECOND);

    private HeatingFormulas() {}

    /** The I²t a conductor stands. */
    public static Quantity integral(Quantity size, Row insulation) {
        Quantity second = Quantity.of(1, Units.SECOND);
        Quantity most = WITHSTOOD.value(
                Values.of(SIZE, size.in(Units.SQUARE_MILLIMETRE))
                        .with(K, insulation.quantity("k", Units.AMPERE_ROOT_SECOND_PER_SQUARE_MILLIMETRE)),
                Units.AMPERE_ROOT_SECOND);
        Values values = Values.of(CURRENT, Quantity.of(most.base(), Units.AMPERE)).with(TIME, second);
        return SQUARE.value(values, Units.AMPERE_SQUARED_SECOND);
    }

    /** How long a conductor stands a current. */
    public static Quantity longestTime(Quantity current, Quantity size, Row insulation) {
        Values values = Values.of(CURRENT, current)
                .with(SIZE, size.in(Units.SQUARE_MILLIMETRE))
                .with(K, insulation.quantity("k", Units.AMPERE_ROOT_SECOND_PER_SQUARE_MILLIMETRE));
        return LONGEST_TIME.value(values, Units.SECOND);
    }
}
