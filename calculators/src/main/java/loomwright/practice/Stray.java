package loomwright.practice;

import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.Agreement;
import loomwright.worked.Step;
import loomwright.worked.Working;

/** A number that is right somewhere else: with another unit, or at another step of the same working. */
final class Stray {
    private Stray() {}

    /** Where the number belongs, in sentences that do not give the right one away; empty if nowhere. */
    static String words(Working working, Quantity right, Quantity typed) {
        for (Unit other : Units.all()) {
            boolean another = other != typed.unit() && other.dimension().equals(right.dimension());
            if (another && Agreement.agrees(Quantity.of(typed.value(), other), right)) {
                return "The digits are right, the unit is not: what is meant by " + typed.text() + "?";
            }
        }
        for (Step step : working.steps()) {
            Quantity result = step.result();
            boolean apart = result != null && !(result.dimension().equals(right.dimension()) && Agreement.agrees(result, right));
            boolean same = apart && result.dimension().equals(typed.dimension()) && Agreement.agrees(typed, result);
            boolean bare = apart && !result.dimension().equals(typed.dimension())
                    && Agreement.agrees(Quantity.number(typed.value()), Quantity.number(result.value()));
            if (same || bare) {
                return "That is the figure of another step, \u201c" + step.words() + "\u201d, "
                        + (result.unit().symbol().isEmpty() ? "a plain number" : "in " + result.unit().symbol()) + ": look again at what is asked here.";
            }
        }
        return "";
    }
}
