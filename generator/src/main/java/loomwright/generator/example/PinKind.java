package loomwright.generator.example;

/** How the expected value of a pin was come by. */
public enum PinKind {
    PRINTED("printed", "printed in the publication named"),
    FROM_TABLE("from-table", "worked by hand from a published table row"),
    COMMON_PRACTICE("common-practice", "a figure of the trade, without a published source"),
    INVENTED("invented", "worked by hand from figures made up for the story");

    private final String key;
    private final String words;

    PinKind(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** Its name in a lesson. */
    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** The kind of that name, or null. */
    static PinKind named(String key) {
        for (PinKind kind : values()) {
            if (kind.key.equals(key)) {
                return kind;
            }
        }
        return null;
    }
}
