package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Conductor;
import loomwright.circuit.Isolator;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.Protection;
import loomwright.circuit.Switching;
import loomwright.circuit.check.Check;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.file.CircuitLink;
import loomwright.plan.PrintedRows.Size;
import loomwright.worked.Field;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** What holds of the plan for any answers: thousands of them, sensible, bold and left open. */
class PlanLawsTest {
    private static final int ANSWERS = Integer.getInteger("plan.answers", 1500);
    private static final long SEED = Long.getLong("plan.seed", 0);

    /** Cautions that are no matter of size, and told: how far the battery and its panel reach, and a figure just within what was entered. */
    private static final List<Check> TOLD = List.of(Check.DAY, Check.STANDING_DRAW, Check.CONTINUOUS_CURRENT);

    /** Rows that only an existing feed or a sheathed cable has. */
    private static final List<Size> MORE = List.of(
            new Size("25 mm²", 25, 0, 20, 105, 160), new Size("18 AWG", 0.823, 0, 20, 10, 20));

    @Test
    void everySetOfAnswersEndsInACircuitWithoutAStopOrInWordsThatNameTheAnswerInTheWay() {
        int circuits = 0;
        for (int i = 0; i < ANSWERS; i++) {
            Asked asked = RandomAnswers.of(SEED + i);
            Plan plan = asked.plan();
            String which = "seed " + (SEED + i) + ": " + asked;
            if (plan.circuit() == null) {
                checkObstacle(plan, asked, which);
            } else {
                circuits++;
                checkVerdicts(plan, which);
                checkGuards(plan, which);
                assertEquals(plan.circuit(), CircuitLink.read(CircuitLink.write(plan.circuit())).circuit(), which);
            }
        }
        assertTrue(circuits > ANSWERS / 2, circuits + " circuits of " + ANSWERS);
    }

    private static void checkObstacle(Plan plan, Asked asked, String which) {
        Obstacle obstacle = plan.obstacle();
        assertNotNull(obstacle, which);
        List<Field> fields = obstacle.item() == Answers.JOB ? PlanFields.JOB : PlanFields.ITEM;
        boolean named = fields.stream().anyMatch(field -> field.key().equals(obstacle.fieldKey()));
        // Of all things together it is what they draw, or how many they are.
        assertTrue(named || List.of("draws", "how-many").contains(obstacle.fieldKey()), which + "\n" + obstacle);
        assertTrue(obstacle.item() < asked.answers().items().size(), which);
        assertTrue(obstacle.words().endsWith(".") && obstacle.help().endsWith("."), obstacle.toString());
        assertFalse((obstacle.words() + obstacle.help()).contains("null"), obstacle.toString());
    }

    private static void checkVerdicts(Plan plan, String which) {
        assertEquals(List.of(), plan.examination().faults(), which);
        for (CircuitFinding found : plan.examination().findings()) {
            Verdict verdict = found.finding().verdict();
            assertTrue(verdict != Verdict.STOP, which + "\n" + found.finding().words());
            boolean close = found.check() == Check.VOLTAGE_DROP && found.finding().figure().base() <= found.finding().limit().base() * 1.000001;
            assertTrue(verdict != Verdict.CAUTION || close || TOLD.contains(found.check()), which + "\n" + found.finding().words());
        }
    }

    /** By the printed rows, without the examination: the nearest device before a part is rated no higher than what the part may carry. */
    private static void checkGuards(Plan plan, String which) {
        for (Node node : plan.circuit().nodes()) {
            Node device = node.deviceBefore();
            if (device == null) {
                assertTrue(node.order() <= 1 || node.figures() instanceof Protection, which);
                continue;
            }
            double rating = ((Protection) device.figures()).rating().base();
            assertTrue(rating <= mayCarry(node) + 1e-9, which + "\n" + device + " guards " + node);
        }
    }

    private static double mayCarry(Node node) {
        if (node.figures() instanceof Conductor conductor) {
            return ampacity(conductor);
        } else if (node.figures() instanceof Panel panel) {
            return panel.limit().base();
        } else if (node.figures() instanceof Isolator isolator) {
            return isolator.continuousCurrent().base();
        } else if (node.figures() instanceof Switching switching) {
            return switching.continuousCurrent().base();
        } else if (node.figures() instanceof Load load && load.outletRating() != null) {
            return load.outletRating().base();
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double ampacity(Conductor conductor) {
        String text = conductor.size().text().replace('\u00a0', ' ');
        boolean better = conductor.around().insulation().rating().value() > 100;
        double warmth = conductor.around().ambient().value();
        String place = conductor.around().engineSpace() ? "engine" : warmth > 50 ? "roof" : "inside";
        int together = conductor.around().together();
        String beside = together > 6 ? "many" : together > 2 ? "few" : "alone";
        for (List<Size> sizes : List.of(PrintedRows.METRIC, PrintedRows.GAUGE, MORE)) {
            for (Size size : sizes) {
                if (size.text().equals(text)) {
                    return PrintedRows.ampacity(size, better, place, beside);
                }
            }
        }
        throw new AssertionError("no row typed for " + text);
    }
}
