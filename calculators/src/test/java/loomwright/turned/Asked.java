package loomwright.turned;

import java.util.HashMap;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.quantity.QuantityText;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** A question turned round in a test, as a reader would put it. */
record Asked(Calculator calculator, Map<String, String> typed) {
    /** Each entry reads {@code field=text}. */
    static Asked of(String calculatorKey, String... entries) {
        Map<String, String> typed = new HashMap<>();
        for (String entry : entries) {
            typed.put(entry.substring(0, entry.indexOf('=')), entry.substring(entry.indexOf('=') + 1));
        }
        return new Asked(Catalogue.find(calculatorKey), typed);
    }

    Turned atMost(String unknown, String output, String limit) {
        return find(unknown, output, limit, true);
    }

    Turned atLeast(String unknown, String output, String limit) {
        return find(unknown, output, limit, false);
    }

    Turned withoutAStop(String unknown) {
        return TurnedRound.of(calculator, typed, field(unknown), Wish.noStop());
    }

    private Turned find(String unknown, String output, String limit, boolean atMost) {
        Output asked = calculator.description().output(output);
        return TurnedRound.of(calculator, typed, field(unknown), new Wish(asked, QuantityText.read(limit, asked.unit()).quantity(), atMost));
    }

    private QuantityField field(String key) {
        Description description = calculator.description();
        return (QuantityField) description.field(key);
    }
}
