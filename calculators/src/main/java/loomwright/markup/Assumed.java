package loomwright.markup;

import java.util.Map;
import loomwright.worked.Field;

/**
 * Which entries of an example are assumed, and the words that say so beside them.
 *
 * <p>Assumed is what nobody said: the usual value of a field that the story leaves out, and, on the page of a calculator, every figure that
 * was lent by an example of a lesson.
 *
 * @param lender where the figures that were entered are borrowed from, such as {@code Lesson 8}; empty if they are the example's own
 */
public record Assumed(String lender) {
    /** An example whose own story gives its figures. */
    public static final Assumed OWN_STORY = new Assumed("");

    /** What a lent figure is marked with. */
    public String lent() {
        return lender.isEmpty() ? "" : "assumed, as in " + lender;
    }

    /** What the usual value of a field is marked with where it stands; empty if nothing is taken for it. */
    public static String usual(Field field) {
        return hasUsual(field) ? "assumed" : "";
    }

    /** What a field that was left empty is marked with; empty if nothing is taken for it. */
    public static String empty(Field field) {
        return hasUsual(field) ? "assumed: " + field.usual() : "";
    }

    /** Whether something is taken for a field that nobody filled. */
    public static boolean hasUsual(Field field) {
        return field.usual() != null && !field.usual().isEmpty();
    }

    /** The mark of a field as an example opens. */
    String mark(Field field, Map<String, String> entries) {
        return isUnsaid(field, entries) ? usual(field) : lent();
    }

    static boolean isUnsaid(Field field, Map<String, String> entries) {
        String text = entries.get(field.key());
        return text == null || text.isBlank();
    }
}
