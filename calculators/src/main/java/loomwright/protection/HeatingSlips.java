package loomwright.protection;

import static loomwright.protection.HeatingFormulas.K;
import static loomwright.protection.HeatingFormulas.SIZE;
import static loomwright.protection.HeatingFormulas.TIME;

import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/** The known mistakes with the adiabatic equation, with the present numbers. */
final class HeatingSlips {
    private static final String OTHER_K = "k belongs to one insulation and one kind of conductor; 143, for one, is printed for two.";

    private HeatingSlips() {}

    static void add(WorkingBuilder working, Entries entries, Values values, ShortCircuitInsulation insulation) {
        // An entered constant may be mistaken for that of the insulation chosen.
        ShortCircuitInsulation mistaken = entries.has("k") ? insulation : insulation.mistaken();
        Quantity otherK = mistaken.row().quantity("k", Units.AMPERE_ROOT_SECOND_PER_SQUARE_MILLIMETRE);
        if (entries.has("clearing-time")) {
            timed(working, entries, values, otherK);
        }
        if (entries.has("size")) {
            sized(working, entries, values, otherK);
        }
    }

    private static void timed(WorkingBuilder working, Entries entries, Values values, Quantity otherK) {
        slip(working, "k-of-other-insulation", "least-size", "The constant of another insulation", OTHER_K, HeatingFormulas.LEAST,
                values.with(K, otherK));
        slip(
                working, "root-left-out", "least-size", "The root left out",
                "The time stands under the root: the units do not come out otherwise.", HeatingFormulas.ROOT_LEFT_OUT, values);
        slip(
                working, "root-left-out", "root-heating", "The root left out",
                "The time stands under the root: the units do not come out otherwise.", HeatingFormulas.HEATING_ROOT_LEFT_OUT, values);
        boolean milliseconds = entries.quantity("clearing-time").unit() == Units.MILLISECOND;
        Quantity misread = Quantity.of(values.of(TIME).value() * (milliseconds ? 1000 : 0.001), Units.SECOND);
        String name = milliseconds ? "Milliseconds taken as seconds" : "Seconds taken as milliseconds";
        String words = "A millisecond is a thousandth of a second; under the root that makes a factor of about 32.";
        slip(working, "seconds-and-milliseconds", "least-size", name, words, HeatingFormulas.LEAST, values.with(TIME, misread));
        slip(working, "seconds-and-milliseconds", "root-heating", name, words, HeatingFormulas.ROOT, values.with(TIME, misread));
    }

    private static void sized(WorkingBuilder working, Entries entries, Values values, Quantity otherK) {
        slip(
                working, "k-of-other-insulation", "longest-time", "The constant of another insulation", OTHER_K,
                HeatingFormulas.LONGEST_TIME,
                values.with(K, otherK));
        slip(
                working, "square-left-out", "longest-time", "The square left out",
                "Half the current may flow four times as long.", HeatingFormulas.SQUARE_LEFT_OUT, values);
        Quantity entered = entries.quantity("size");
        if (entered.unit() == Units.AWG && entered.value() > 0) {
            slip(
                    working, "gauge-for-area", "longest-time", "The gauge number used in place of square millimetres",
                    "A gauge number is no area, and it falls as the conductor grows.", HeatingFormulas.LONGEST_TIME,
                    values.with(SIZE, Quantity.of(entered.value(), Units.SQUARE_MILLIMETRE)));
        }
    }

    private static void slip(
            WorkingBuilder working, String key, String output, String name, String words, Formula formula, Values values) {
        working.slip(key, output, name, words, formula, values);
    }
}
