package loomwright.formula;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;

/**
 * A letter and the expression that gives it. Checked for its units when it is made.
 *
 * @param subject the letter on the left
 * @param body the expression on the right
 */
public record Formula(Symbol subject, Expression body) {
    /**
     * @throws IllegalArgumentException if the two sides are not of the same kind
     */
    public Formula {
        if (!subject.dimension().equals(body.dimension())) {
            throw new IllegalArgumentException(
                    "the " + subject.meaning() + " is not of the same kind as " + PlainText.symbolic(body));
        }
    }

    /** The value of the subject, in {@code unit}. Not rounded; may be infinite or not a number if the formula has no value there. */
    public Quantity value(Values values, Unit unit) {
        return Quantity.ofBase(body.base(values), unit);
    }

    /** The formula in words, such as {@code voltage drop equals current times resistance}. */
    public String spoken() {
        return Spoken.of(subject, body);
    }

    /** Letters only, on one line: {@code R = R_1 × L}. */
    public String symbolicText() {
        return subject.text() + " = " + PlainText.symbolic(body);
    }

    /** Numbers put in, on one line, with the result at the end. */
    public String workedText(Values values, Quantity result) {
        return subject.text() + " = " + PlainText.write(body, values::of) + " = " + result.text();
    }

    /** Letters only, in MathML Core. */
    public String symbolicMathMl() {
        return math(symbolicText(), MathMl.symbol(subject) + "<mo>=</mo>" + MathMl.write(body, Leaves.LETTERS));
    }

    /** Numbers put in, in MathML Core, with the result at the end. */
    public String workedMathMl(Values values, Quantity result) {
        return math(
                workedText(values, result),
                MathMl.symbol(subject) + "<mo>=</mo>" + MathMl.write(body, values::of) + "<mo>=</mo>" + MathMl.quantity(result));
    }

    /** The subject, then every letter of the body in the order it is first met, each once. */
    public List<Symbol> symbols() {
        List<Symbol> found = new ArrayList<>();
        found.add(subject);
        Letters.collect(body, found);
        return found;
    }

    private static String math(String spoken, String row) {
        return "<math display=\"block\" alttext=\"" + spoken + "\"><mrow>" + row + "</mrow></math>";
    }
}
