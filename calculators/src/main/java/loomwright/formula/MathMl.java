package loomwright.formula;

import loomwright.quantity.Quantity;

/** Writes an expression in MathML Core. */
final class MathMl {
    private final Leaves leaves;
    private final StringBuilder out = new StringBuilder();

    private MathMl(Leaves leaves) {
        this.leaves = leaves;
    }

    static String write(Expression expression, Leaves leaves) {
        MathMl mathMl = new MathMl(leaves);
        mathMl.write(expression, Binding.SUM);
        return mathMl.out.toString();
    }

    /** A quantity as MathML: the number, a thin space, the unit upright. */
    static String quantity(Quantity quantity) {
        String number = "<mn>" + quantity.numberText() + "</mn>";
        String unit = quantity.unit().symbol();
        return unit.isEmpty() ? number : "<mrow>" + number + "<mspace width=\"0.2em\"/><mtext>" + unit + "</mtext></mrow>";
    }

    static String symbol(Symbol symbol) {
        String letter = "<mi>" + symbol.letter() + "</mi>";
        return symbol.subscript().isEmpty()
                ? letter
                : "<msub>" + letter + "<mtext>" + symbol.subscript() + "</mtext></msub>";
    }

    static String halves(int halves) {
        return halves % 2 == 0 ? Integer.toString(halves / 2) : halves / 2 + ".5";
    }

    private void write(Expression expression, int needed) {
        boolean brackets = Binding.of(expression, leaves) < needed;
        if (brackets) {
            out.append("<mrow><mo>(</mo>");
        }
        writeInside(expression);
        if (brackets) {
            out.append("<mo>)</mo></mrow>");
        }
    }

    private void writeInside(Expression expression) {
        Quantity quantity = Binding.quantity(expression, leaves);
        if (quantity != null) {
            out.append(quantity(quantity));
        } else if (expression instanceof Symbol symbol) {
            out.append(symbol(symbol));
        } else if (expression instanceof Sum sum) {
            row(sum.left(), Binding.SUM, "+", sum.right(), Binding.SUM);
        } else if (expression instanceof Difference difference) {
            row(difference.left(), Binding.SUM, "\u2212", difference.right(), Binding.PRODUCT);
        } else if (expression instanceof Product product) {
            row(product.left(), Binding.PRODUCT, "\u00d7", product.right(), Binding.PRODUCT);
        } else if (expression instanceof Quotient quotient) {
            pair("mfrac", quotient.left(), Binding.SUM, quotient.right(), Binding.SUM);
        } else if (expression instanceof Power power) {
            writePower(power);
        } else if (expression instanceof Exponential exponential) {
            pair("msup", exponential.of(), Binding.SINGLE, exponential.exponent(), Binding.SUM);
        } else if (expression instanceof Logarithm logarithm) {
            out.append("<mrow><mi>ln</mi><mo>(</mo>");
            write(logarithm.of(), Binding.SUM);
            out.append("<mo>)</mo></mrow>");
        }
    }

    private void row(Expression left, int leftNeeds, String sign, Expression right, int rightNeeds) {
        out.append("<mrow>");
        write(left, leftNeeds);
        out.append("<mo>").append(sign).append("</mo>");
        write(right, rightNeeds);
        out.append("</mrow>");
    }

    private void pair(String element, Expression first, int firstNeeds, Expression second, int secondNeeds) {
        out.append('<').append(element).append("><mrow>");
        write(first, firstNeeds);
        out.append("</mrow><mrow>");
        write(second, secondNeeds);
        out.append("</mrow></").append(element).append('>');
    }

    private void writePower(Power power) {
        if (power.halves() == 1) {
            out.append("<msqrt>");
            write(power.of(), Binding.SUM);
            out.append("</msqrt>");
        } else {
            out.append("<msup><mrow>");
            write(power.of(), Binding.SINGLE);
            out.append("</mrow><mn>").append(halves(power.halves())).append("</mn></msup>");
        }
    }
}
