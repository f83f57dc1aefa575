package loomwright.plan;

import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;

/** Quantities as a reader would type them, and back. */
final class Plain {
    /** More digits than any page shows, so that a calculator comes to the same figure. */
    private static final int DIGITS = 9;

    private Plain() {}

    static String text(Quantity quantity) {
        return quantity.text(DIGITS).replace('\u00a0', ' ');
    }

    static Quantity quantity(String text) {
        return QuantityText.read(text, null).quantity();
    }
}
