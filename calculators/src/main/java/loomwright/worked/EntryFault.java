package loomwright.worked;

/**
 * Why an entry cannot be used.
 *
 * @param fieldKey the field
 * @param message what is wrong and what to do, in the words of the label
 */
public record EntryFault(String fieldKey, String message) {}
