package loomwright.circuit;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** What is asked for an isolating switch. */
final class IsolatorEntries {
    static final List<Field> FIELDS = List.of(
            QuantityField.of(
                            "continuous-current", "Continuous current", "What it may carry all the time, from its data sheet, for direct current.",
                            0.1, 2000, Units.AMPERE)
                    .usually("100 A"),
            QuantityField.of(
                            "contact-resistance", "Resistance of the closed contact", "From its data sheet. 0 leaves it out.", 0, 1000,
                            Units.MILLIOHM)
                    .usually("0 mΩ"),
            FiguresFrom.field());

    private IsolatorEntries() {}
}
