package loomwright.circuit.check;

import java.util.List;
import loomwright.circuit.Circuit;

/**
 * What came of looking for the smallest size that passes.
 *
 * @param circuit the circuit with it; null if none passes
 * @param words what was changed, or why nothing was
 * @param left the smaller sizes, each with the first check it does not pass
 */
public record Suggestion(Circuit circuit, String words, List<String> left) {
    static Suggestion of(Circuit before, Circuit after, String id, String from, String to, List<String> left) {
        String title = before.part(id).title();
        String words = from.equals(to)
                ? title + ": " + to + " is the smallest that passes already; nothing was changed."
                : title + ": " + from + " was changed to " + to + ", the smallest that passes.";
        String why = left.isEmpty() ? "" : " The next smaller does not: " + left.get(left.size() - 1);
        return new Suggestion(after, words + why, List.copyOf(left));
    }

    static Suggestion none(String words) {
        return none(words, List.of());
    }

    static Suggestion none(String words, List<String> left) {
        return new Suggestion(null, words, List.copyOf(left));
    }
}
