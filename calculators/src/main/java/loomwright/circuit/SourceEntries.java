package loomwright.circuit;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.supply.BatteryDay;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** What is asked for a source of charge: what feeds the battery, at the end of its own run. */
final class SourceEntries {
    static final List<Field> FIELDS = List.of(
            SourceKind.field(),
            QuantityField.of(
                            "charge-current", "Largest current it gives",
                            "From its data sheet, on the side of the battery. Of a towing socket: what its contact and the vehicle\u2019s fuse allow.",
                            0.1, 1000, Units.AMPERE)
                    .usually("10 A"),
            QuantityField.of(
                            "charge-voltage", "Highest voltage it charges with",
                            "As it is set, or from its data sheet. Empty if not known.", 5, 64, Units.VOLT)
                    .optional(),
            QuantityField.of(
                            "device-at-source", "Device at its own end",
                            "The rating of the fuse-link or breaker where its run leaves it. A vehicle or another battery needs one there; empty if "
                                    + "there is none.",
                            0.1, 1000, Units.AMPERE)
                    .optional(),
            BatteryDay.panelPowerField().optional(),
            BatteryDay.peakSunHoursField().usually("3 h"),
            QuantityField.of(
                            "hours-charging", "Time it charges in a day", "Of a charger or a vehicle that runs. Not asked of solar panels.", 0, 24,
                            Units.HOUR, Units.MINUTE)
                    .usually("0 h"),
            FiguresFrom.field());

    private SourceEntries() {}
}
