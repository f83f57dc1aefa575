package loomwright.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.worked.ChoiceStep;
import loomwright.worked.ConversionStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Step;
import loomwright.worked.TableStep;
import loomwright.worked.Working;
import org.junit.jupiter.api.Test;

/** Links between steps made by hand; 20 V and 50 W are entered. */
class ChainTest {
    private static final Symbol FIRST = Symbol.of("I", "1", "first current", Dimension.CURRENT);
    private static final Symbol SECOND = Symbol.of("I", "2", "second current", Dimension.CURRENT);
    private static final Symbol THIRD = Symbol.of("I", "3", "third current", Dimension.CURRENT);
    private static final Symbol TWICE = Symbol.of("I", "d", "doubled current", Dimension.CURRENT);
    private static final Symbol VOLTS = Symbol.of("U", "voltage", Dimension.VOLTAGE);
    private static final Symbol OTHER_VOLTS = Symbol.of("U", "2", "second voltage", Dimension.VOLTAGE);
    private static final Symbol TWICE_VOLTS = Symbol.of("U", "d", "doubled voltage", Dimension.VOLTAGE);

    private static Quantity amperes(double value) {
        return Quantity.of(value, Units.AMPERE);
    }

    private static Quantity volts(double value) {
        return Quantity.of(value, Units.VOLT);
    }

    /** A step that gives a figure for a letter, from figures of nobody. */
    private static Step gives(Symbol letter, Quantity figure) {
        Formula formula = new Formula(letter, Expression.fixed(figure));
        return new FormulaStep("Take it", formula, Values.none(), figure, "", null);
    }

    /** A step that doubles a figure which it knows by a letter. */
    private static Step doubles(Symbol letter, Quantity figure) {
        Formula formula = new Formula(letter.dimension().equals(Dimension.VOLTAGE) ? TWICE_VOLTS : TWICE, letter.times(2));
        Values values = Values.of(letter, figure);
        return new FormulaStep("Double it", formula, values, formula.value(values, figure.unit()), "", null);
    }

    private static Chain chain(Step... steps) {
        Working any = Examples.of("ohm-and-power").working();
        return new Chain(new Working(any.description(), any.entries(), List.of(steps), any.results(), any.findings(), any.slips(), any.nextQuestions()));
    }

    @Test
    void aFigureHandedOnIsFoundByItself() {
        Quantity handed = amperes(3);
        Chain chain = chain(gives(FIRST, handed), gives(FIRST, amperes(4)), doubles(SECOND, handed));
        assertTrue(chain.uses(2, 0));
        assertFalse(chain.uses(2, 1));
        assertFalse(chain.uses(1, 0), "a step that uses nothing");
        assertFalse(chain(doubles(SECOND, amperes(3)), gives(FIRST, amperes(3))).uses(0, 1), "a later step");
    }

    @Test
    void aFigureHandedOnIsNotTakenForAnotherOfItsLetterAndValue() {
        Quantity handed = amperes(3);
        Chain chain = chain(gives(SECOND, handed), gives(FIRST, amperes(3)), doubles(FIRST, handed));
        assertTrue(chain.uses(2, 0));
        assertFalse(chain.uses(2, 1));
    }

    @Test
    void inAnotherUnitItIsFoundByItsLetter() {
        Quantity milli = amperes(3).in(Units.MILLIAMPERE);
        Chain chain = chain(gives(FIRST, amperes(3)), gives(SECOND, amperes(3)), doubles(FIRST, milli));
        assertTrue(chain.uses(2, 0));
        assertFalse(chain.uses(2, 1), "the same value with another letter, though it is nearer");
        Chain twice = chain(gives(FIRST, amperes(3)), gives(FIRST, amperes(3)), doubles(FIRST, milli));
        assertTrue(twice.uses(2, 1), "of two with the letter the nearer");
        assertFalse(twice.uses(2, 0));
    }

    @Test
    void withoutItsLetterItIsFoundByItsValueInTheNearestStep() {
        Chain chain = chain(gives(FIRST, amperes(3)), gives(SECOND, amperes(3)), gives(SECOND, amperes(5)), doubles(THIRD, amperes(3).in(Units.MILLIAMPERE)));
        assertTrue(chain.uses(3, 1));
        assertFalse(chain.uses(3, 0));
        assertFalse(chain.uses(3, 2));
    }

    /** 20 V was entered: a step that gives 20 V by chance is not where the entry came from, unless it gives that very letter. */
    @Test
    void anEntryIsNotTakenForAStepThatGivesTheSameByChance() {
        Step entered = doubles(OTHER_VOLTS, volts(20));
        assertFalse(chain(gives(VOLTS, volts(20)), entered).uses(1, 0));
        assertTrue(chain(gives(OTHER_VOLTS, volts(20)), entered).uses(1, 0));
        assertTrue(chain(gives(VOLTS, volts(21)), doubles(OTHER_VOLTS, volts(21))).uses(1, 0), "21 V was not entered");
    }

    @Test
    void alikeMeansTheSameKindAndSizeAndSign() {
        assertFalse(chain(gives(VOLTS, volts(3)), doubles(FIRST, amperes(3))).uses(1, 0));
        assertFalse(chain(gives(FIRST, amperes(-3)), doubles(FIRST, amperes(3))).uses(1, 0));
        assertFalse(chain(gives(FIRST, amperes(3.000001)), doubles(FIRST, amperes(3))).uses(1, 0));
        assertTrue(chain(gives(FIRST, amperes(4e4)), doubles(FIRST, amperes(4e4 * (1 + 5e-13)))).uses(1, 0), "but for the last digits of a conversion");
        assertTrue(chain(gives(FIRST, amperes(0)), doubles(FIRST, amperes(0))).uses(1, 0));
    }

    @Test
    void aFigureOfATableKeepsItsLetter() {
        var row = PublishedTables.usbPower().rows().get(0);
        Quantity volts = row.quantity("voltage");
        Unit milli = Units.MILLIVOLT;
        Step table = new TableStep("Read it", VOLTS, volts, "", row);
        Chain chain = chain(table, gives(OTHER_VOLTS, volts(volts.value())), doubles(VOLTS, volts.in(milli)));
        assertTrue(chain.uses(2, 0));
        assertFalse(chain.uses(2, 1));
    }

    /** 3 A turned into 3000 mA; with 4 A in place of 3 A it would be 4000 mA. */
    @Test
    void aConversionFollowsTheFigureItTurns() {
        Quantity three = amperes(3);
        Chain chain = chain(gives(FIRST, three), gives(SECOND, amperes(7)), new ConversionStep("Turn it", three, three.in(Units.MILLIAMPERE), ""));
        Quantity again = chain.again(2, new Quantity[] {amperes(4), null, null});
        assertEquals(4000, again.value(), 1e-9);
        assertSame(Units.MILLIAMPERE, again.unit());
        assertNull(chain.again(2, new Quantity[] {null, amperes(4), null}));
        assertNull(chain(new ConversionStep("Turn it", three, three.in(Units.MILLIAMPERE), "")).again(0, new Quantity[1]));
    }

    @Test
    void aStepWithoutAFigureIsUsedByNone() {
        Step none = new ChoiceStep("Choose", List.of(), null, "", null);
        Quantity three = amperes(3);
        Chain chain = chain(none, gives(FIRST, three), doubles(FIRST, three));
        assertFalse(chain.uses(2, 0));
        assertTrue(chain.uses(2, 1));
        assertNull(chain.again(0, new Quantity[3]), "a choice would have to be made again");
    }

    /** A million million is the largest figure that a working shows. */
    @Test
    void whatIsBeyondEveryLimitIsNoFigure() {
        Quantity three = amperes(3);
        Chain chain = chain(gives(FIRST, three), doubles(FIRST, three));
        assertNotNull(chain.again(1, new Quantity[] {amperes(5e11), null}));
        assertNull(chain.again(1, new Quantity[] {amperes(5.1e11), null}));
        assertNull(chain.again(1, new Quantity[] {amperes(-5.1e11), null}));
        assertNull(chain.again(1, new Quantity[] {amperes(Double.NaN), null}));
    }
}
