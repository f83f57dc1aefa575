package loomwright.protection;

import static loomwright.protection.FusingFormulas.AREA;
import static loomwright.protection.FusingFormulas.DIAMETER;
import static loomwright.protection.FusingFormulas.TIME;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/** The known mistakes with the two equations, with the present numbers. */
final class FusingSlips {
    private static final String SIGN = "A much-copied example prints 234 − θ instead of 234 + θ.";

    private FusingSlips() {}

    static void add(WorkingBuilder working, Entries entries, Values preece, Values onderdonk) {
        if (onderdonk.of(FusingFormulas.AMBIENT).value() < 234) {
            working.slip("sign-of-234", "onderdonk-current", "234 with the wrong sign", SIGN, FusingFormulas.SIGN_SLIP, onderdonk);
            if (entries.has("current")) {
                working.slip("sign-of-234", "onderdonk-time", "234 with the wrong sign", SIGN, FusingFormulas.SIGN_SLIP_TIME, onderdonk);
            }
        }
        working.slip(
                "natural-logarithm", "onderdonk-current", "The natural logarithm taken",
                "The constant 33 belongs to the logarithm of base 10.",
                FusingFormulas.NATURAL_LOGARITHM, onderdonk);
        working.slip(
                "square-millimetres-for-mils", "onderdonk-current", "Square millimetres taken as thousands of circular mils",
                "1 mm² is 1974 circular mils, not 1000.", FusingFormulas.ONDERDONK,
                onderdonk.with(AREA, Quantity.of(1000 * onderdonk.of(AREA).in(Units.SQUARE_MILLIMETRE).value(), Units.CIRCULAR_MIL)));
        working.slip(
                "milliseconds-for-seconds", "onderdonk-current", "Seconds taken as milliseconds",
                "A millisecond is a thousandth of a second.",
                FusingFormulas.ONDERDONK, onderdonk.with(TIME, Quantity.of(onderdonk.of(TIME).value() / 1000, Units.SECOND)));
        working.slip(
                "radius-for-diameter", "preece-current", "The radius used in place of the diameter", "Preece's d is the whole diameter.",
                FusingFormulas.PREECE_OF_RADIUS, preece);
        working.slip(
                "millimetres-for-inches", "preece-current", "Millimetres put in where inches belong",
                "The constant 10244 is for inches; for millimetres it is 80.", FusingFormulas.PREECE,
                preece.with(DIAMETER, Quantity.of(preece.of(DIAMETER).in(Units.MILLIMETRE).value(), Units.INCHES)));
    }
}
