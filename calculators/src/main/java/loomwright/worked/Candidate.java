package loomwright.worked;

/**
 * One size of a series, looked at in a {@link ChoiceStep}.
 *
 * @param name the size
 * @param taken whether it was taken
 * @param reason why it was taken or left
 */
public record Candidate(String name, boolean taken, String reason) {}
