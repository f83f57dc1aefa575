package loomwright.load;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.NamedFormula;

/** The formulas of an outlet, right and wrong. */
final class OutletFormulas {
    static final Symbol CURRENT = Symbol.of("I", "current asked of the outlet", Dimension.CURRENT);
    static final Symbol RATING = Symbol.of("I", "r", "continuous rating of the outlet", Dimension.CURRENT);
    static final Symbol FUSE = Symbol.of("I", "f", "rating of the fuse-link before it", Dimension.CURRENT);
    static final Symbol LOADING = Symbol.of("s", "share of the continuous rating", Dimension.NUMBER);
    static final Symbol HEADROOM = Symbol.of("I", "h", "what is left of the rating", Dimension.CURRENT);
    static final Symbol CONTACTS = Symbol.of("R", "c", "resistance of both contacts", Dimension.RESISTANCE);
    static final Symbol DROP = Symbol.of("U", "c", "voltage lost in the contacts", Dimension.VOLTAGE);
    static final Symbol HEAT = Symbol.of("P", "c", "heat in the contacts", Dimension.POWER);
    static final Symbol HOURS = Symbol.of("t", "time in use in a day", Dimension.TIME);
    static final Symbol LIVE = Symbol.of("t", "0", "time live in a day", Dimension.TIME);
    static final Symbol STANDING = Symbol.of("I", "0", "draw with nothing plugged in", Dimension.CURRENT);
    static final Symbol USE = Symbol.of("Q", "taken by the load in a day", Dimension.CHARGE);
    static final Symbol STANDING_CHARGE = Symbol.of("Q", "0", "standing draw in a day", Dimension.CHARGE);

    static final Formula SHARE = new Formula(LOADING, CURRENT.over(RATING));
    static final Formula LEFT = new Formula(HEADROOM, RATING.minus(CURRENT));
    static final Formula CONTACT_DROP = new Formula(DROP, CURRENT.times(CONTACTS));
    static final Formula CONTACT_HEAT = new Formula(HEAT, CURRENT.squared().times(CONTACTS));
    static final Formula USE_CHARGE = new Formula(USE, CURRENT.times(HOURS));
    static final Formula STANDING_DAY = new Formula(STANDING_CHARGE, STANDING.times(LIVE));

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("loading", SHARE),
            new NamedFormula("contact-drop", CONTACT_DROP),
            new NamedFormula("contact-heat", CONTACT_HEAT),
            new NamedFormula("use", USE_CHARGE),
            new NamedFormula("standing", STANDING_DAY));

    static final Formula SHARE_TURNED_OVER = new Formula(LOADING, RATING.over(CURRENT));
    static final Formula SHARE_OF_FUSE = new Formula(LOADING, CURRENT.over(FUSE));
    static final Formula SQUARE_FORGOTTEN =
            new Formula(HEAT, CURRENT.times(CONTACTS).times(Expression.fixed(Quantity.of(1, Units.AMPERE))));
    static final Formula MILLIOHMS_AS_OHMS = new Formula(HEAT, Expression.number(1000).times(CURRENT.squared()).times(CONTACTS));
    static final Formula ONLY_WHILE_IN_USE = new Formula(STANDING_CHARGE, STANDING.times(HOURS));
    static final Formula MILLIAMPERES_AS_AMPERES = new Formula(STANDING_CHARGE, Expression.number(1000).times(STANDING).times(LIVE));

    private OutletFormulas() {}
}
