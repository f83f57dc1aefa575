package loomwright.picture;

/**
 * A mark on an axis.
 *
 * @param value where it stands
 * @param text its number, or an empty text
 */
public record Tick(double value, String text) {
    boolean isNumbered() {
        return !text.isEmpty();
    }
}
