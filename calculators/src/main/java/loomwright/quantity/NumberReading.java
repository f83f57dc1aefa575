package loomwright.quantity;

/**
 * What came of reading a number at the start of a text: the number, or why there is none, and where the rest begins.
 *
 * <p>The decimal mark is a point or a comma. One mark with exactly three digits after it and one to three before it could as well part the
 * thousands ({@code 12.000}, {@code 12,000}). Such a number is refused, unless it is written as decimals are written here: with a point
 * and without a zero at its end ({@code 3.142}), or below one ({@code 0,500}). So no number is ever taken a thousand times too large or too
 * small without a word. Thousands may be parted by spaces.
 *
 * @param value the number; of use only without a fault
 * @param fault what is wrong, to follow a name, or null
 * @param end where the rest of the text begins
 */
record NumberReading(double value, String fault, int end) {
    private static final int MOST_DIGITS = 15;

    /** Reads what a person typed: sign, digits, one point or comma, digits; spaces may group digits. */
    static NumberReading of(String text) {
        NumberReading reading = printed(text);
        return reading.fault == null && couldBeThousands(text, reading.end)
                ? fault("could mean thousands or decimals: write thousands without a mark, and decimals without a zero at the end", reading.end)
                : reading;
    }

    /** Reads what a table prints, where a mark is a decimal mark and zeros at the end are as printed. */
    static NumberReading printed(String text) {
        int start = afterSpaces(text, 0);
        boolean signed = start < text.length() && isSign(text.charAt(start));
        boolean negative = signed && text.charAt(start) != '+';
        int at = signed ? start + 1 : start;
        double digitsValue = 0;
        double divisor = 1;
        int digits = 0;
        int point = -1;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (isDigit(c)) {
                digits++;
                if (digits > MOST_DIGITS) {
                    return fault("is too long: write at most " + MOST_DIGITS + " digits", at);
                }
                digitsValue = digitsValue * 10 + (c - '0');
                divisor = point < 0 ? divisor : divisor * 10;
            } else if ((c == '.' || c == ',') && isDigitAt(text, at + 1)) {
                if (point >= 0) {
                    return fault(twoMarks(text.charAt(point), c), at);
                }
                point = at;
            } else if (!(isSpace(c) && digits > 0 && point < 0 && isGroupOfThree(text, at + 1))) {
                break;
            }
            at++;
        }
        if (digits == 0) {
            return fault("has no number", at);
        }
        if (hasExponent(text, at)) {
            return fault(exponent(text, at), at);
        }
        double value = digitsValue / divisor;
        return new NumberReading(negative ? -value : value, null, at);
    }

    private static NumberReading fault(String fault, int at) {
        return new NumberReading(0, fault, at);
    }

    private static String twoMarks(char first, char second) {
        return first == second
                ? "has two decimal marks"
                : "has both a point and a comma: write thousands without a mark, and one point before the decimals";
    }

    /** Whether the number that ends there has one to three digits, the first not zero, then a mark and three digits, not as printed here. */
    private static boolean couldBeThousands(String text, int end) {
        int point = end - 4;
        if (point < 1 || text.charAt(point) != '.' && text.charAt(point) != ',') {
            return false;
        }
        int first = point;
        while (isDigitAt(text, first - 1)) {
            first--;
        }
        boolean fewBefore = point > first && point - first <= 3 && text.charAt(first) != '0';
        return fewBefore && (text.charAt(point) == ',' || text.charAt(end - 1) == '0');
    }

    /** Whether a power of ten follows, such as {@code e3}, {@code E+3} or {@code e-3}. */
    private static boolean hasExponent(String text, int at) {
        if (at >= text.length() || text.charAt(at) != 'e' && text.charAt(at) != 'E') {
            return false;
        }
        return isDigitAt(text, at + 1) || at + 1 < text.length() && isSign(text.charAt(at + 1)) && isDigitAt(text, at + 2);
    }

    private static String exponent(String text, int at) {
        boolean signed = !isDigitAt(text, at + 1);
        int from = signed ? at + 2 : at + 1;
        int power = 0;
        for (int i = from; isDigitAt(text, i); i++) {
            power = Math.min(power * 10 + (text.charAt(i) - '0'), 1000);
        }
        if (power <= MOST_DIGITS) {
            return "has a power of ten: write the number out, such as 1500 for 1.5e3";
        }
        return signed && text.charAt(at + 1) != '+' ? "is too small" : "is too large";
    }

    private static int afterSpaces(String text, int from) {
        int at = from;
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    static boolean isSpace(char c) {
        return c == ' ' || c == '\u00a0' || c == NumberText.THIN_SPACE || c == '\u202f' || c == '\t' || c == '\n' || c == '\r';
    }

    static boolean isDigitAt(String text, int at) {
        return at >= 0 && at < text.length() && isDigit(text.charAt(at));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isSign(char c) {
        return c == '-' || c == '+' || c == NumberText.MINUS;
    }

    private static boolean isGroupOfThree(String text, int at) {
        return isDigitAt(text, at) && isDigitAt(text, at + 1) && isDigitAt(text, at + 2) && !isDigitAt(text, at + 3);
    }
}
