package loomwright.formula;

/** Works out a line of arithmetic such as {@code (2 + 3) × 4²}: a second opinion on what the formula writer wrote. */
final class Arithmetic {
    private final String text;
    private int at;

    private Arithmetic(String text) {
        this.text = text.replace("\u2212", "-").replace(" ", "").replace("\u2009", "");
    }

    static double valueOf(String text) {
        Arithmetic arithmetic = new Arithmetic(text);
        double value = arithmetic.sum();
        if (arithmetic.at != arithmetic.text.length()) {
            throw new AssertionError("stopped at " + arithmetic.at + " of " + arithmetic.text);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (at < text.length() && (peek() == '+' || peek() == '-')) {
            value = text.charAt(at++) == '+' ? value + product() : value - product();
        }
        return value;
    }

    private double product() {
        double value = power();
        while (at < text.length() && (peek() == '×' || peek() == '÷')) {
            value = text.charAt(at++) == '×' ? value * power() : value / power();
        }
        return value;
    }

    private double power() {
        double value = single();
        while (at < text.length() && peek() == '²') {
            at++;
            value *= value;
        }
        return value;
    }

    private double single() {
        if (peek() == '(') {
            at++;
            double value = sum();
            at++;
            return value;
        }
        if (peek() == '-') {
            at++;
            return -single();
        }
        int from = at;
        while (at < text.length() && (Character.isDigit(peek()) || peek() == '.')) {
            at++;
        }
        return Double.parseDouble(text.substring(from, at));
    }

    private char peek() {
        return text.charAt(at);
    }
}
