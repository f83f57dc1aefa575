package loomwright.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SolvedTest {
    private static final Symbol Y = Symbol.of("y", "result", Dimension.NUMBER);
    private static final Symbol A = Symbol.of("a", "first", Dimension.NUMBER);
    private static final Symbol B = Symbol.of("b", "second", Dimension.NUMBER);
    private static final Symbol U = Symbol.of("U", "voltage", Dimension.VOLTAGE);
    private static final Symbol I = Symbol.of("I", "current", Dimension.CURRENT);
    private static final Symbol R = Symbol.of("R", "resistance", Dimension.RESISTANCE);
    private static final Symbol P = Symbol.of("P", "power", Dimension.POWER);

    @Test
    void ohmsLawIsTurnedRoundBothWays() {
        Formula ohm = new Formula(U, I.times(R));
        assertEquals("R = U ÷ I", Solved.of(ohm, R).symbolicText());
        assertEquals("I = U ÷ R", Solved.of(ohm, I).symbolicText());
    }

    @Test
    void aSquareIsUndoneByItsRoot() {
        assertEquals("I = √(P ÷ R)", Solved.of(new Formula(P, I.squared().times(R)), I).symbolicText());
        assertEquals("b = y²", Solved.of(new Formula(Y, B.squareRoot()), B).symbolicText());
    }

    @Test
    void theRightSideOfADifferenceAndWhatStandsBelowALineAreFreed() {
        assertEquals("b = a − y", Solved.of(new Formula(Y, A.minus(B)), B).symbolicText());
        assertEquals("a = y + b", Solved.of(new Formula(Y, A.minus(B)), A).symbolicText());
        assertEquals("b = a ÷ y", Solved.of(new Formula(Y, A.over(B)), B).symbolicText());
        assertEquals("a = y − b", Solved.of(new Formula(Y, A.plus(B)), A).symbolicText());
    }

    @Test
    void anExponentIsFreedByLogarithms() {
        assertEquals("b = ln(y) ÷ ln(a)", Solved.of(new Formula(Y, A.toThe(B)), B).symbolicText());
        assertEquals("a = y^(1 ÷ b)", Solved.of(new Formula(Y, A.toThe(B)), A).symbolicText());
    }

    @Test
    void aLetterThatStandsTwiceOrNeverIsNotFreed() {
        assertNull(Solved.of(new Formula(Y, A.times(A.plus(B))), A));
        assertNull(Solved.of(new Formula(Y, A.times(2)), B));
        assertNull(Solved.of(new Formula(Y, A.toTheThreeHalves()), A));
        assertNull(Solved.of(new Formula(Y, A.times(B)), Y));
    }

    /** Any letter put back gives the result: with every operation there is, one inside the other. */
    @Property
    void theAnswerPutBackGivesTheResult(
            @ForAll @DoubleRange(min = 0.1, max = 9) double a, @ForAll @DoubleRange(min = 0.1, max = 3) double b) {
        Expression[] bodies = {
            A.plus(Expression.number(2)).times(B), B.minus(A).over(Expression.number(7)), Expression.number(3).over(A.times(B).squared()),
            A.times(B).squareRoot(), A.plus(Expression.number(1)).toThe(B), Expression.naturalLogarithm(A.plus(B)),
            Expression.number(5).minus(B.over(A))
        };
        for (Expression body : bodies) {
            Formula formula = new Formula(Y, body);
            Values values = Values.of(A, Quantity.number(a)).with(B, Quantity.number(b));
            Values known = values.with(Y, formula.value(values, Units.ONE));
            assertEquals(a, Solved.of(formula, A).value(known, Units.ONE).value(), 1e-6 * a, body.toString());
            assertEquals(b, Solved.of(formula, B).value(known, Units.ONE).value(), 1e-6 * b, body.toString());
        }
    }
}
