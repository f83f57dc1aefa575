package loomwright.handout;

import java.util.List;
import java.util.Map;
import loomwright.worked.Calculator;
import loomwright.worked.Output;
import loomwright.worked.Pairs;

/**
 * A question of a sheet.
 *
 * @param key its key in the site
 * @param title a few words, with a {@code {field}} in the place of a number if the numbers vary
 * @param words the story and what is asked; with a {@code {field}} in the place of each number if the numbers vary, see {@link Scene}
 * @param varies whether each person gets other numbers; if not, everyone gets the question as it stands
 * @param calculator what works it out; null if it is answered in words
 * @param given the entries of the printed question, by field
 * @param keep the fields whose entries stay as they are printed
 * @param asked the results that are asked for, one box each; empty if it is answered in words
 * @param because what the lesson says of the answer, or the answer in words; may hold a {@code {field}} as well if the numbers vary
 */
public record Question(
        String key, String title, String words, boolean varies, Calculator calculator, Map<String, String> given, List<String> keep, List<Output> asked,
        String because) {

    /** A question that is answered in words. */
    public static Question inWords(String key, String title, String words, String answer) {
        return new Question(key, title, words, false, null, Pairs.of(), List.of(), List.of(), answer);
    }

    /** Whether it is answered in words. */
    public boolean isInWords() {
        return calculator == null;
    }
}
