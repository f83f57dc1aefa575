package loomwright.quantity;

/**
 * Numbers to text, alike on every machine. {@link NumberReading} is the way back.
 *
 * <p>The standard library is avoided on purpose: its shortest-form printing differs between Java versions and the browser, and costs
 * more than half of the page's program.
 */
public final class NumberText {
    /** Above this, digits after the point no longer fit beside the whole part. */
    private static final double LARGEST_SHOWN = 1e12;

    private static final double SMALLEST_SHOWN = 1e-9;
    static final char THIN_SPACE = '\u2009';
    static final char MINUS = '\u2212';

    private NumberText() {}

    /**
     * The number with a fixed count of digits after the point, half rounded away from zero.
     *
     * @param value any number; a number that is not finite, or of a million million and more, becomes a word
     * @param digits 0 to 9; more count as 9, and as 3 from a million on
     */
    public static String fixed(double value, int digits) {
        if (Double.isNaN(value)) {
            return "not a number";
        }
        double size = Math.abs(value);
        if (size >= LARGEST_SHOWN) {
            return value < 0 ? "below every limit" : "beyond every limit";
        }
        int shownDigits = Math.min(digits, size < 1e6 ? 9 : 3);
        double scale = powerOfTen(shownDigits);
        // Whole numbers up to 10^15 are exact in a double; a browser has no long, and counting with one made of parts is slow.
        double scaled = Math.floor(size * scale + 0.5);
        double whole = Math.floor(scaled / scale);
        String text = grouped(whole);
        text = shownDigits == 0 ? text : text + "." + padded((int) (scaled - whole * scale), shownDigits);
        return value < 0 && scaled != 0 ? MINUS + text : text;
    }

    /** The number to {@code digits} significant digits (1 to 9), without trailing zeros. Whole parts are never rounded. */
    public static String significant(double value, int digits) {
        double size = Math.abs(value);
        if (size < SMALLEST_SHOWN) {
            return "0";
        }
        int decimals = digits - 1;
        double limit = 10;
        while (size >= limit && decimals > 0) {
            limit *= 10;
            decimals--;
        }
        double low = 1;
        while (size < low && decimals < 9) {
            low /= 10;
            decimals++;
        }
        return withoutTrailingZeros(fixed(value, decimals));
    }

    /**
     * The number as a working shows it: a short decimal as it stands (up to five significant digits), a long one to four significant
     * digits.
     */
    public static String shown(double value) {
        String five = significant(value, 5);
        return isSame(value, five) ? five : significant(value, 4);
    }

    private static boolean isSame(double value, String text) {
        double read = NumberReading.of(text).value();
        return Math.abs(read - value) <= 1e-9 * Math.abs(value);
    }

    private static double powerOfTen(int digits) {
        double power = 1;
        for (int i = 0; i < digits; i++) {
            power *= 10;
        }
        return power;
    }

    /** A whole number with a thin space before every three digits, if it has more than four. */
    private static String grouped(double whole) {
        if (whole < 10_000) {
            return Integer.toString((int) whole);
        }
        String text = "";
        double rest = whole;
        while (rest >= 1000) {
            double thousands = Math.floor(rest / 1000);
            text = THIN_SPACE + padded((int) (rest - thousands * 1000), 3) + text;
            rest = thousands;
        }
        return (int) rest + text;
    }

    private static String padded(int fraction, int digits) {
        StringBuilder text = new StringBuilder();
        String written = Integer.toString(fraction);
        for (int i = written.length(); i < digits; i++) {
            text.append('0');
        }
        return text.append(written).toString();
    }

    private static String withoutTrailingZeros(String text) {
        if (text.indexOf('.') < 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        if (text.charAt(end - 1) == '.') {
            end--;
        }
        return text.substring(0, end);
    }
}
