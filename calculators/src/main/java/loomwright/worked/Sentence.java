package loomwright.worked;

/** Words that are put together when somebody reads them, and then kept: of the hundreds of findings on a large circuit few are read. */
public final class Sentence {
    static final Sentence NONE = of("");

    /** How the words are put together. */
    public interface Making {
        String words();
    }

    private final Making made;
    private String text;

    private Sentence(String text, Making made) {
        this.text = text;
        this.made = made;
    }

    public static Sentence of(String text) {
        return new Sentence(text, null);
    }

    /** What is given must not change any more, nor what it takes its words from. */
    public static Sentence later(Making made) {
        return new Sentence(null, made);
    }

    public String text() {
        String now = text;
        if (now == null) {
            now = made.words();
            text = now;
        }
        return now;
    }

    @Override
    public String toString() {
        return text();
    }
}
