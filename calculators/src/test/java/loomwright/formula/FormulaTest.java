package loomwright.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import org.junit.jupiter.api.Test;

class FormulaTest {
    private static final Symbol U = Symbol.of("U", "voltage", Dimension.VOLTAGE);
    private static final Symbol I = Symbol.of("I", "current", Dimension.CURRENT);
    private static final Symbol R = Symbol.of("R", "s", "resistance", Dimension.RESISTANCE);
    private static final Symbol P = Symbol.of("P", "power", Dimension.POWER);
    private static final Symbol N = Symbol.of("n", "number", Dimension.NUMBER);

    private static final Values VALUES = Values.of(U, Quantity.of(12, Units.VOLT))
            .with(I, Quantity.of(500, Units.MILLIAMPERE))
            .with(R, Quantity.of(2, Units.OHM))
            .with(N, Quantity.number(4));

    @Test
    void givesValueAndBothFormsFromOneTree() {
        Formula formula = new Formula(U, I.times(R));
        Quantity result = formula.value(VALUES, Units.VOLT);
        assertEquals(1, result.value(), 1e-15);
        assertEquals("U = I × R_s", formula.symbolicText());
        assertEquals("U = 500\u00a0mA × 2\u00a0Ω = 1\u00a0V", formula.workedText(VALUES, result));
    }

    @Test
    void writesMathMl() {
        Formula formula = new Formula(I, U.over(R));
        assertEquals(
                "<math display=\"block\" alttext=\"I = U ÷ R_s\"><mrow><mi>I</mi><mo>=</mo><mfrac><mrow><mi>U</mi></mrow><mrow>"
                        + "<msub><mi>R</mi><mtext>s</mtext></msub></mrow></mfrac></mrow></math>",
                formula.symbolicMathMl());
    }

    @Test
    void putsBracketsWhereTheyAreNeededAndNowhereElse() {
        assertEquals("R_s × (I + I)", PlainText.symbolic(R.times(I.plus(I))));
        assertEquals("U − (U − U)", PlainText.symbolic(U.minus(U.minus(U))));
        assertEquals("U − U − U", PlainText.symbolic(U.minus(U).minus(U)));
        assertEquals("U ÷ (R_s × n)", PlainText.symbolic(U.over(R.times(N))));
        assertEquals("U × n ÷ R_s", PlainText.symbolic(U.times(N).over(R)));
        assertEquals("(500\u00a0mA)²", PlainText.write(I.squared(), VALUES::of));
        assertEquals("√(U × I)", PlainText.symbolic(U.times(I).squareRoot()));
        assertEquals("n^1.5", PlainText.symbolic(N.toTheThreeHalves()));
        assertEquals("n^n", PlainText.symbolic(N.toThe(N)));
        assertEquals("n^(n + 1)", PlainText.symbolic(N.toThe(N.plus(Expression.number(1)))));
        assertEquals("ln(n)", PlainText.symbolic(Expression.naturalLogarithm(N)));
    }

    @Test
    void computesEveryKindOfNode() {
        assertEquals(8, N.toTheThreeHalves().base(VALUES), 1e-12);
        assertEquals(2, N.squareRoot().base(VALUES), 1e-15);
        assertEquals(16, N.squared().base(VALUES), 1e-15);
        assertEquals(256, N.toThe(N).base(VALUES), 1e-9);
        assertEquals(Math.log(4), Expression.naturalLogarithm(N).base(VALUES), 1e-15);
        assertEquals(0, U.minus(U).base(VALUES), 0);
        assertEquals(24, U.plus(U).base(VALUES), 0);
        assertEquals(6, U.over(R).base(VALUES), 0);
    }

    @Test
    void refusesAFormulaWhoseSidesDiffer() {
        String message = assertThrows(IllegalArgumentException.class, () -> new Formula(P, U.times(R))).getMessage();
        assertEquals("the power is not of the same kind as U × R_s", message);
    }

    @Test
    void refusesToAddUnlikeThings() {
        String message = assertThrows(IllegalArgumentException.class, () -> new Formula(U, U.plus(I))).getMessage();
        assertEquals("U and I are not of the same kind", message);
        assertThrows(IllegalArgumentException.class, () -> Expression.naturalLogarithm(U).dimension());
        assertThrows(IllegalArgumentException.class, () -> N.toThe(U).dimension());
        assertThrows(IllegalArgumentException.class, () -> U.squareRoot().squareRoot().dimension());
    }

    @Test
    void listsItsLettersOnceInOrder() {
        assertEquals(List.of(P, I, R), new Formula(P, I.squared().times(R)).symbols());
    }

    @Test
    void valuesRefuseAQuantityOfTheWrongKind() {
        String message =
                assertThrows(IllegalArgumentException.class, () -> Values.of(U, Quantity.of(1, Units.OHM))).getMessage();
        assertEquals("1\u00a0Ω cannot be the voltage", message);
        assertThrows(IllegalArgumentException.class, () -> Values.none().of(U));
    }

    @Test
    void aLaterValueReplacesAnEarlierOne() {
        assertEquals(24, VALUES.with(U, Quantity.of(24, Units.VOLT)).of(U).value());
        assertEquals(12, VALUES.of(U).value());
    }
}
