package loomwright.formula;

import loomwright.quantity.Quantity;

/** Writes an expression on one line of text. */
final class PlainText {
    private final Leaves leaves;
    private final StringBuilder out = new StringBuilder();

    private PlainText(Leaves leaves) {
        this.leaves = leaves;
    }

    static String symbolic(Expression expression) {
        return write(expression, Leaves.LETTERS);
    }

    static String write(Expression expression, Leaves leaves) {
        PlainText text = new PlainText(leaves);
        text.write(expression, Binding.SUM);
        return text.out.toString();
    }

    private void write(Expression expression, int needed) {
        boolean brackets = Binding.of(expression, leaves) < needed;
        if (brackets) {
            out.append('(');
        }
        writeInside(expression);
        if (brackets) {
            out.append(')');
        }
    }

    private void writeInside(Expression expression) {
        Quantity quantity = Binding.quantity(expression, leaves);
        if (quantity != null) {
            out.append(quantity.text());
        } else if (expression instanceof Symbol symbol) {
            out.append(symbol.text());
        } else if (expression instanceof Sum sum) {
            pair(sum.left(), Binding.SUM, " + ", sum.right(), Binding.SUM);
        } else if (expression instanceof Difference difference) {
            pair(difference.left(), Binding.SUM, " \u2212 ", difference.right(), Binding.PRODUCT);
        } else if (expression instanceof Product product) {
            pair(product.left(), Binding.PRODUCT, " \u00d7 ", product.right(), Binding.PRODUCT);
        } else if (expression instanceof Quotient quotient) {
            pair(quotient.left(), Binding.PRODUCT, " \u00f7 ", quotient.right(), Binding.POWER);
        } else if (expression instanceof Power power) {
            writePower(power);
        } else if (expression instanceof Exponential exponential) {
            pair(exponential.of(), Binding.SINGLE, "^", exponential.exponent(), Binding.SINGLE);
        } else if (expression instanceof Logarithm logarithm) {
            out.append("ln(");
            write(logarithm.of(), Binding.SUM);
            out.append(')');
        }
    }

    private void pair(Expression left, int leftNeeds, String sign, Expression right, int rightNeeds) {
        write(left, leftNeeds);
        out.append(sign);
        write(right, rightNeeds);
    }

    private void writePower(Power power) {
        if (power.halves() == 1) {
            out.append("\u221a(");
            write(power.of(), Binding.SUM);
            out.append(')');
        } else {
            write(power.of(), Binding.SINGLE);
            out.append(power.halves() == 4 ? "\u00b2" : "^" + MathMl.halves(power.halves()));
        }
    }
}
