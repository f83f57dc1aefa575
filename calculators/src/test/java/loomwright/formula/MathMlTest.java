package loomwright.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

/** Each kind of expression in the elements that MathML has for it: mfrac, msqrt, msup, msub, and mrow with an operator. */
class MathMlTest {
    private static final Symbol U = Symbol.of("U", "voltage", Dimension.VOLTAGE);
    private static final Symbol I = Symbol.of("I", "current", Dimension.CURRENT);
    private static final Symbol R = Symbol.of("R", "s", "resistance", Dimension.RESISTANCE);
    private static final Symbol N = Symbol.of("n", "number", Dimension.NUMBER);
    private static final Values VALUES = Values.of(U, Quantity.of(12, Units.VOLT)).with(I, Quantity.of(500, Units.MILLIAMPERE)).with(N, Quantity.number(4));

    private static String letters(Expression expression) {
        return MathMl.write(expression, Leaves.LETTERS);
    }

    @Test
    void sumsDifferencesAndProductsAreRowsWithTheirSign() {
        assertEquals("<mrow><mi>I</mi><mo>+</mo><mi>I</mi></mrow>", letters(I.plus(I)));
        assertEquals("<mrow><mi>U</mi><mo>\u2212</mo><mi>U</mi></mrow>", letters(U.minus(U)));
        assertEquals("<mrow><mi>I</mi><mo>\u00d7</mo><msub><mi>R</mi><mtext>s</mtext></msub></mrow>", letters(I.times(R)));
    }

    @Test
    void bracketsStandWhereTheyChangeTheMeaning() {
        String brackets = "<mrow><mo>(</mo><mrow><mi>U</mi><mo>\u2212</mo><mi>U</mi></mrow><mo>)</mo></mrow>";
        assertEquals("<mrow><mi>U</mi><mo>\u2212</mo>" + brackets + "</mrow>", letters(U.minus(U.minus(U))));
        assertEquals("<mrow><mrow><mi>U</mi><mo>\u2212</mo><mi>U</mi></mrow><mo>\u2212</mo><mi>U</mi></mrow>", letters(U.minus(U).minus(U)));
        assertEquals("<mrow><mi>n</mi><mo>\u00d7</mo>" + brackets + "</mrow>", letters(N.times(U.minus(U))));
        assertEquals("<mfrac><mrow><mrow><mi>U</mi><mo>\u2212</mo><mi>U</mi></mrow></mrow><mrow><mi>n</mi></mrow></mfrac>", letters(U.minus(U).over(N)));
    }

    @Test
    void powersRootsAndLogarithmsHaveElementsOfTheirOwn() {
        assertEquals("<msup><mrow><mi>I</mi></mrow><mn>2</mn></msup>", letters(I.squared()));
        assertEquals("<msup><mrow><mi>n</mi></mrow><mn>1.5</mn></msup>", letters(N.toTheThreeHalves()));
        assertEquals("<msqrt><mrow><mi>U</mi><mo>\u00d7</mo><mi>I</mi></mrow></msqrt>", letters(U.times(I).squareRoot()));
        assertEquals("<msup><mrow><mi>n</mi></mrow><mrow><mrow><mi>n</mi><mo>+</mo><mi>n</mi></mrow></mrow></msup>", letters(N.toThe(N.plus(N))));
        assertEquals("<mrow><mi>ln</mi><mo>(</mo><mi>n</mi><mo>)</mo></mrow>", letters(Expression.naturalLogarithm(N)));
    }

    /** A quantity has its unit upright behind a thin space; a number has none. A quantity that is raised needs brackets: (500 mA)² is not 500 mA². */
    @Test
    void numbersStandInThePlaceOfTheirLetters() {
        String half = "<mrow><mn>500</mn><mspace width=\"0.2em\"/><mtext>mA</mtext></mrow>";
        assertEquals("<mrow>" + half + "<mo>\u00d7</mo><mn>4</mn></mrow>", MathMl.write(I.times(N), VALUES::of));
        assertEquals("<msup><mrow><mrow><mo>(</mo>" + half + "<mo>)</mo></mrow></mrow><mn>2</mn></msup>", MathMl.write(I.squared(), VALUES::of));
    }
}
