package loomwright.picture;

import loomwright.quantity.NumberText;

/** Numbers as SVG attributes. */
final class Coordinate {
    private static final double LARGEST = 9999;

    private Coordinate() {}

    /**
     * The number with at most two digits after the point.
     *
     * @throws IllegalArgumentException if it cannot lie on any canvas: a picture with a lost line would mislead
     */
    static String text(double value) {
        if (!(Math.abs(value) <= LARGEST)) {
            throw new IllegalArgumentException("a coordinate lies outside every canvas");
        }
        int whole = (int) value;
        if (whole == value) {
            return Integer.toString(whole);
        }
        String size = NumberText.fixed(Math.abs(value), 2);
        int end = size.length();
        while (size.charAt(end - 1) == '0') {
            end--;
        }
        if (size.charAt(end - 1) == '.') {
            end--;
        }
        String trimmed = size.substring(0, end);
        return value < 0 && !trimmed.equals("0") ? "-" + trimmed : trimmed;
    }
}
