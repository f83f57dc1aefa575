package loomwright.circuit;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** What is asked for a fuse panel. */
final class PanelEntries {
    static final List<Field> FIELDS = List.of(
            QuantityField.of(
                            "panel-limit", "Limit of the panel", "The current it may carry in all, from its data sheet.", 0.5, 1000, Units.AMPERE)
                    .usually("20 A"),
            QuantityField.of(
                            "present-load",
                            "Present loads not drawn here",
                            "The current of all that is on it already and not entered as a load of its own. Counted as drawn together.",
                            0, 1000, Units.AMPERE, Units.MILLIAMPERE)
                    .usually("0 A"),
            FiguresFrom.field());

    private PanelEntries() {}
}
