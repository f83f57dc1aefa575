package loomwright.markup;

import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;

/**
 * A typed quantity taken apart: {@code 4.2 m} is {@code 4.2} and metre.
 *
 * @param number the number as it was typed; the whole text if it cannot be taken apart
 * @param unit the unit that was typed, or null if none was or it is not known
 */
public record TypedQuantity(String number, Unit unit) {
    private static final String PARTS_OF_A_NUMBER = "0123456789+-\u2212.,/ \u00a0\u2009\u202f";

    /** Takes a text apart. */
    public static TypedQuantity of(String text) {
        QuantityText.Reading reading = QuantityText.read(text, null);
        if (reading.quantity() == null) {
            return new TypedQuantity(text, null);
        }
        return new TypedQuantity(text.substring(0, endOfNumber(text)).strip(), reading.quantity().unit());
    }

    /** The text with {@code unit} added if it holds a number alone. A text that says more, or nothing, stays as it is. */
    public static String joined(String text, String unit) {
        return text.isBlank() || endOfNumber(text) < text.length() ? text : text + " " + unit;
    }

    private static int endOfNumber(String text) {
        int end = 0;
        while (end < text.length() && PARTS_OF_A_NUMBER.indexOf(text.charAt(end)) >= 0) {
            end++;
        }
        return end;
    }
}
