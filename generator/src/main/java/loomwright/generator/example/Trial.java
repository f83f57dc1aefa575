package loomwright.generator.example;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.Span;
import loomwright.quantity.Dimension;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Working;

/**
 * A calculator named by a block, run on the entries the block gives.
 *
 * @param calculator the calculator
 * @param given the entries, by field
 * @param keep the inputs that keep their text when the numbers change
 * @param working what came of it
 */
public record Trial(Calculator calculator, Map<String, String> given, List<String> keep, Working working) {
    private static final String GIVEN = "given";
    private static final String KEEP = "keep";

    /**
     * Reads {@code calculator} and {@code given} of a block and runs the calculator.
     *
     * @return null if it did not run; the problems are reported
     */
    public static Trial of(YamlMap block, Map<String, Calculator> calculators, Problems problems) {
        Scalar name = block.required("calculator");
        Map<String, Scalar> entries = block.textsByKey(GIVEN);
        List<Scalar> keep = block.texts(KEEP);
        Calculator calculator = name == null ? null : calculators.get(name.text());
        if (name != null && calculator == null) {
            problems.add(name.problem(
                    "no calculator is called \"" + name.text() + "\"", Nearest.remedy(name.text(), calculators.keySet())));
        }
        return calculator == null ? null : run(block, calculator, entries, keep, problems);
    }

    private static Trial run(
            YamlMap block, Calculator calculator, Map<String, Scalar> entries, List<Scalar> keep, Problems problems) {
        Description description = calculator.description();
        Map<String, String> given = new LinkedHashMap<>();
        boolean known = true;
        for (Map.Entry<String, Scalar> entry : entries.entrySet()) {
            if (description.field(entry.getKey()) == null) {
                List<String> fields = description.fields().stream().map(Field::key).toList();
                problems.add(block.map(GIVEN).keyAt(entry.getKey()).problem(
                        "the calculator \"" + description.key() + "\" has no input \"" + entry.getKey() + "\"",
                        Nearest.remedy(entry.getKey(), fields)));
                known = false;
            }
            known &= hasUnit(description.field(entry.getKey()), entry.getValue(), problems);
            given.put(entry.getKey(), entry.getValue().text());
        }
        for (Scalar name : keep) {
            if (!given.containsKey(name.text())) {
                problems.add(name.problem("\"" + KEEP + "\" names \"" + name.text() + "\", which is not in \"given\"", Nearest.remedy(name.text(), given.keySet())));
                known = false;
            }
        }
        Outcome outcome = Outcome.of(calculator, given);
        for (EntryFault fault : outcome.faults()) {
            report(block, entries, fault, problems);
        }
        return known && outcome.working() != null ? new Trial(calculator, given, keep.stream().map(Scalar::text).toList(), outcome.working()) : null;
    }

    /** A form has the unit beside the number; a text must say it, or a slip of a thousand passes. */
    private static boolean hasUnit(Field field, Scalar entry, Problems problems) {
        if (!(field instanceof QuantityField quantity)) {
            return true;
        }
        Unit usual = quantity.units().get(0);
        boolean bare = QuantityText.read(entry.text(), usual).quantity() != null && QuantityText.read(entry.text(), null).quantity() == null;
        if (!bare || usual.dimension().equals(Dimension.NUMBER)) {
            return true;
        }
        problems.add(entry.problem(
                "\"" + entry.text() + "\" has no unit", "Write it with one, such as " + entry.text().strip() + " " + usual.symbol() + "."));
        return false;
    }

    private static void report(YamlMap block, Map<String, Scalar> entries, EntryFault fault, Problems problems) {
        Scalar entry = entries.get(fault.fieldKey());
        Span place = entry == null ? block.keyAt(GIVEN) : entry.at();
        String message = fault.message();
        int stop = message.indexOf(". ");
        String words = stop < 0 ? message : message.substring(0, stop);
        String remedy = stop < 0 ? "This is the input \"" + fault.fieldKey() + "\" of \"given\"." : message.substring(stop + 2) + ".";
        problems.add(place.problem(words, remedy));
    }

    /**
     * The answer a block names.
     *
     * @return null if the calculator has no such answer; the problem is reported
     */
    public Output output(Scalar name, Problems problems) {
        Output output = calculator.description().output(name.text());
        if (output == null || working.result(name.text()) == null) {
            List<String> results = working.results().stream().map(each -> each.output().key()).toList();
            problems.add(name.problem(
                    "the calculator \"" + calculator.description().key() + "\" gives no result \"" + name.text() + "\"",
                    Nearest.remedy(name.text(), results)));
            return null;
        }
        return output;
    }
}
