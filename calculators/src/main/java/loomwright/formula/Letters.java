package loomwright.formula;

import java.util.List;

/** Finds the letters of an expression. */
final class Letters {
    private Letters() {}

    static void collect(Expression expression, List<Symbol> found) {
        if (expression instanceof Symbol symbol) {
            if (!found.contains(symbol)) {
                found.add(symbol);
            }
        } else if (expression instanceof Sum sum) {
            both(sum.left(), sum.right(), found);
        } else if (expression instanceof Difference difference) {
            both(difference.left(), difference.right(), found);
        } else if (expression instanceof Product product) {
            both(product.left(), product.right(), found);
        } else if (expression instanceof Quotient quotient) {
            both(quotient.left(), quotient.right(), found);
        } else if (expression instanceof Power power) {
            collect(power.of(), found);
        } else if (expression instanceof Exponential exponential) {
            both(exponential.of(), exponential.exponent(), found);
        } else if (expression instanceof Logarithm logarithm) {
            collect(logarithm.of(), found);
        }
    }

    private static void both(Expression left, Expression right, List<Symbol> found) {
        collect(left, found);
        collect(right, found);
    }
}
