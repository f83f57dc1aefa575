package loomwright.source;

/** How far a figure can be trusted. */
public enum Standing {
    /** Seen in a published document or a reproduction of it. */
    PUBLISHED("published", true),
    /** Published, but seen only as someone else quotes it. */
    SECOND_HAND("published, second-hand", true),
    /** A habit of the trade without a source. */
    COMMON_PRACTICE("common practice", true),
    /** Arithmetic on other figures, or a figure that the reader typed. */
    COMPUTED("computed", true),
    /** No one could look it up. */
    FROM_MEMORY("from memory", false),
    /** The reader's own guess, or one that nobody can check. */
    GUESSED("a guess", false),
    /** Assumed for the story of a lesson, or as a careful guess. */
    INVENTED("invented", false);

    private final String words;
    private final boolean mayPass;

    Standing(String words, boolean mayPass) {
        this.words = words;
        this.mayPass = mayPass;
    }

    public String words() {
        return words;
    }

    /** Whether a check may pass on it. Every standing may stop a design. */
    public boolean mayPass() {
        return mayPass;
    }

    /**
     * The standing named in a content file, such as {@code common-practice}.
     *
     * @return null if there is none by that name
     */
    public static Standing named(String name) {
        for (Standing standing : values()) {
            if (standing.words.replace(", ", "-").replace(' ', '-').equals(name)) {
                return standing;
            }
        }
        return null;
    }
}
