package loomwright.quantity;

/**
 * The rest of a number that is written as a fraction: {@code 3/4}, {@code 1 1/2}, {@code 1-1/2}.
 *
 * @param value the number with its fraction
 * @param end where the rest of the text begins
 */
record Fraction(double value, int end) {
    private static final int MOST_DIGITS = 3;

    /** The fraction that begins with, or follows, the whole number read; null if there is none. */
    static Fraction after(NumberReading number, String text) {
        int end = number.end();
        if (!isWhole(text, end)) {
            return null;
        }
        if (end < text.length() && text.charAt(end) == '/') {
            return divided(0, number.value(), text, end);
        }
        int at = end;
        while (at < text.length() && NumberReading.isSpace(text.charAt(at))) {
            at++;
        }
        boolean parted = at > end || at < text.length() && text.charAt(at) == '-';
        if (at < text.length() && text.charAt(at) == '-') {
            at++;
        }
        int slash = afterDigits(text, at);
        if (!parted || slash == at || slash >= text.length() || text.charAt(slash) != '/') {
            return null;
        }
        return divided(number.value(), digits(text, at, slash), text, slash);
    }

    private static Fraction divided(double whole, double above, String text, int slash) {
        int end = afterDigits(text, slash + 1);
        double below = digits(text, slash + 1, end);
        if (end == slash + 1 || below == 0) {
            return null;
        }
        return new Fraction(whole < 0 ? whole - above / below : whole + above / below, end);
    }

    private static boolean isWhole(String text, int end) {
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            if (c == '.' || c == ',') {
                return false;
            }
        }
        return true;
    }

    private static int afterDigits(String text, int from) {
        int at = from;
        while (at - from < MOST_DIGITS && NumberReading.isDigitAt(text, at)) {
            at++;
        }
        return at;
    }

    private static double digits(String text, int from, int end) {
        double value = 0;
        for (int i = from; i < end; i++) {
            value = value * 10 + (text.charAt(i) - '0');
        }
        return value;
    }
}
