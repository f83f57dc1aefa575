package loomwright.generator.page;

/**
 * One screen of the projector view, as the template reads it.
 *
 * @param id its place in the page, kept in the address
 * @param said what a screen reader calls it: its number and title
 * @param title its title alone
 * @param kind what it shows: {@code text}, {@code figure}, {@code formula}, {@code table}, {@code caution}, {@code task},
 *     {@code step}, {@code example}, {@code question} or {@code card}
 * @param running the section it belongs to, or null if it begins one
 * @param further the key of the further example it belongs to, which is passed over unless somebody asks; or null
 * @param html what it shows
 */
record Screen(String id, String said, String title, String kind, String running, String further, String html) {

    /** The same with something at its foot. */
    Screen with(String foot) {
        return new Screen(id, said, title, kind, running, further, html + foot);
    }

    /** The same, once it is known how many there are. */
    Screen of(int count) {
        String whole = said + (further == null ? " of " + count : "") + ": " + title;
        return new Screen(id, whole, title, kind, running, further, html);
    }
}
