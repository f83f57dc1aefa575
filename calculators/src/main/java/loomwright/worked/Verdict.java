package loomwright.worked;

/** What a check found. There is no verdict "safe": a check passes on its own assumption and source. */
public enum Verdict {
    PASSED("Check passed"),
    CAUTION("Caution"),
    STOP("Stop");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
