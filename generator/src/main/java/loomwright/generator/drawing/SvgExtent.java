package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The points a shape is drawn through or towards. A shape lies within them, so what they keep to, it keeps to. */
final class SvgExtent {
    private static final Pattern STEP = Pattern.compile("([A-Za-z])([^A-Za-z]*)");
    private static final Pattern NUMBER = Pattern.compile("-?(?:\\d+\\.?\\d*|\\.\\d+)");

    private final List<double[]> points = new ArrayList<>();
    private double x;
    private double y;

    private SvgExtent() {}

    static List<double[]> of(SvgElement shape) {
        SvgExtent extent = new SvgExtent();
        switch (shape.name()) {
            case "rect" -> extent.box(shape.number("x"), shape.number("y"), shape.number("width"), shape.number("height"));
            case "circle" -> {
                double r = shape.number("r");
                extent.box(shape.number("cx") - r, shape.number("cy") - r, 2 * r, 2 * r);
            }
            case "line" -> {
                extent.to(shape.number("x1"), shape.number("y1"));
                extent.to(shape.number("x2"), shape.number("y2"));
            }
            case "path" -> extent.path(shape.attribute("d"));
            default -> { }
        }
        extent.points.forEach(point -> {
            point[0] += shape.x();
            point[1] += shape.y();
        });
        return extent.points;
    }

    private void box(double left, double top, double width, double height) {
        to(left, top);
        to(left + width, top + height);
    }

    private void to(double newX, double newY) {
        x = newX;
        y = newY;
        points.add(new double[] {x, y});
    }

    private void path(String data) {
        Matcher step = STEP.matcher(data);
        while (step.find()) {
            char letter = step.group(1).charAt(0);
            List<Double> numbers = NUMBER.matcher(step.group(2)).results().map(found -> Double.valueOf(found.group())).toList();
            boolean onward = Character.isLowerCase(letter);
            switch (Character.toUpperCase(letter)) {
                case 'H' -> numbers.forEach(each -> to(each + (onward ? x : 0), y));
                case 'V' -> numbers.forEach(each -> to(x, each + (onward ? y : 0)));
                case 'A' -> pairs(numbers, 7, 5, onward);
                case 'C' -> pairs(numbers, 6, 0, onward);
                case 'S', 'Q' -> pairs(numbers, 4, 0, onward);
                default -> pairs(numbers, 2, 0, onward);
            }
        }
    }

    /** Points in groups of {@code size} numbers, of which the first {@code skipped} are none. Each group begins where the last ended. */
    private void pairs(List<Double> numbers, int size, int skipped, boolean onward) {
        for (int from = 0; from + size <= numbers.size(); from += size) {
            double fromX = onward ? x : 0;
            double fromY = onward ? y : 0;
            for (int i = from + skipped; i < from + size; i += 2) {
                to(fromX + numbers.get(i), fromY + numbers.get(i + 1));
            }
        }
    }
}
