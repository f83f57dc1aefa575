package loomwright.source;

/** How far a figure can be trusted. */
public enum Standing {
    /** Seen in a published document or a reproduction of it. */
    PUBLISHED("published"),
    /** A habit of the trade without a source. */
    COMMON_PRACTICE("common practice"),
    /** No one could look it up. Never decides a check on its own. */
    FROM_MEMORY("from memory"),
    /** Arithmetic on other figures. */
    COMPUTED("computed");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /**
     * The standing named in a content file, such as {@code common-practice}.
     *
     * @return null if there is none by that name
     */
    public static Standing named(String name) {
        for (Standing standing : values()) {
            if (standing.words.replace(' ', '-').equals(name)) {
                return standing;
            }
        }
        return null;
    }
}
