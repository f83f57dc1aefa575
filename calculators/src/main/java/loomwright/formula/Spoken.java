package loomwright.formula;

import loomwright.quantity.Quantity;

/** Reads an expression in words, what each letter means in the place of the letter. */
final class Spoken {
    private final StringBuilder out = new StringBuilder();

    private Spoken() {}

    static String of(Symbol subject, Expression body) {
        Spoken spoken = new Spoken();
        spoken.out.append(subject.meaning()).append(" equals ");
        spoken.say(body, Binding.SUM);
        return spoken.out.toString();
    }

    private void say(Expression expression, int needed) {
        boolean brackets = Binding.of(expression, Leaves.LETTERS) < needed;
        out.append(brackets ? "(" : "");
        sayInside(expression);
        out.append(brackets ? ")" : "");
    }

    private void sayInside(Expression expression) {
        Quantity quantity = Binding.quantity(expression, Leaves.LETTERS);
        if (quantity != null) {
            out.append(quantity.text());
        } else if (expression instanceof Symbol symbol) {
            out.append(symbol.meaning());
        } else if (expression instanceof Sum sum) {
            pair(sum.left(), Binding.SUM, " plus ", sum.right(), Binding.SUM);
        } else if (expression instanceof Difference difference) {
            pair(difference.left(), Binding.SUM, " minus ", difference.right(), Binding.PRODUCT);
        } else if (expression instanceof Product product) {
            pair(product.left(), Binding.PRODUCT, " times ", product.right(), Binding.PRODUCT);
        } else if (expression instanceof Quotient quotient) {
            pair(quotient.left(), Binding.PRODUCT, " divided by ", quotient.right(), Binding.POWER);
        } else if (expression instanceof Power power) {
            power(power);
        } else if (expression instanceof Exponential exponential) {
            pair(exponential.of(), Binding.SINGLE, " to the power ", exponential.exponent(), Binding.SINGLE);
        } else if (expression instanceof Logarithm logarithm) {
            out.append("natural logarithm of (");
            say(logarithm.of(), Binding.SUM);
            out.append(')');
        }
    }

    private void pair(Expression left, int leftNeeds, String word, Expression right, int rightNeeds) {
        say(left, leftNeeds);
        out.append(word);
        say(right, rightNeeds);
    }

    private void power(Power power) {
        if (power.halves() == 1) {
            out.append("square root of (");
            say(power.of(), Binding.SUM);
            out.append(')');
        } else {
            say(power.of(), Binding.SINGLE);
            out.append(power.halves() == 4 ? " squared" : " to the power " + MathMl.halves(power.halves()));
        }
    }
}
