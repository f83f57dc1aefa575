package loomwright.generator.page;

/**
 * One screen of the projector view, as the template reads it.
 *
 * @param id its place in the page, kept in the address
 * @param said what a screen reader calls it
 * @param kind what it shows: {@code text}, {@code figure}, {@code formula}, {@code table}, {@code caution}, {@code task},
 *     {@code step}, {@code example}, {@code ask} or {@code question}
 * @param running the section it belongs to, or null if it begins one
 * @param html what it shows
 */
record Screen(String id, String said, String kind, String running, String html) {}
