package loomwright.worked;

import java.util.Map;

/**
 * What to work out next, with figures carried over.
 *
 * @param calculatorKey the calculator to go to
 * @param words the question
 * @param carried the fields to fill, by key, as text
 */
public record NextQuestion(String calculatorKey, String words, Map<String, String> carried) {}
