package loomwright.plan;

/**
 * One line of a shopping list.
 *
 * @param count how many, with its unit
 * @param what what to ask for
 * @param where where it goes
 */
public record Bought(String count, String what, String where) {}
