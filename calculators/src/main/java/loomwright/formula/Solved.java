package loomwright.formula;

import java.util.List;

/**
 * A formula turned round: the same equation with another of its letters alone on the left.
 *
 * <p>The letter is freed step by step: what was done to it last is undone first, on both sides. That works where it stands once in the
 * formula. A square is undone by its positive root, since every quantity here is counted upwards from nought.
 */
public final class Solved {
    private static final Expression E = Expression.number(Math.E);

    private Solved() {}

    /**
     * The formula solved for a letter; null if the letter stands in it never or more than once, or under something that cannot be undone.
     */
    public static Formula of(Formula formula, Symbol unknown) {
        if (unknown.equals(formula.subject()) || occurrences(formula.body(), unknown) != 1) {
            return null;
        }
        Expression freed = free(formula.body(), formula.subject(), unknown);
        return freed == null ? null : new Formula(unknown, freed);
    }

    /** How often a letter stands in an expression. */
    static int occurrences(Expression expression, Symbol letter) {
        if (expression.equals(letter)) {
            return 1;
        }
        int count = 0;
        for (Expression part : parts(expression)) {
            count += occurrences(part, letter);
        }
        return count;
    }

    private static List<Expression> parts(Expression expression) {
        if (expression instanceof Sum sum) {
            return List.of(sum.left(), sum.right());
        }
        if (expression instanceof Difference difference) {
            return List.of(difference.left(), difference.right());
        }
        if (expression instanceof Product product) {
            return List.of(product.left(), product.right());
        }
        if (expression instanceof Quotient quotient) {
            return List.of(quotient.left(), quotient.right());
        }
        if (expression instanceof Exponential exponential) {
            return List.of(exponential.of(), exponential.exponent());
        }
        if (expression instanceof Power power) {
            return List.of(power.of());
        }
        return expression instanceof Logarithm logarithm ? List.of(logarithm.of()) : List.of();
    }

    /** What the letter equals if {@code expression}, which holds it once, equals {@code value}. */
    private static Expression free(Expression expression, Expression value, Symbol unknown) {
        if (expression.equals(unknown)) {
            return value;
        }
        for (Expression part : parts(expression)) {
            if (occurrences(part, unknown) == 1) {
                Expression undone = undone(expression, part == parts(expression).get(0), value);
                return undone == null ? null : free(part, undone, unknown);
            }
        }
        return null;
    }

    /** What the first or the second part of an expression equals if the whole equals {@code value}; null if that cannot be said. */
    private static Expression undone(Expression whole, boolean first, Expression value) {
        if (whole instanceof Sum sum) {
            return value.minus(first ? sum.right() : sum.left());
        }
        if (whole instanceof Difference difference) {
            return first ? value.plus(difference.right()) : difference.left().minus(value);
        }
        if (whole instanceof Product product) {
            return value.over(first ? product.right() : product.left());
        }
        if (whole instanceof Quotient quotient) {
            return first ? value.times(quotient.right()) : quotient.left().over(value);
        }
        if (whole instanceof Power power) {
            return power.halves() == 4 ? value.squareRoot() : power.halves() == 1 ? value.squared() : null;
        }
        if (whole instanceof Exponential exponential) {
            return first
                    ? value.toThe(Expression.number(1).over(exponential.exponent()))
                    : Expression.naturalLogarithm(value).over(Expression.naturalLogarithm(exponential.of()));
        }
        return E.toThe(value);
    }
}
