package loomwright.practice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.conductor.AmpacityRuleSet;
import loomwright.conductor.CarryingCapacity;
import loomwright.conductor.Insulation;
import loomwright.conductor.Surroundings;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Units;
import loomwright.worked.Agreement;
import loomwright.worked.Calculator;
import loomwright.worked.Comparison;
import loomwright.worked.Field;
import loomwright.worked.Finding;
import loomwright.worked.FormulaStep;
import loomwright.worked.Outcome;
import loomwright.worked.QuantityField;
import loomwright.worked.Step;
import loomwright.worked.Verdict;
import loomwright.worked.Working;

/**
 * The same steps with new round numbers.
 *
 * @param entries what is given now, by field
 * @param working what comes of it
 */
public record Variation(Map<String, String> entries, Working working) {
    private static final int TRIES = 60;

    /** The seed of the numbers that the example of that key gets when it is varied for the {@code count}th time: the same for everyone. */
    public static int seed(String key, int count) {
        int seed = count;
        for (int i = 0; i < key.length(); i++) {
            seed = seed * 31 + key.charAt(i);
        }
        return seed;
    }

    /**
     * New numbers for a working.
     *
     * @param given what the printed example starts from, by field
     * @param seed the same seed gives the same numbers, on every machine
     * @return null if no round numbers were found that lead through the same steps
     */
    public static Variation of(Calculator calculator, Map<String, String> given, int seed) {
        return of(calculator, given, List.of(), seed);
    }

    /** The same, with some fields left as they are: what the story says of them holds for no other number. */
    public static Variation of(Calculator calculator, Map<String, String> given, List<String> keep, int seed) {
        Working printed = Outcome.of(calculator, given).working();
        List<QuantityField> fields = new ArrayList<>();
        for (Field field : calculator.description().fields()) {
            if (field instanceof QuantityField quantity && !keep.contains(field.key()) && read(quantity, given) != null) {
                fields.add(quantity);
            }
        }
        fields = varied(fields);
        Seeds seeds = new Seeds(seed);
        for (int attempt = 0; attempt < TRIES && !fields.isEmpty(); attempt++) {
            Map<String, String> entries = changed(fields, given, seeds, attempt);
            Working working = Outcome.of(calculator, entries).working();
            if (working != null && isAlike(working, printed) && givesOthers(working, printed, attempt >= TRIES / 3)) {
                return new Variation(entries, working);
            }
        }
        return null;
    }

    /** Without what the story assumes, if anything else is left. */
    private static List<QuantityField> varied(List<QuantityField> fields) {
        List<QuantityField> varied = new ArrayList<>();
        for (QuantityField field : fields) {
            if (!isAssumption(field)) {
                varied.add(field);
            }
        }
        return varied.isEmpty() ? fields : varied;
    }

    /** What a story assumes holds in its exercise: how warm it is, and what a converter loses. */
    private static boolean isAssumption(QuantityField field) {
        return field.units().get(0) == Units.CELSIUS || field.key().endsWith("efficiency");
    }

    /** At first most fields get another number, later fewer, at last one. */
    private static Map<String, String> changed(List<QuantityField> fields, Map<String, String> given, Seeds seeds, int attempt) {
        Map<String, String> entries = new HashMap<>(given);
        int always = seeds.below(fields.size());
        for (int i = 0; i < fields.size(); i++) {
            boolean change = i == always || attempt < TRIES / 3 && seeds.below(4) > 0 || attempt < 2 * TRIES / 3 && seeds.below(4) == 0;
            if (change) {
                QuantityField field = fields.get(i);
                entries.put(field.key(), RoundNumbers.near(field.key(), read(field, given), isRating(field), seeds).text());
            }
        }
        return entries;
    }

    /** Fields that ask for the rating of a protective device are named so. */
    private static boolean isRating(QuantityField field) {
        boolean named = field.key().endsWith("rating") || field.key().endsWith("fuse");
        return named && field.units().get(0) == Units.AMPERE;
    }

    private static Quantity read(QuantityField field, Map<String, String> given) {
        String text = given.get(field.key());
        return text == null || text.isBlank() ? null : QuantityText.read(text, field.units().get(0)).quantity();
    }

    /** The same steps in the same order, and no check that ends in a stop unless the printed example has one. */
    private static boolean isAlike(Working working, Working printed) {
        if (working.steps().size() != printed.steps().size() || stops(working) > stops(printed) || overloads(working) && !overloads(printed)) {
            return false;
        }
        for (int i = 0; i < working.steps().size(); i++) {
            if (!isAlike(working.steps().get(i), printed.steps().get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isAlike(Step one, Step other) {
        if (one.getClass() != other.getClass() || (one.result() == null) != (other.result() == null)) {
            return false;
        }
        return !(one instanceof FormulaStep formula) || formula.formula().subject().equals(((FormulaStep) other).formula().subject());
    }

    /** Whether more flows than Table 5 of 33 CFR lets a conductor of that size carry in the least insulation; no exercise makes anyone used to that. */
    private static boolean overloads(Working working) {
        Quantity size = entered(working, "size");
        Quantity current = entered(working, "current");
        current = current == null ? entered(working, "design-current") : current;
        if (size == null || current == null) {
            return false;
        }
        Surroundings around = new Surroundings(Insulation.T60, false, null, 2, Quantity.of(12, Units.VOLT));
        return !Comparison.atMost(current, CarryingCapacity.of(size, AmpacityRuleSet.BOAT, around).value());
    }

    private static Quantity entered(Working working, String key) {
        for (Field field : working.description().fields()) {
            if (field.key().equals(key)) {
                return working.entries().quantity(key);
            }
        }
        return null;
    }

    private static int stops(Working working) {
        int stops = 0;
        for (Finding finding : working.findings()) {
            stops += finding.verdict() == Verdict.STOP ? 1 : 0;
        }
        return stops;
    }

    /** Whether the last computed figure is another one than in the printed example, or at least any of them. */
    private static boolean givesOthers(Working working, Working printed, boolean anyWillDo) {
        boolean last = true;
        for (int i = working.steps().size() - 1; i >= 0; i--) {
            if (working.steps().get(i) instanceof FormulaStep) {
                boolean other = !Agreement.agrees(working.steps().get(i).result(), printed.steps().get(i).result());
                if (other && (last || anyWillDo)) {
                    return true;
                }
                last = false;
            }
        }
        return false;
    }
}
