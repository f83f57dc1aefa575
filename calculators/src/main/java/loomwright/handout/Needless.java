package loomwright.handout;

import java.util.HashMap;
import java.util.Map;
import loomwright.markup.Absent;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Result;
import loomwright.worked.Working;

/**
 * Which figures have nothing to do with what a question asks: a sheet does not print them, so nobody need guess what they are for. Found by trying: each
 * entry in turn is made smaller and larger, each choice another one; if no answer follows, it is left out. What the story says stays.
 */
final class Needless {
    private static final double[] TIMES = {0.2, 0.7, 0.9, 1.1, 1.4, 5};

    private final Question question;
    private final Working printed;

    private Needless(Question question) {
        this.question = question;
        this.printed = Outcome.of(question.calculator(), question.given()).working();
    }

    /** The fields to leave out; none of a question in words. */
    static Absent of(Question question) {
        if (question.isInWords()) {
            return Absent.NONE;
        }
        Needless needless = new Needless(question);
        StringBuilder keys = new StringBuilder(" ");
        for (Field field : question.calculator().description().fields()) {
            boolean told = question.varies() ? question.words().contains("{" + field.key() + "}") : question.given().containsKey(field.key());
            keys.append(told || needless.printed == null || needless.counts(field) ? "" : field.key() + " ");
        }
        return new Absent(keys.toString());
    }

    /** Whether an answer follows the field; so it is taken too if the field cannot be tried. */
    private boolean counts(Field field) {
        boolean tried = false;
        if (field instanceof ChoiceField choice) {
            for (Option option : choice.options()) {
                Working other = with(field.key(), option.key());
                tried |= other != null;
                if (other != null && differs(other)) {
                    return true;
                }
            }
            return !tried;
        }
        Quantity entry = field instanceof QuantityField asked ? read(asked) : null;
        if (entry == null) {
            return false;
        }
        for (double times : TIMES) {
            Quantity other = Quantity.of(entry.value() == 0 ? times : entry.value() * times, entry.unit());
            Working working = with(field.key(), other.text());
            tried |= working != null;
            if (working != null && differs(working)) {
                return true;
            }
        }
        return !tried;
    }

    private Working with(String key, String entry) {
        Map<String, String> entries = new HashMap<>(question.given());
        entries.put(key, entry);
        Calculator calculator = question.calculator();
        return Outcome.of(calculator, entries).working();
    }

    private boolean differs(Working other) {
        for (Output asked : question.asked()) {
            Result before = printed.result(asked.key());
            Result after = other.result(asked.key());
            if (before == null || after == null ? before != after : !after.quantity().isSame(before.quantity())) {
                return true;
            }
        }
        return false;
    }

    /** What the field says, or is taken to say. */
    private Quantity read(QuantityField field) {
        String text = question.given().get(field.key());
        String said = text == null || text.isBlank() ? field.usual() : text;
        return said == null || said.isBlank() ? null : QuantityText.read(said, field.units().get(0)).quantity();
    }
}
