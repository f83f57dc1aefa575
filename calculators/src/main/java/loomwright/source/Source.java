package loomwright.source;

/**
 * Where one figure comes from.
 *
 * @param document the document
 * @param locus the place in it, such as {@code Table 5, 16 AWG}, or an empty text
 * @param standing how far the figure can be trusted
 */
public record Source(Document document, String locus, Standing standing) {

    public static Source of(Document document, String locus) {
        return new Source(document, locus, document.standing());
    }

    public static Source commonPractice() {
        return of(Document.COMMON_PRACTICE, "");
    }

    /** The source on one line: title, edition, place. The standing is added unless the figure was seen in print. */
    public String text() {
        StringBuilder text = new StringBuilder(document.title());
        append(text, document.edition());
        append(text, locus);
        boolean unnamed = document.key().equals("common-practice") || document.key().equals("from-memory")
                || document.key().equals("invented");
        if (standing != Standing.PUBLISHED && !unnamed && standing != Standing.COMPUTED) {
            text.append(" (").append(standing.words()).append(')');
        }
        return text.toString();
    }

    private static void append(StringBuilder text, String part) {
        if (!part.isEmpty()) {
            text.append(", ").append(part);
        }
    }
}
