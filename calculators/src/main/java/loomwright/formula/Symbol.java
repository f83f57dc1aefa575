package loomwright.formula;

import loomwright.quantity.Dimension;

/**
 * A letter that stands for a quantity.
 *
 * @param letter the letter, such as {@code U}
 * @param subscript what is written below it, or an empty text
 * @param meaning the letter in words, to stand after "is the": {@code voltage drop, out and back}
 * @param dimension what kind of quantity it stands for
 */
public record Symbol(String letter, String subscript, String meaning, Dimension dimension) implements Expression {

    public static Symbol of(String letter, String meaning, Dimension dimension) {
        return new Symbol(letter, "", meaning, dimension);
    }

    public static Symbol of(String letter, String subscript, String meaning, Dimension dimension) {
        return new Symbol(letter, subscript, meaning, dimension);
    }

    @Override
    public double base(Values values) {
        return values.of(this).base();
    }

    /** The letter and its subscript in plain text. */
    public String text() {
        return subscript.isEmpty() ? letter : letter + "_" + subscript;
    }

    /** The letter and its subscript in MathML Core, as a whole formula of its own. */
    public String mathMl() {
        return "<math>" + MathMl.symbol(this) + "</math>";
    }
}
