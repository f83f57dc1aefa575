package loomwright.source;

/**
 * A document that figures come from.
 *
 * @param key its short name in content files and in links
 * @param issuer who issued it
 * @param title its title
 * @param edition edition or date, or an empty text
 * @param standing the standing of figures taken from it, unless a table or row says otherwise
 * @param seen how close to the original we came, such as {@code regulation text, reproduced}
 * @param note a remark, or an empty text
 */
public record Document(String key, String issuer, String title, String edition, Standing standing, String seen, String note) {

    /** A habit of the trade. */
    public static final Document COMMON_PRACTICE =
            new Document("common-practice", "", "Common practice of the trade", "", Standing.COMMON_PRACTICE, "", "");

    /** A value no one could look up. */
    public static final Document FROM_MEMORY = new Document("from-memory", "", "From memory", "", Standing.FROM_MEMORY, "", "");

    /** A value assumed for a story, or guessed on the careful side. */
    public static final Document INVENTED = new Document("invented", "", "Invented", "", Standing.INVENTED, "", "");

    /** Arithmetic on figures whose sources stand beside them. */
    public static final Document COMPUTED = new Document("computed", "", "Computed here", "", Standing.COMPUTED, "", "");
}
