package loomwright.picture;

/** The course of a line: what SVG calls path data. */
public final class Outline {
    private final StringBuilder data = new StringBuilder();

    public Outline move(double x, double y) {
        return step('M', x, y);
    }

    public Outline line(double x, double y) {
        return step('L', x, y);
    }

    /** A curve to (x, y) that is drawn towards two control points on its way. */
    public Outline curve(double x1, double y1, double x2, double y2, double x, double y) {
        return step('C', x1, y1, x2, y2, x, y);
    }

    /** Half a circle to (x, y), clockwise or not. */
    public Outline halfCircle(double radius, boolean clockwise, double x, double y) {
        data.append('A').append(Coordinate.text(radius)).append(' ').append(Coordinate.text(radius));
        data.append(" 0 0 ").append(clockwise ? '1' : '0').append(' ');
        data.append(Coordinate.text(x)).append(' ').append(Coordinate.text(y));
        return this;
    }

    public Outline close() {
        data.append('Z');
        return this;
    }

    private Outline step(char letter, double... numbers) {
        data.append(letter);
        for (int i = 0; i < numbers.length; i++) {
            if (i > 0) {
                data.append(' ');
            }
            data.append(Coordinate.text(numbers[i]));
        }
        return this;
    }

    String data() {
        return data.toString();
    }
}
