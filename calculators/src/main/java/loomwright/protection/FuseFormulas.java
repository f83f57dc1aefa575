package loomwright.protection;

import static loomwright.protection.FuseSymbols.AMPACITY;
import static loomwright.protection.FuseSymbols.CHOSEN;
import static loomwright.protection.FuseSymbols.DESIGN;
import static loomwright.protection.FuseSymbols.HIGHEST;
import static loomwright.protection.FuseSymbols.LEAST;
import static loomwright.protection.FuseSymbols.LOADING;
import static loomwright.protection.FuseSymbols.LOAD_SHARE;
import static loomwright.protection.FuseSymbols.RULE_SHARE;
import static loomwright.protection.FuseSymbols.SHEET_RATING;
import static loomwright.protection.FuseSymbols.WARM_CURRENT;
import static loomwright.protection.FuseSymbols.WARM_SHARE;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.worked.NamedFormula;

/** The formulas of choosing a fuse-link. */
final class FuseFormulas {
    static final Formula HIGHEST_BY_RULE = new Formula(HIGHEST, RULE_SHARE.times(AMPACITY));
    static final Formula WARM = new Formula(WARM_SHARE, WARM_CURRENT.over(SHEET_RATING));
    static final Formula LEAST_PLAIN = new Formula(LEAST, DESIGN);
    static final Formula LEAST_CONTINUOUS = new Formula(LEAST, DESIGN.over(LOAD_SHARE));
    static final Formula LEAST_WARM = new Formula(LEAST, DESIGN.over(WARM_SHARE));
    static final Formula LEAST_CONTINUOUS_AND_WARM = new Formula(LEAST, DESIGN.over(LOAD_SHARE.times(WARM_SHARE)));
    static final Formula LOADING_OF_CHOSEN = new Formula(LOADING, DESIGN.over(CHOSEN));

    static final List<NamedFormula> NAMED = List.of(
            new NamedFormula("highest-rating", HIGHEST_BY_RULE),
            new NamedFormula("warm-share", WARM),
            new NamedFormula("least-rating-continuous", LEAST_CONTINUOUS),
            new NamedFormula("least-rating-warm", LEAST_WARM),
            new NamedFormula("least-rating", LEAST_CONTINUOUS_AND_WARM),
            new NamedFormula("loading", LOADING_OF_CHOSEN));

    private FuseFormulas() {}

    static Formula least(boolean continuous, boolean warm) {
        if (continuous) {
            return warm ? LEAST_CONTINUOUS_AND_WARM : LEAST_CONTINUOUS;
        }
        return warm ? LEAST_WARM : LEAST_PLAIN;
    }
}
