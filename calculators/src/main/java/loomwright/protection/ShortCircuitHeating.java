package loomwright.protection;

import static loomwright.protection.HeatingFormulas.CURRENT;
import static loomwright.protection.HeatingFormulas.K;
import static loomwright.protection.HeatingFormulas.SIZE;
import static loomwright.protection.HeatingFormulas.TIME;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * Whether a conductor stands a short circuit until the device has opened.
 *
 * <p>S_min = √(I² t)/k and t_max = (k S/I)²: the adiabatic equation, for about 5 s at most. Copper up to 300 mm².
 *
 * @source BS 7671 (2018), Tables 43.1 and 54.2
 */
public final class ShortCircuitHeating implements Calculator {
    private static final QuantityField SHORT_CIRCUIT_CURRENT = QuantityField.of(
            "current", "Short-circuit current", "The current that flows while the device has not opened yet.", 1, 100_000, Units.AMPERE,
            Units.KILOAMPERE);

    private static final QuantityField CLEARING_TIME = QuantityField.of(
                    "clearing-time",
                    "Time until the device has opened",
                    "Its latest opening time at this current. Leave it empty to find the longest time only.",
                    0.001, 600, Units.SECOND, Units.MILLISECOND)
            .optional();

    private static final QuantityField CONDUCTOR_SIZE = QuantityField.of(
                    "size",
                    "Size of conductor",
                    "The thinnest conductor in the path. Leave it empty to find the least size only.",
                    0.05, 300, Units.SQUARE_MILLIMETRE, Units.AWG, Units.CIRCULAR_MIL)
            .optional();

    private static final QuantityField OWN_K = QuantityField.of(
                    "k",
                    "Constant k of the conductor",
                    "If the data sheet of the cable prints it, for its own temperatures. Empty takes it from the insulation.",
                    10, 400, Units.AMPERE_ROOT_SECOND_PER_SQUARE_MILLIMETRE)
            .optional();

    private static final Description DESCRIPTION = new Description(
            "short-circuit-heating",
            "Heat of a short circuit in a conductor",
            "Does the insulation stand the short circuit until the device has opened?",
            List.of(
                    "Copper. All heat stays in the conductor: true for about 5 s at most.",
                    "The conductor is as warm at the start as its insulation allows in service; a separate protective conductor is cold.",
                    "The current stays the same until the device has opened."),
            List.of(SHORT_CIRCUIT_CURRENT, CLEARING_TIME, CONDUCTOR_SIZE, ShortCircuitInsulation.field(), OWN_K),
            List.of(
                    new Output("least-size", "Least cross-section", Units.SQUARE_MILLIMETRE),
                    new Output("longest-time", "Longest time the conductor stands it", Units.SECOND),
                    new Output("root-heating", "Current times the root of the time", Units.AMPERE_ROOT_SECOND),
                    new Output("let-through", "Current squared times time", Units.AMPERE_SQUARED_SECOND)),
            HeatingFormulas.NAMED);

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        boolean timed = entries.has("clearing-time");
        boolean sized = entries.has("size");
        if (!timed && !sized) {
            throw new Refusal(
                    "clearing-time",
                    "Time until the device has opened and Size of conductor are both empty: enter one of them, or both for a check");
        }
        ShortCircuitInsulation insulation = ShortCircuitInsulation.of(entries.option("insulation"));
        boolean own = entries.has("k");
        Source source = own ? Source.of(Document.COMPUTED, "with the constant k you entered") : insulation.row().source();
        Quantity current = working.convert(
                "Turn the current into amperes", entries.quantity("current"), Units.AMPERE, "The constant k is in amperes.");
        Values values = Values.of(CURRENT, current).with(K, own ? entries.quantity("k") : constant(working, insulation.row()));
        Quantity least = null;
        if (timed) {
            Quantity time = working.convert("Turn the time into seconds", entries.quantity("clearing-time"), Units.SECOND,
                    "k is made for seconds.");
            values = values.with(TIME, time);
            least = leastSize(working, values, source);
        }
        if (sized) {
            Quantity size = working.convert(
                    "Turn the size into square millimetres", entries.quantity("size"), Units.SQUARE_MILLIMETRE,
                    "k is made for square millimetres.");
            values = values.with(SIZE, size);
            longestTime(working, values, source);
        }
        HeatingFindings.add(working, entries, values, least, source);
        HeatingSlips.add(working, entries, values, insulation);
    }

    private static Quantity constant(WorkingBuilder working, Row row) {
        return working.lookUp(
                "Read the constant of the insulation", K, row, "k", Units.AMPERE_ROOT_SECOND_PER_SQUARE_MILLIMETRE,
                "It holds the heat that copper takes up between the temperature in service and the one the insulation stands for a "
                        + "moment.");
    }

    private static Quantity leastSize(WorkingBuilder working, Values values, Source source) {
        Quantity heating = working.compute(
                "Multiply the current by the root of the time", HeatingFormulas.ROOT, values, Units.AMPERE_ROOT_SECOND,
                "Heat grows with the square of the current and with the time.");
        Quantity least = working.compute(
                "Divide by the constant", HeatingFormulas.LEAST, values, Units.SQUARE_MILLIMETRE,
                "Twice the copper takes up the same heat with a quarter of the rise.", source);
        working.result("root-heating", heating);
        working.result("let-through", HeatingFormulas.SQUARE.value(values, Units.AMPERE_SQUARED_SECOND));
        working.result("least-size", least);
        return least;
    }

    private static void longestTime(WorkingBuilder working, Values values, Source source) {
        working.result("longest-time", working.compute(
                "Find how long the conductor stands the current", HeatingFormulas.LONGEST_TIME, values, Units.SECOND,
                "The same equation, turned to the time.", source));
    }
}
