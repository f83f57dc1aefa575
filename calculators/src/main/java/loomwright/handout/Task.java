package loomwright.handout;

import java.util.Map;
import loomwright.quantity.Quantity;
import loomwright.worked.Working;

/**
 * A question with one person's numbers.
 *
 * @param question the question
 * @param entries the numbers, by field
 * @param working the working with these numbers
 */
public record Task(Question question, Map<String, String> entries, Working working) {
    /** The answer, not rounded. */
    public Quantity answer() {
        return working.result(question.asked().key()).quantity();
    }

    /** The title with these numbers. */
    public String title() {
        return Scene.filled(question.title(), entries);
    }

    /** What the sheet tells: the story with these numbers, or the question of the calculator. */
    public String words() {
        return question.scene().isEmpty() ? question.calculator().description().question() : Scene.filled(question.scene(), entries);
    }
}
