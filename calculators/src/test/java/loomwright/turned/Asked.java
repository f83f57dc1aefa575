package loomwright.turned;

import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.quantity.QuantityText;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Typing;

/** A question turned round in a test, as a reader would put it. */
record Asked(Calculator calculator, Map<String, String> typed) {
    /** Each entry reads {@code field=text}. */
    static Asked of(String calculatorKey, String... entries) {
        return new Asked(Catalogue.find(calculatorKey), Typing.of(entries));
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
