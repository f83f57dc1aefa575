package loomwright.worked;

/** What a check found, worst first. There is no verdict "safe": a check passes on its own assumption and source. */
public enum Verdict {
    /** A limit is passed. */
    STOP("stop", "Stop"),
    /** The reader must decide, or is close to a limit. */
    CAUTION("caution", "Caution"),
    /** A figure is missing, or rests on memory or invention, so the check could not be made. */
    NOT_KNOWN("not-known", "Not known"),
    /** This one comparison holds, on its assumption and by its source. */
    PASSED("passed", "Check passed");

    private final String key;
    private final String words;

    Verdict(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** Its name in pages and files, such as {@code not-known}. */
    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    public boolean isWorseThan(Verdict other) {
        return ordinal() < other.ordinal();
    }
}
