package loomwright.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.picture.Point;
import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Result;
import loomwright.worked.Working;

/**
 * A calculator with what the reader typed, to be run again with one entry changed.
 *
 * @param calculator the calculator
 * @param typed what the reader typed
 * @param working what it gave
 */
public record Rerun(Calculator calculator, Map<String, String> typed, Working working) {
    private static final int DIGITS = 9;

    /** What the reader entered in a field, or what the field holds by itself; null if it is empty. */
    Quantity entry(String field) {
        return working.entries().quantity(field);
    }

    String choice(String field) {
        return working.entries().choice(field);
    }

    /** A result of the reader's own working, or null. */
    Quantity result(String key) {
        Result result = working.result(key);
        return result == null ? null : result.quantity();
    }

    /** The same with another text in one field. */
    Rerun with(String field, String text) {
        Map<String, String> changed = new HashMap<>(typed);
        changed.put(field, text);
        return new Rerun(calculator, changed, working);
    }

    /** A result with another number in one field; not a number if the calculator cannot answer that. */
    double at(String field, double value, Unit unit, String result, Unit resultUnit) {
        return with(field, NumberText.significant(value, DIGITS) + " " + unit.symbol()).number(result, resultUnit);
    }

    /** A result of what is typed here; not a number if the calculator cannot answer. */
    double number(String result, Unit unit) {
        Outcome outcome = Outcome.of(calculator, typed);
        Result found = outcome.working() == null ? null : outcome.working().result(result);
        return found == null ? Double.NaN : found.quantity().in(unit).value();
    }

    /** A line of a graph through those values of a field that the calculator can answer. */
    List<Point> points(String field, List<Double> values, Unit unit, String result, Unit resultUnit) {
        List<Point> points = new ArrayList<>();
        for (double value : values) {
            double y = at(field, value, unit, result, resultUnit);
            if (!Double.isNaN(y)) {
                points.add(new Point(value, y));
            }
        }
        return points;
    }
}
