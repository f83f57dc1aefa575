package loomwright.worked;

/**
 * One choice of a {@link ChoiceField}.
 *
 * @param key its name in content files
 * @param label its name on the page
 */
public record Option(String key, String label) {}
