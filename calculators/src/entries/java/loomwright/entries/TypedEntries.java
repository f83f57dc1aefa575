package loomwright.entries;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.Limits;
import loomwright.worked.Outcome;
import loomwright.worked.QuantityField;

/**
 * Entries as people type them, and as they should not: the same ones for the same seed. For the tests of this module and those in the
 * browser.
 *
 * <p>Most of them change a few fields of entries that work, so that many lead to a working; the others fill every field anew.
 */
public final class TypedEntries {
    private static final List<String> SIZES = List.of(
            "0.5 mm²", "0.75 mm2", "1 mm²", "1.5", "2,5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²", "35 mm²", "50 mm²", "18 AWG", "16 AWG",
            "14 awg", "12 AWG", "10 AWG", "8 AWG", "4 AWG", "2/0 AWG", "4/0 AWG");
    private static final List<String> RUBBISH = List.of(
            "", " ", "-1", "0", "abc", "1 000", "1,5", "1,234", "1.2.3", "1e5", "∞", "NaN", "5 parsecs", "<b>7</b>", "999999999999", "٣",
            "1234567890123456789", "−3 A", "2/0", "5/0 AWG", "&amp;", "12 V 3", "1 furlong", "½", "0.000000001", "1".repeat(400), "\u0000");

    /** How long to look for entries that work, where no example is at hand. */
    private static final int TRIES = 20_000;
    private static final int ENOUGH = 20;

    private final Calculator calculator;
    private final Description description;
    private final Random random;
    private final List<Map<String, String>> working = new ArrayList<>();

    /** How often a field keeps its usual entry: calculators with many optional fields work only if most stay empty. */
    private double usualShare;

    /** @param examples entries that work, if any are known; more are looked for */
    public TypedEntries(Calculator calculator, List<Map<String, String>> examples, long seed) {
        this.calculator = calculator;
        this.description = calculator.description();
        this.random = new Random(seed * 31 + description.key().hashCode());
        working.addAll(examples);
        for (int i = 0; i < TRIES && working.size() < ENOUGH; i++) {
            keepIfItWorks(next());
        }
    }

    public Map<String, String> next() {
        usualShare = random.nextInt(3) == 0 ? 0.5 : 0.9;
        boolean change = !working.isEmpty() && random.nextInt(3) > 0;
        Map<String, String> entries = new LinkedHashMap<>(change ? working.get(random.nextInt(working.size())) : Map.of());
        int fields = description.fields().size();
        for (Field field : description.fields()) {
            if (!change || random.nextInt(fields) < 2) {
                entries.put(field.key(), random.nextInt(40) == 0 ? any(RUBBISH) : text(field));
            }
        }
        return entries;
    }

    private void keepIfItWorks(Map<String, String> entries) {
        if (Outcome.of(calculator, entries).working() != null) {
            working.add(entries);
        }
    }

    private String text(Field field) {
        if (field instanceof ChoiceField choice) {
            return choice.options().get(random.nextInt(choice.options().size())).key();
        }
        QuantityField quantity = (QuantityField) field;
        if (field.usual() != null && random.nextDouble() < usualShare) {
            return field.usual();
        }
        boolean isArea = quantity.units().get(0).dimension().equals(Dimension.AREA);
        return isArea && random.nextInt(4) > 0 ? any(SIZES) : number(quantity);
    }

    /** A number within the limits nine times of ten; small ones are as likely as large ones. */
    private String number(QuantityField field) {
        Limits limits = field.limits().get(random.nextInt(field.limits().size()));
        double least = limits.least().value();
        double greatest = limits.greatest().value();
        double low = Math.max(Math.max(least, greatest / 1e6), 1e-6);
        double value = least < 0 || random.nextInt(4) == 0
                ? least + (greatest - least) * random.nextDouble()
                : low * Math.pow(greatest / low, random.nextDouble());
        value *= random.nextInt(10) == 0 ? 1.5 : 1;
        return typed(Quantity.of(value, limits.least().unit()), field);
    }

    private String typed(Quantity quantity, QuantityField field) {
        List<Unit> units = field.units().stream().filter(unit -> unit.dimension().equals(quantity.dimension())).toList();
        Unit unit = units.get(random.nextInt(units.size()));
        double value = quantity.in(unit).value();
        int digits = 1 + random.nextInt(5);
        String number = unit == Units.AWG
                ? String.valueOf(Math.max(1, Math.round(value)))
                : String.format(Locale.ROOT, "%." + digits + "f", value);
        String written = random.nextInt(5) == 0 && digits != 3 ? number.replace('.', ',') : number;
        boolean bare = unit == field.units().get(0) && random.nextInt(3) == 0;
        return bare ? written : written + (random.nextBoolean() ? " " : "") + unit.symbol();
    }

    private String any(List<String> texts) {
        return texts.get(random.nextInt(texts.size()));
    }
}
