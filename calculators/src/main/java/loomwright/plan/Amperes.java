package loomwright.plan;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Amperes in a sentence. */
final class Amperes {
    private Amperes() {}

    static String text(double amperes) {
        return Quantity.of(amperes, Units.AMPERE).text(3);
    }
}
