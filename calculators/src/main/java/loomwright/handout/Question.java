package loomwright.handout;

import java.util.List;
import java.util.Map;
import loomwright.worked.Calculator;
import loomwright.worked.Output;

/**
 * A question with a number for an answer.
 *
 * @param key its key in the site
 * @param title a few words, with a {@code {field}} in the place of a number
 * @param scene the story with a {@code {field}} in the place of each number, see {@link Scene}; empty if its numbers cannot be exchanged
 * @param calculator what works it out
 * @param given the entries of the printed question, by field
 * @param keep the fields whose entries stay as they are printed
 * @param asked the result that is asked for
 */
public record Question(String key, String title, String scene, Calculator calculator, Map<String, String> given, List<String> keep, Output asked) {}
