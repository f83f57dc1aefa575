package loomwright.picture;

/**
 * Estimates how wide a text is, without a browser.
 *
 * <p>Follows the widths of DejaVu Sans, one of the widest faces a reader is likely to have, rounded up by groups of letters.
 */
final class TextWidth {
    private static final String NARROW = " \u00a0,.·’'/:;|ijlIJ";
    private static final String SLIM = "frt-()[]!²³";
    private static final String SMALLISH = "sczL*_°–\"“”?";
    private static final String BROAD = "ABCDGHKNOQRUVXZ&Ω";
    private static final String WIDE = "w+#<=>−×≈≤≥→←÷";
    private static final String WIDEST = "mMW%½@";
    private static final double BOLD = 1.13;

    private TextWidth() {}

    /** The width of {@code text} as a multiple of the height of its letters. */
    static double ems(String text, boolean bold) {
        double sum = 0;
        for (int i = 0; i < text.length(); i++) {
            sum += ems(text.charAt(i));
        }
        return bold ? sum * BOLD : sum;
    }

    private static double ems(char c) {
        if (NARROW.indexOf(c) >= 0) {
            return 0.34;
        }
        if (SLIM.indexOf(c) >= 0) {
            return 0.41;
        }
        if (SMALLISH.indexOf(c) >= 0) {
            return 0.56;
        }
        if (BROAD.indexOf(c) >= 0) {
            return 0.79;
        }
        if (WIDE.indexOf(c) >= 0) {
            return 0.84;
        }
        return WIDEST.indexOf(c) >= 0 ? 1 : 0.64;
    }
}
