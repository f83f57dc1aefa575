package loomwright.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import loomwright.catalogue.Catalogue;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;
import loomwright.worked.Finding;
import loomwright.worked.NextQuestion;
import loomwright.worked.Outcome;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.Working;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever is typed, a calculator gives finite figures or names a field of its own. */
class SupplyHostileTest {
    private static final String[] CALCULATORS = {
        "usb-power-budget", "day-energy", "two-routes", "battery-size", "run-time", "peukert", "state-of-charge", "panel-yield", "panel-headroom",
    };
    private static final String[] HOSTILE = {"0", "-1", "1e9", "999999999999", "12,8", "1 furlong", "\u00bd", "5 AWG", "NaN", "0.000000001"};

    @Property(tries = 1500)
    void givesFiniteFiguresOrNamesAField(@ForAll long seed) {
        Random random = new Random(seed);
        Calculator calculator = Catalogue.find(CALCULATORS[random.nextInt(CALCULATORS.length)]);
        Map<String, String> typed = new HashMap<>();
        double filled = random.nextDouble();
        for (Field field : calculator.description().fields()) {
            if (field.usual() == null || random.nextDouble() < filled) {
                typed.put(field.key(), text(random, field));
            }
        }
        Outcome outcome = Outcome.of(calculator, typed);
        for (EntryFault fault : outcome.faults()) {
            assertNotNull(calculator.description().field(fault.fieldKey()), () -> fault + " for " + typed);
            assertFalse(fault.message().isBlank());
        }
        if (outcome.working() == null) {
            assertFalse(outcome.faults().isEmpty(), typed::toString);
        } else {
            check(outcome.working(), typed);
        }
    }

    private static void check(Working working, Map<String, String> typed) {
        working.results().forEach(result -> assertTrue(Double.isFinite(result.quantity().value()), () -> result + " for " + typed));
        working.slips().forEach(slip -> assertTrue(Double.isFinite(slip.value().value()), () -> slip + " for " + typed));
        for (Finding finding : working.findings()) {
            assertFalse(finding.words().contains("safe"), finding::words);
            assertEquals(finding.verdict() == Verdict.PASSED, finding.remedy().isEmpty(), finding::words);
        }
        for (NextQuestion question : working.nextQuestions()) {
            Calculator next = Catalogue.find(question.calculatorKey());
            for (String key : next == null ? Map.<String, String>of().keySet() : question.carried().keySet()) {
                assertNotNull(next.description().field(key), question::toString);
            }
        }
    }

    private static String text(Random random, Field field) {
        if (random.nextInt(40) == 0) {
            return HOSTILE[random.nextInt(HOSTILE.length)];
        }
        if (field instanceof ChoiceField choice) {
            return choice.options().get(random.nextInt(choice.options().size())).key();
        }
        var limits = ((QuantityField) field).limits().get(0);
        double least = limits.least().value();
        double greatest = limits.greatest().value();
        double share = random.nextInt(5) == 0 ? random.nextInt(2) : random.nextDouble();
        double value = least > 0 ? least * Math.pow(greatest / least, share) : least + (greatest - least) * share;
        return String.format(Locale.ROOT, "%.6f", value);
    }
}
