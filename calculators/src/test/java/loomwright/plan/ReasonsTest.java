package loomwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.catalogue.Catalogue;
import loomwright.circuit.Conductor;
import loomwright.circuit.Load;
import loomwright.circuit.Protection;
import loomwright.worked.Calculator;
import loomwright.worked.Field;
import loomwright.worked.Outcome;
import org.junit.jupiter.api.Test;

/** Every reason opens a working that comes to what was chosen. */
class ReasonsTest {
    @Test
    void everyWorkingOpensAndNamesItsPart() {
        int opened = 0;
        for (long seed = 0; seed < 300; seed++) {
            Plan plan = RandomAnswers.of(seed).plan();
            for (Chosen chosen : plan.chosen()) {
                String which = "seed " + seed + " " + chosen;
                assertNotNull(plan.circuit().node(chosen.partId()), which);
                assertTrue(chosen.why().endsWith(".") && !chosen.why().contains("null"), which);
                opened += chosen.working() == null ? 0 : 1;
                if (chosen.working() != null) {
                    check(plan, chosen, which);
                }
            }
        }
        assertTrue(opened > 1000, "opened " + opened);
    }

    private static void check(Plan plan, Chosen chosen, String which) {
        Calculator calculator = Catalogue.find(chosen.working().calculatorKey());
        List<Field> fields = calculator.description().fields();
        for (String key : chosen.working().carried().keySet()) {
            assertTrue(fields.stream().anyMatch(field -> field.key().equals(key)), which + " has no field " + key);
        }
        Outcome outcome = Outcome.of(calculator, chosen.working().carried());
        assertEquals(List.of(), outcome.faults(), which);
        switch (calculator.description().key()) {
            case "device-current" -> {
                double said = plan.circuit().node(chosen.partId()).figures() instanceof Load load
                        ? Math.max(load.current(10.5).base(), load.current(14.6).base()) : 0;
                assertEquals(said, result(outcome, "largest-current"), 1e-6 * said, which);
            }
            case "fuse-choice" -> {
                double rating = ((Protection) plan.circuit().node(chosen.partId()).figures()).rating().base();
                assertTrue(result(outcome, "least-rating") <= rating * (1 + 1e-9), which);
                assertTrue(result(outcome, "highest-rating") >= rating * (1 - 1e-9), which);
            }
            case "size-for-run" -> {
                double size = ((Conductor) plan.circuit().node(chosen.partId()).figures()).size().base();
                boolean gauge = ((Conductor) plan.circuit().node(chosen.partId()).figures()).kind().key().equals("nec-stranded");
                double least = result(outcome, gauge ? "chosen-gauge" : "chosen-size");
                assertTrue(least <= size * (1 + 1e-6), which);
            }
            default -> assertFalse(outcome.working().results().isEmpty(), which);
        }
    }

    private static double result(Outcome outcome, String key) {
        return outcome.working().result(key).quantity().base();
    }
}
