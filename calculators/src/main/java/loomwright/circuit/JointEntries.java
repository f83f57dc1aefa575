package loomwright.circuit;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** What is asked for the joints at one place. */
final class JointEntries {
    static final List<Field> FIELDS = List.of(
            QuantityField.of(
                            "joint-resistance", "Resistance of one joint",
                            "Measured, or planned. The millivolts across a joint divided by the amperes are its milliohms.", 0, 10_000,
                            Units.MILLIOHM, Units.OHM)
                    .usually("0.5 mΩ"),
            QuantityField.of(
                            "joints", "Number of joints", "Out and back together: a terminal at each end of both conductors makes four.", 1, 100,
                            Units.ONE)
                    .usually("2"),
            QuantityField.of(
                            "terminal-rating", "Rated current of the weakest of them", "Of terminal, connector or clamp, from its data sheet.", 0.1, 2000,
                            Units.AMPERE)
                    .optional(),
            FiguresFrom.field());

    private JointEntries() {}
}
