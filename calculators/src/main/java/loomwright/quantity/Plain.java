package loomwright.quantity;

/** A typed text with its unusual characters made plain: letters and digits of full width, and fractions that are one character. */
final class Plain {
    private static final char FIRST_WIDE = '\uff01';
    private static final char LAST_WIDE = '\uff5e';
    private static final int WIDE_TO_PLAIN = FIRST_WIDE - '!';
    private static final char WIDE_SPACE = '\u3000';
    private static final String FRACTIONS = "\u00bd\u00bc\u00be\u215b\u215c\u215d\u215e";
    private static final String[] WRITTEN_OUT = {"1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8"};

    private Plain() {}

    static String of(String text) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int fraction = FRACTIONS.indexOf(c);
            if (fraction >= 0) {
                plain.append(i == 0 ? "" : " ").append(WRITTEN_OUT[fraction]);
            } else if (c >= FIRST_WIDE && c <= LAST_WIDE) {
                plain.append((char) (c - WIDE_TO_PLAIN));
            } else {
                plain.append(c == WIDE_SPACE ? ' ' : c == '\u2044' ? '/' : c);
            }
        }
        return plain.toString();
    }
}
