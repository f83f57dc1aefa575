package loomwright.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loomwright.catalogue.Catalogue;
import loomwright.practice.Examples.Example;
import loomwright.quantity.Quantity;
import loomwright.worked.FormulaStep;
import loomwright.worked.Step;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Steps of voltage drop: 0 circuit length, 1 table, 2 resistance, 3 drop, 4 share, 5 voltage at the load, 6 heat. */
class ExerciseTest {
    private final Working drop = Examples.of("voltage-drop").working();
    private final Exercise exercise = new Exercise(drop);
    private final Quantity[] nothing = new Quantity[drop.steps().size()];

    @Test
    void thereIsAnExampleOfEveryCalculator() {
        Set<String> here = Examples.all().map(each -> each.calculator().description().key()).collect(Collectors.toSet());
        assertEquals(Set.of(), Catalogue.all().stream().map(each -> each.description().key()).filter(key -> !here.contains(key))
                .collect(Collectors.toSet()));
    }

    @Test
    void stepsThatComputeAreBlanksAndTableRowsAreNot() {
        assertEquals(List.of(0, 2, 3, 4, 5, 6), exercise.blanks());
        assertEquals(List.of(5, 6), exercise.last(2));
        assertEquals(exercise.blanks(), exercise.last(99));
    }

    /** 20 ft out and back of 14 AWG: the resistance for 1000 ft is read from a table, so turning it into mΩ/m gives no blank away. */
    @Test
    void anEntryBroughtToAnotherUnitIsNoBlank() {
        Example example = Examples.all().filter(each -> each.toString().contains("20 ft") && each.toString().startsWith("conductor")).findFirst().orElseThrow();
        assertEquals(List.of(3), new Exercise(example.working()).blanks());
    }

    /** 2.081 mm² of 14 AWG is computed, so the same in circular mils would give it away. */
    @Test
    void aComputedFigureBroughtToAnotherUnitIsABlankToo() {
        assertTrue(new Exercise(Examples.of("gauge-convert").working()).blanks().contains(2));
    }

    @TestFactory
    Stream<DynamicTest> everyRightFigureIsTakenAndOthersAreNot() {
        return Examples.all().map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
            Exercise all = new Exercise(each.working());
            Quantity[] none = new Quantity[each.working().steps().size()];
            for (int at : all.blanks()) {
                Quantity right = each.working().steps().get(at).result();
                String step = each.working().steps().get(at).words();
                assertEquals(BlankCheck.Kind.RIGHT, all.check(at, right.text(), none).kind(), step);
                assertEquals(BlankCheck.Kind.RIGHT, all.check(at, right.numberText(), none).kind(), step);
                if (right.base() != 0) {
                    assertFalse(all.check(at, Quantity.of(right.value() * 1.0313, right.unit()).text(), none).isDone(), step);
                    assertFalse(all.check(at, Quantity.of(-right.value(), right.unit()).text(), none).isDone(), step);
                }
            }
        }));
    }

    /** 5 m for 8.4 m of circuit: 7.60 mΩ/m × 5 m = 38 mΩ; 10 A × 38 mΩ = 0.38 V. */
    @Test
    void aRightMethodOnAWrongEarlierFigureIsCreditedStepByStep() {
        Quantity[] own = nothing.clone();
        own[0] = exercise.check(0, "5 m", own).figure();
        BlankCheck resistance = exercise.check(2, "38", own);
        assertEquals(BlankCheck.Kind.CREDITED, resistance.kind());
        assertTrue(resistance.words().contains("your own figure of step 1"), resistance.words());
        own[2] = resistance.figure();
        BlankCheck voltage = exercise.check(3, "0.38 V", own);
        assertEquals(BlankCheck.Kind.CREDITED, voltage.kind());
        assertTrue(voltage.words().contains("step 3"), voltage.words());
        assertEquals(BlankCheck.Kind.RIGHT, exercise.check(3, "0.6384 V", own).kind(), "the true figure stays right");
        assertEquals(BlankCheck.Kind.DIFFERS, exercise.check(3, "0.41 V", own).kind());
        assertEquals(BlankCheck.Kind.DIFFERS, exercise.check(2, "38", nothing).kind(), "no credit without the wrong figure");
    }

    @Test
    void aSlipIsNamedAtItsStep() {
        // 10 A × 7.60 mΩ/m × 4.2 m: the way back left out.
        BlankCheck check = exercise.check(3, "0.3192", nothing);
        assertEquals(BlankCheck.Kind.SLIP, check.kind());
        assertFalse(check.words().contains("0.6384"), "the right figure is not given away");
    }

    @Test
    void theWrongUnitIsToldFromAWrongNumber() {
        assertEquals(BlankCheck.Kind.RIGHT, exercise.check(3, "638.4 mV", nothing).kind());
        assertEquals(BlankCheck.Kind.UNIT, exercise.check(3, "638.4", nothing).kind());
        assertEquals(BlankCheck.Kind.UNIT, exercise.check(3, "0.6384 A", nothing).kind());
    }

    @Test
    void whatCannotBeReadIsSaid() {
        assertEquals("This blank is empty: enter a number in V.", exercise.check(3, " ", nothing).words());
        assertEquals("Your figure has no number. Enter a number in V.", exercise.check(3, "much", nothing).words());
    }

    @TestFactory
    Stream<DynamicTest> theReasonOfAStepIsOfferedOnceAmongOthers() {
        return Examples.all().map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
            Exercise all = new Exercise(each.working());
            Set<String> whys = each.working().steps().stream().map(Step::why).collect(Collectors.toSet());
            for (int at : all.blanks()) {
                List<String> reasons = all.reasons(at, 3);
                assertEquals(1, reasons.stream().filter(each.working().steps().get(at).why()::equals).count());
                assertEquals(reasons.size(), Set.copyOf(reasons).size());
                assertEquals(Math.min(4, whys.size()), reasons.size());
            }
        }));
    }

    /** The links between steps carry the whole computation: worked again with its own figures, every step gives itself. */
    @TestFactory
    Stream<DynamicTest> everyStepWorkedAgainGivesItself() {
        return Examples.all().map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
            List<Step> steps = each.working().steps();
            Chain chain = new Chain(each.working());
            Quantity[] own = steps.stream().map(Step::result).toArray(Quantity[]::new);
            for (int at = 0; at < steps.size(); at++) {
                Quantity again = steps.get(at) instanceof FormulaStep ? chain.again(at, own) : null;
                if (again != null) {
                    assertEquals(own[at].value(), again.value(), 1e-9 * Math.abs(own[at].value()), steps.get(at).words());
                }
            }
        }));
    }
}
