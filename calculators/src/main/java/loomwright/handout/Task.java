package loomwright.handout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.markup.Absent;
import loomwright.markup.Assumed;
import loomwright.markup.GivenMarkup;
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
 * @param needless the fields that have nothing to do with what is asked
 */
public record Task(Question question, Map<String, String> entries, Working working, Absent needless) {
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

    /** What the sheet gives: every figure that the answer needs. */
    String given() {
        return GivenMarkup.of(question.calculator().description(), needed(), Assumed.OWN_STORY, needless);
    }

    /** The same as lines of plain text. */
    List<String> givenLines() {
        return GivenMarkup.lines(question.calculator().description(), needed(), needless);
    }

    private Map<String, String> needed() {
        Map<String, String> needed = new HashMap<>();
        for (Map.Entry<String, String> entry : entries.entrySet()) {
            if (!needless.has(entry.getKey())) {
                needed.put(entry.getKey(), entry.getValue());
            }
        }
        return needed;
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

    /** Words of a finding with one full stop behind them. */
    static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }

    private String told(String text) {
        return question.varies() ? Scene.filled(text, entries) : text;
    }
}
