package loomwright.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.practice.Examples.Example;
import loomwright.formula.Symbol;
import loomwright.quantity.Quantity;
import loomwright.practice.AnswerCheck;
import loomwright.worked.Agreement;
import loomwright.worked.ConversionStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Slip;
import loomwright.worked.Step;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The slip that is planted is the one that is named, and what follows from it is worked by hand. */
class PlantedSlipTest {
    /** 10 A, 4.2 m of 2.5 mm²: 7.60 mΩ/m. */
    private final Working drop = Examples.of("voltage-drop").working();

    @TestFactory
    Stream<DynamicTest> theFigureShownIsThatOfTheSlipNamed() {
        return Examples.all().map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
            for (MendedWorking mended : MendedWorking.all(each.working())) {
                Step spoilt = mended.steps().get(mended.at());
                assertTrue(new Spoilt(each.working(), new Chain(each.working()), mended.slip()).explains(mended.at(), spoilt.result()), mended.slip().key());
                assertFalse(Agreement.agrees(spoilt.result(), each.working().steps().get(mended.at()).result()), mended.slip().key());
                AnswerCheck check = AnswerCheck.of(each.working(), mended.slip().output().key(), mended.slip().value().text());
                assertTrue(check.slip() != null && Agreement.agrees(check.slip().value(), mended.slip().value()), mended.slip().key() + ": " + check.words());
                List<Symbol> letters = ((FormulaStep) spoilt).formula().symbols();
                assertEquals(0, letters.lastIndexOf(letters.get(0)), "nobody works a figure out of itself");
                assertEquals(each.working().steps().get(mended.at()).words(), spoilt.words());
                assertEquals(each.working().steps().get(mended.at()).why(), spoilt.why());
                assertEquals(each.working().steps().get(mended.at()).result().unit(), spoilt.result().unit());
            }
        }));
    }

    /** Return conductor left out where both ways are counted: 4.2 m, 31.92 mΩ, 0.3192 V, so 2.66 % of 12 V, 11.6808 V at the load and 3.192 W. */
    @Test
    void aDropWithoutItsWayBackSpoilsAllThatFollows() {
        MendedWorking mended = named("The return conductor left out");
        assertEquals(0, mended.at());
        assertEquals(4.2, rounded(mended.steps().get(0).result()));
        assertEquals(List.of(31.92, 0.3192, 2.66, 11.6808, 3.192), mended.steps().subList(2, 7).stream().map(step -> rounded(step.result())).toList());
    }

    /** The drop added: 12.6384 V at the load; the heat does not use it and stays 6.384 W. */
    @Test
    void aLaterSlipLeavesWhatDoesNotUseIt() {
        MendedWorking mended = named("The drop added instead of taken away");
        assertEquals(5, mended.at());
        assertEquals(12.6384, rounded(mended.steps().get(5).result()));
        assertEquals(6.384, rounded(mended.steps().get(6).result()));
    }

    /** 4.2 m typed for out and back, which are 8.4 m, is the return conductor left out; so is the percent typed for the volts. */
    @Test
    void aSlipIsNamedAtTheStepWhereItHappens() {
        Exercise exercise = new Exercise(drop);
        BlankCheck forgotten = exercise.check(0, "4.2", new Quantity[7]);
        assertEquals(BlankCheck.Kind.SLIP, forgotten.kind());
        assertTrue(forgotten.words().contains("The return conductor left out"), forgotten.words());
        assertEquals(BlankCheck.Kind.UNIT, exercise.check(3, "638.4", new Quantity[7]).kind());
        BlankCheck percent = exercise.check(3, "5.32", new Quantity[7]);
        assertEquals(BlankCheck.Kind.SLIP, percent.kind());
        assertTrue(percent.words().contains("The percent taken for volts"), percent.words());
        assertTrue(AnswerCheck.of(drop, "drop", "638.4").words().contains("the unit is not"));
        assertTrue(AnswerCheck.of(drop, "drop", "5.32").words().contains("another step"));
    }

    private MendedWorking named(String name) {
        return MendedWorking.all(drop).stream().filter(each -> each.slip().name().equals(name)).findFirst().orElseThrow();
    }

    private static double rounded(Quantity quantity) {
        return Math.round(quantity.value() * 1e6) / 1e6;
    }

    @Test
    void theNamesOfferedAreAtMostFourAndChangeTheirOrderWithTheSeed() {
        MendedWorking mended = MendedWorking.all(drop).get(0);
        List<String> known = drop.slips().stream().map(Slip::name).toList();
        boolean moved = false;
        boolean others = false;
        for (int seed = 1; seed < 30; seed++) {
            List<String> names = mended.names(drop, seed);
            assertEquals(4, names.size());
            assertTrue(known.containsAll(names));
            moved |= names.indexOf(mended.slip().name()) != mended.names(drop, seed + 1).indexOf(mended.slip().name());
            others |= !List.copyOf(new java.util.TreeSet<>(names)).equals(List.copyOf(new java.util.TreeSet<>(mended.names(drop, seed + 1))));
        }
        assertTrue(moved && others);
    }

    /** Steps: 0 length, 1 table, 2 resistance, 3 drop, 4 share, 5 voltage at the load, 6 heat. */
    @Test
    void aStepUsesTheFiguresItIsMadeOf() {
        Chain chain = new Chain(drop);
        boolean[][] uses = new boolean[7][7];
        uses[2][0] = true;
        uses[2][1] = true;
        uses[3][2] = true;
        uses[4][3] = true;
        uses[5][3] = true;
        uses[6][3] = true;
        for (int at = 0; at < 7; at++) {
            for (int earlier = 0; earlier < at; earlier++) {
                assertEquals(uses[at][earlier], chain.uses(at, earlier), at + " uses " + earlier);
            }
        }
        // 8.4 m become 5 m: 38 mΩ; a step that uses none of the figures gives none
        Quantity[] figures = new Quantity[7];
        figures[0] = Quantity.of(5, drop.steps().get(0).result().unit());
        assertEquals(38, rounded(chain.again(2, figures)));
        assertEquals(null, chain.again(3, figures));
        assertEquals(null, chain.again(1, figures));
        figures[0] = Quantity.of(1e30, drop.steps().get(0).result().unit());
        assertEquals(null, chain.again(2, figures), "no figure that anyone would write down");
    }

    /** A conversion follows the figure it converts: 14 AWG is 2.081 mm², and half of that is half as many circular mils. */
    @Test
    void aConversionFollowsItsFigure() {
        Working gauge = Examples.of("gauge-convert").working();
        Chain chain = new Chain(gauge);
        Quantity[] figures = new Quantity[gauge.steps().size()];
        int found = 0;
        for (int at = 0; at < gauge.steps().size(); at++) {
            for (int earlier = 0; earlier < at; earlier++) {
                if (gauge.steps().get(at) instanceof ConversionStep && chain.uses(at, earlier)) {
                    Quantity whole = gauge.steps().get(earlier).result();
                    figures[earlier] = Quantity.of(whole.value() / 2, whole.unit());
                    assertEquals(gauge.steps().get(at).result().value() / 2, chain.again(at, figures).value(), 1e-9);
                    found++;
                }
            }
        }
        assertTrue(found > 0);
    }

    @Test
    void peopleOneAfterTheOtherGetOtherNumbers() {
        Example example = Examples.of("voltage-drop");
        Map<String, String> before = example.given();
        int same = 0;
        for (int seed = 1; seed <= 50; seed++) {
            Map<String, String> now = Variation.of(example.calculator(), example.given(), seed).entries();
            same += now.equals(before) ? 1 : 0;
            before = now;
        }
        assertTrue(same < 5, same + " of 50 alike");
        assertNotEquals(Variation.seed("one", 1), Variation.seed("two", 1));
    }
}
