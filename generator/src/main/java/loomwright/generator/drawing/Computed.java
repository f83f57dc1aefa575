package loomwright.generator.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Result;

/** Runs a calculator for the figures of a drawing. */
final class Computed {
    private final String calculator;
    private final Map<String, String> entries = new LinkedHashMap<>();

    private Computed(String calculator) {
        this.calculator = calculator;
    }

    static Computed by(String calculator) {
        return new Computed(calculator);
    }

    Computed with(String field, String text) {
        entries.put(field, text);
        return this;
    }

    Computed with(String field, double value, Unit unit) {
        return with(field, NumberText.significant(value, 9) + " " + unit.symbol());
    }

    /**
     * The result of that key in {@code unit}.
     *
     * @throws IllegalArgumentException if the calculator cannot answer; says why in its words
     */
    Quantity result(String key, Unit unit) {
        Calculator found = Catalogue.find(calculator);
        if (found == null) {
            throw new IllegalStateException("there is no calculator called " + calculator);
        }
        Outcome outcome = Outcome.of(found, entries);
        if (outcome.working() == null) {
            throw new IllegalArgumentException("The calculator " + calculator + " cannot answer for the drawing: "
                    + outcome.faults().get(0).message() + ".");
        }
        Result result = outcome.working().result(key);
        if (result == null) {
            throw new IllegalStateException("the calculator " + calculator + " has no result called " + key);
        }
        return result.quantity().in(unit);
    }

    /** The number of a result in {@code unit}. */
    double number(String key, Unit unit) {
        return result(key, unit).value();
    }
}
