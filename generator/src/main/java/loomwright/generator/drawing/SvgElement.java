package loomwright.generator.drawing;

import java.util.Map;

/**
 * One element of a drawing.
 *
 * @param name such as {@code rect}
 * @param attributes as they are written
 * @param text what stands in it, of an element that holds text
 * @param line where it begins in its file
 * @param x how far the groups around it move it to the right
 * @param y how far they move it down
 */
record SvgElement(String name, Map<String, String> attributes, String text, int line, double x, double y) {
    String attribute(String key) {
        return attributes.getOrDefault(key, "");
    }

    /** The number in an attribute. */
    double number(String key) {
        return Double.parseDouble(attribute(key));
    }

    boolean isNumber(String key) {
        return attribute(key).matches("-?\\d+(\\.\\d+)?");
    }
}
