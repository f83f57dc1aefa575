package loomwright.placing;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Dimension;

/** The letters and formulas of a row of round cut-outs. */
final class CutOutSymbols {
    static final Symbol FIRST = length("x", "1", "first centre from the left edge");
    static final Symbol LAST = length("x", "n", "last centre from the left edge");
    static final Symbol PITCH = length("p", "", "distance between centres");
    static final Symbol COUNT = Symbol.of("n", "number of cut-outs", Dimension.NUMBER);
    static final Symbol DIAMETER = length("d", "", "diameter of a cut-out");
    static final Symbol WIDTH = length("w", "", "width of the panel");
    static final Symbol HEIGHT = length("h", "", "height of the panel");
    static final Symbol ROW = length("y", "", "height of the centres above the lower edge");
    static final Symbol WEB = length("b", "", "material left between two cut-outs");
    static final Symbol LEFT = length("e", "left", "material left at the left edge");
    static final Symbol RIGHT = length("e", "right", "material left at the right edge");
    static final Symbol LOW = length("e", "low", "material left at the lower edge");
    static final Symbol HIGH = length("e", "high", "material left at the upper edge");

    private static final Expression RADIUS = DIAMETER.over(Expression.number(2));

    static final Formula LAST_CENTRE = new Formula(LAST, FIRST.plus(COUNT.minus(Expression.number(1)).times(PITCH)));
    static final Formula WEB_LEFT = new Formula(WEB, PITCH.minus(DIAMETER));
    static final Formula AT_LEFT = new Formula(LEFT, FIRST.minus(RADIUS));
    static final Formula AT_RIGHT = new Formula(RIGHT, WIDTH.minus(LAST).minus(RADIUS));
    static final Formula AT_BOTTOM = new Formula(LOW, ROW.minus(RADIUS));
    static final Formula AT_TOP = new Formula(HIGH, HEIGHT.minus(ROW).minus(RADIUS));

    static final Formula SLIP_ONE_TOO_MANY = new Formula(LAST, FIRST.plus(COUNT.times(PITCH)));
    static final Formula SLIP_WEB_OF_RADIUS = new Formula(WEB, PITCH.minus(RADIUS));
    static final Formula SLIP_CENTRE_AS_EDGE = new Formula(LEFT, FIRST);
    static final Formula SLIP_DIAMETER_FOR_RADIUS = new Formula(LEFT, FIRST.minus(DIAMETER));
    static final Formula SLIP_RIGHT_CENTRE = new Formula(RIGHT, WIDTH.minus(LAST));

    private CutOutSymbols() {}

    private static Symbol length(String letter, String subscript, String meaning) {
        return Symbol.of(letter, subscript, meaning, Dimension.LENGTH);
    }
}
