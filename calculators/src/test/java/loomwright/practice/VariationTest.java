package loomwright.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import loomwright.practice.Examples.Example;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Outcome;
import loomwright.worked.Working;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class VariationTest {
    private static final int SEEDS = 200;

    /** Outcome.of reads every entry against the limits of its field, so an entry beyond them would be refused. */
    @TestFactory
    Stream<DynamicTest> everySeedGivesNewNumbersForTheSameSteps() {
        return Examples.all().map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
            Set<String> seen = new HashSet<>();
            for (int seed = 1; seed <= SEEDS; seed++) {
                Variation variation = Variation.of(each.calculator(), each.given(), seed);
                assertTrue(variation != null, "seed " + seed + " is declined");
                Working again = Outcome.of(each.calculator(), variation.entries()).working();
                assertEquals(each.working().steps().size(), again.steps().size());
                assertNotEquals(each.given(), variation.entries());
                hasRoundNumbers(each, variation);
                seen.add(figures(each, variation.entries()));
            }
            assertTrue(seen.size() > 2, "always the same numbers: " + seen);
        }));
    }

    /** What the story takes for granted is no number of the exercise. */
    @Test
    void whatTheStoryAssumesHoldsInItsExercise() {
        Example charger = Examples.of("device-current");
        Example drop = Examples.of("voltage-drop");
        for (int seed = 1; seed <= SEEDS; seed++) {
            assertEquals("85 %", Variation.of(charger.calculator(), charger.given(), seed).entries().get("efficiency"));
            assertEquals("20 °C", Variation.of(drop.calculator(), drop.given(), seed).entries().get("temperature"));
        }
    }

    /** 33 CFR 183.425 Table 5, 60 °C: 18 AWG 10 A, 16 AWG 15 A, 14 AWG 20 A, 12 AWG 25 A, 10 AWG 40 A; each stands in for the next thicker metric size. */
    @Test
    void noExerciseSendsMoreThroughAConductorThanItCarries() {
        Map<String, Double> most = Map.of("1 mm²", 10., "1.5 mm²", 15., "2.5 mm²", 20., "4 mm²", 25., "6 mm²", 40.);
        Example drop = Examples.of("voltage-drop");
        int held = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            Map<String, String> entries = Variation.of(drop.calculator(), drop.given(), seed).entries();
            Double ampacity = most.get(entries.get("size").replace('\u00a0', ' '));
            if (ampacity != null) {
                assertTrue(QuantityText.read(entries.get("current"), Units.AMPERE).quantity().base() <= ampacity, entries.toString());
                held++;
            }
        }
        assertTrue(held > SEEDS / 4, "only " + held);
    }

    private static void hasRoundNumbers(Example each, Variation variation) {
        for (Field field : each.calculator().description().fields()) {
            String now = variation.entries().get(field.key());
            String before = each.given().get(field.key());
            if (field instanceof ChoiceField || now == null || now.equals(before)) {
                assertEquals(before, now, field.key());
            } else {
                double value = Math.abs(QuantityText.read(now, null).quantity() == null
                        ? QuantityText.read(now, Units.ONE).quantity().value() : QuantityText.read(now, null).quantity().value());
                while (value != 0 && value < 100) {
                    value *= 10;
                }
                // Three digits: 13.6 V or 0.75 mm² are round enough.
                assertEquals(Math.rint(value), value, 1e-6, field.key() + " " + now);
            }
        }
    }

    private static String figures(Example each, Map<String, String> entries) {
        StringBuilder text = new StringBuilder();
        for (Field field : each.calculator().description().fields()) {
            text.append(entries.get(field.key())).append(';');
        }
        return text.toString();
    }

    @Test
    void theSameSeedGivesTheSameNumbers() {
        Example drop = Examples.of("voltage-drop");
        assertEquals(
                Variation.of(drop.calculator(), drop.given(), 12).entries(), Variation.of(drop.calculator(), drop.given(), 12).entries());
    }

    @Test
    void sizesAreSizesThatAreSold() {
        Example drop = Examples.of("voltage-drop");
        Set<String> sold = Set.of("1 mm²", "1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²");
        for (int seed = 1; seed <= SEEDS; seed++) {
            String size = Variation.of(drop.calculator(), drop.given(), seed).entries().get("size").replace('\u00a0', ' ');
            assertTrue(sold.contains(size), size);
        }
    }

    @Test
    void ratingsOfFuseLinksComeFromTheirSeries() {
        for (int seed = 1; seed <= SEEDS; seed++) {
            double rating = RoundNumbers.near("current", Quantity.of(10, Units.AMPERE), true, new Seeds(seed)).value();
            assertTrue(Set.of(5.0, 7.5, 15.0, 20.0).contains(rating), rating + " A");
        }
    }

    /** Nothing lost is a case of its own, not a number to vary. */
    @Test
    void oneHundredPerCentStays() {
        assertEquals(100, RoundNumbers.near("current", Quantity.of(100, Units.PERCENT), false, new Seeds(1)).value());
    }

    /** Where no field holds a number there is nothing to change. */
    @Test
    void withoutANumberItIsDeclined() {
        Example usb = Examples.of("usb-power-budget");
        assertNull(Variation.of(usb.calculator(), Map.of("port-1-level", "usb-3", "port-2-level", "usb-2"), 1));
        assertFalse(Variation.of(usb.calculator(), usb.given(), 1) == null);
    }

    /** Written down by hand from the rule: shifts of 13, 17 and 5. A change here would change every printed sheet. */
    @Test
    void theNumbersOfASeedNeverChange() {
        Seeds seeds = new Seeds(1);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 8; i++) {
            text.append(seeds.below(10));
        }
        assertEquals(expected(1), text.toString());
    }

    /** The same generator in arithmetic of 64 bits, cut to 32 after each shift. */
    private static String expected(int seed) {
        long state = ((seed * 0x9E3779B1L) ^ 0x5DEECE66L) & 0xFFFFFFFFL;
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 16; i++) {
            state ^= (state << 13) & 0xFFFFFFFFL;
            state ^= state >>> 17;
            state ^= (state << 5) & 0xFFFFFFFFL;
            if (i >= 8) {
                text.append((state >>> 1) % 10);
            }
        }
        return text.toString();
    }
}
