package loomwright.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.quantity.Quantity;
import loomwright.worked.Finding;
import loomwright.worked.Output;
import loomwright.worked.Verdict;
import loomwright.worked.Working;

/**
 * A question with one person's numbers.
 *
 * @param question the question
 * @param entries the numbers, by field
 * @param working the working with these numbers; null if the question is answered in words
 */
public record Task(Question question, Map<String, String> entries, Working working) {
    /** Digits that a key shows: fewer than a working, and enough to tell what is right within 1 %. */
    private static final int DIGITS = 3;

    /** The answer to what is asked for, not rounded. */
    public Quantity answer(Output asked) {
        return working.result(asked.key()).quantity();
    }

    /** The answer as a key shows it. */
    public String answerText(Output asked) {
        return answer(asked).text(DIGITS);
    }

    /** The title with these numbers. */
    public String title() {
        return told(question.title());
    }

    /** What the sheet tells: the story with these numbers. */
    public String words() {
        return told(question.words());
    }

    /** What the lesson says of the answer, or the answer in words; empty if it says nothing. */
    public String because() {
        return told(question.because());
    }

    /** Every check that ends in a stop: what it found, and what to do. */
    public List<Finding> stops() {
        List<Finding> stops = new ArrayList<>();
        if (working != null) {
            for (Finding finding : working.findings()) {
                if (finding.verdict() == Verdict.STOP) {
                    stops.add(finding);
                }
            }
        }
        return stops;
    }

    private String told(String text) {
        return question.varies() ? Scene.filled(text, entries) : text;
    }
}
