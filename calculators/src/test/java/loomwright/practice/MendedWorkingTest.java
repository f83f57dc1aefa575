package loomwright.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loomwright.quantity.Quantity;
import loomwright.worked.Agreement;
import loomwright.worked.ChoiceStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class MendedWorkingTest {
    /** These have no slip that spoils a computed step: theirs spoil what is read from a table. */
    private static final Set<String> NOTHING_TO_MEND = Set.of("state-of-charge");

    @Test
    void everyCalculatorButOneHasASlipToMend() {
        Set<String> without = Examples.all()
                .filter(each -> MendedWorking.all(each.working()).isEmpty())
                .map(each -> each.calculator().description().key())
                .collect(Collectors.toSet());
        assertEquals(NOTHING_TO_MEND, without);
        assertNull(MendedWorking.of(Examples.of("state-of-charge").working(), 1));
    }

    @TestFactory
    Stream<DynamicTest> everythingAfterTheSlipFollowsFromIt() {
        return Examples.all().map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
            Working working = each.working();
            for (MendedWorking mended : MendedWorking.all(working)) {
                holds(working, mended);
            }
        }));
    }

    private static void holds(Working working, MendedWorking mended) {
        String name = mended.slip().key();
        FormulaStep spoilt = (FormulaStep) mended.steps().get(mended.at());
        assertFalse(Agreement.agrees(spoilt.result(), working.steps().get(mended.at()).result()), name);
        for (int at = 0; at < mended.steps().size(); at++) {
            if (mended.steps().get(at) instanceof FormulaStep step) {
                double shown = step.formula().value(step.values(), step.result().unit()).value();
                assertEquals(shown, step.result().value(), 1e-9 * Math.abs(shown), name + ": the numbers put in give the result shown");
            }
            boolean before = at < mended.at();
            assertTrue(!before || mended.steps().get(at) == working.steps().get(at), name);
            assertTrue(before || !(mended.steps().get(at) instanceof ChoiceStep), name + ": a choice would have to be made again");
        }
    }

    /** Ohm and power: 20 V × 50 W for 50 W ÷ 20 V is 1000 A; 20 V ÷ 1000 A = 0.02 Ω. */
    @Test
    void theWrongCurrentGivesAWrongResistance() {
        Working working = Examples.of("ohm-and-power").working();
        MendedWorking mended = MendedWorking.all(working).stream()
                .filter(each -> each.slip().name().equals("Multiplied instead of divided")).findFirst().orElseThrow();
        assertEquals(0, mended.at());
        assertEquals(1000, mended.steps().get(0).result().value(), 1e-9);
        assertEquals(0.02, mended.steps().get(1).result().value(), 1e-12);
    }

    @Test
    void anotherSeedPlantsAnotherSlip() {
        Working working = Examples.of("voltage-drop").working();
        Set<String> slips = Stream.iterate(1, seed -> seed + 1).limit(30).map(seed -> MendedWorking.of(working, seed).slip().key())
                .collect(Collectors.toSet());
        assertTrue(slips.size() > 2, slips::toString);
    }

    @TestFactory
    Stream<DynamicTest> theNameIsOfferedOnceAndTheRightFigureMendsIt() {
        return Examples.all().map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
            Working working = each.working();
            for (MendedWorking mended : MendedWorking.all(working)) {
                List<String> names = mended.names(working, 5);
                assertEquals(1, names.stream().filter(mended.slip().name()::equals).count());
                assertEquals(names.size(), Set.copyOf(names).size());
                Quantity[] none = new Quantity[working.steps().size()];
                Exercise exercise = new Exercise(working);
                String right = working.steps().get(mended.at()).result().text();
                assertEquals(BlankCheck.Kind.RIGHT, exercise.check(mended.at(), right, none).kind());
                assertNotEquals(
                        BlankCheck.Kind.RIGHT, exercise.check(mended.at(), mended.steps().get(mended.at()).result().text(), none).kind());
            }
        }));
    }
}
