package loomwright.workshop;

/**
 * Something that has to be there.
 *
 * @param name what it is
 * @param count how many, or how much
 * @param unit what is counted, such as {@code m}; empty for pieces
 * @param rule how the count follows from people, groups, boards
 */
public record Item(String name, int count, String unit, String rule) {
    /** The count with its unit. */
    public String amount() {
        return unit.isEmpty() ? Integer.toString(count) : count + "\u00a0" + unit;
    }
}
