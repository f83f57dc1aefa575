package loomwright.turned;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import loomwright.catalogue.Catalogue;
import loomwright.entries.TypedEntries;
import loomwright.quantity.Quantity;
import loomwright.worked.Calculator;
import loomwright.worked.Field;
import loomwright.worked.FormulaStep;
import loomwright.worked.Outcome;
import loomwright.worked.QuantityField;
import loomwright.worked.Result;
import loomwright.worked.Step;
import loomwright.worked.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of every question turned round, with random entries. */
class TurnedLawTest {
    /** What rounding the answer to four digits and more may move the result by. */
    private static final double ROUNDING = 0.0011;

    @Property(tries = 250)
    void theAnswerPutBackGivesTheLimit(@ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
        List<Calculator> all = Catalogue.all();
        Calculator calculator = all.get(seed % all.size());
        Random random = new Random(seed);
        TypedEntries entries = new TypedEntries(calculator, List.of(), seed);
        Map<String, String> typed = entries.next();
        Working working = Outcome.of(calculator, typed).working();
        for (int tries = 0; working == null && tries < 20; tries++) {
            typed = entries.next();
            working = Outcome.of(calculator, typed).working();
        }
        if (working == null || working.results().isEmpty()) {
            return;
        }
        List<Field> fields = calculator.description().fields().stream().filter(field -> field instanceof QuantityField).toList();
        QuantityField unknown = (QuantityField) fields.get(random.nextInt(fields.size()));
        Result result = working.results().get(random.nextInt(working.results().size()));
        Quantity wanted = Quantity.of(result.quantity().value() * (0.7 + 0.6 * random.nextDouble()), result.quantity().unit());
        holds(calculator, typed, TurnedRound.of(calculator, typed, unknown, new Wish(result.output(), wanted, random.nextBoolean())));
    }

    private static void holds(Calculator calculator, Map<String, String> typed, Turned turned) {
        String name = calculator.description().key() + " " + turned.unknown().key() + " " + typed + ": " + turned.words();
        assertTrue(turned.words().endsWith("."), name);
        if (turned.answer() == null) {
            return;
        }
        Wish wish = turned.wish();
        Working back = Outcome.with(calculator, typed, turned.unknown(), turned.answer()).working();
        assertNotNull(back, name);
        double gives = wish.given(back);
        assertTrue(wish.isMet(gives), name);
        if (turned.kind() != Turned.Kind.SIZES) {
            assertEquals(wish.border(), gives, ROUNDING * Math.abs(wish.border()) + 1e-12, name);
        } else {
            assertEquals(List.of(true, false), turned.attempts().stream().map(Attempt::passes).toList(), name);
        }
        for (Step step : turned.steps()) {
            if (step instanceof FormulaStep formula) {
                assertEquals(formula.formula().value(formula.values(), step.result().unit()).value(), step.result().value(), name);
            }
        }
        if (turned.kind() == Turned.Kind.WORKED_OUT) {
            double last = turned.steps().get(turned.steps().size() - 1).result().base();
            assertEquals(turned.answer().base(), last, 2e-3 * Math.abs(last) + 1e-9, name);
        }
    }
}
