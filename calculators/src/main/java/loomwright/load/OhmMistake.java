package loomwright.load;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.quantity.Quantity;

/**
 * A mistake with the numbers of two given quantities.
 *
 * @param pair the keys of the two given
 * @param kind its kind, the start of its key
 * @param name the mistake in a few words
 * @param words why it is wrong
 * @param formula what was done
 */
record OhmMistake(String pair, String kind, String name, String words, Formula formula) {
    static OhmMistake multiplied(String pair, Expression wrong, Symbol subject) {
        return of(
                pair, "multiplied", "Multiplied instead of divided", "Look which way it goes: the " + subject.meaning()
                        + " is a quotient here.",
                wrong, subject);
    }

    static OhmMistake divided(String pair, Expression wrong, Symbol subject, String words) {
        return of(pair, "divided", "Divided instead of multiplied", words, wrong, subject);
    }

    static OhmMistake dividedTheOtherWay(String pair, Expression wrong, Symbol subject, String words) {
        return of(pair, "divided-the-other-way", "Divided instead of multiplied", words, wrong, subject);
    }

    static OhmMistake turnedOver(String pair, Expression wrong, Symbol subject) {
        return of(
                pair, "turned-over", "Divided the wrong way round", "Which number is divided by which makes all the difference.", wrong,
                subject);
    }

    static OhmMistake squareForgotten(String pair, Expression wrong, Symbol subject, String words) {
        return of(pair, "square-forgotten", "The square forgotten", words, wrong, subject);
    }

    static OhmMistake rootForgotten(String pair, Expression wrong, Symbol subject) {
        return of(pair, "root-forgotten", "The square root forgotten", "This is the square of the answer: take its root.", wrong, subject);
    }

    private static OhmMistake of(String pair, String kind, String name, String words, Expression wrong, Symbol subject) {
        Expression one = Expression.fixed(Quantity.of(1, OhmFields.DESCRIPTION.output(subject.meaning()).unit()));
        return new OhmMistake(pair, kind, name, words, new Formula(subject, wrong.times(one)));
    }

    Symbol subject() {
        return formula.subject();
    }

    String key() {
        return kind + "-" + subject().meaning();
    }
}
