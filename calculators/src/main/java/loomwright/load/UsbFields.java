package loomwright.load;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the calculator of a USB outlet asks and answers. */
final class UsbFields {
    static final int PORTS = 4;

    static final Description DESCRIPTION = new Description(
            "usb-power-budget",
            "Power of a USB outlet",
            "What do these USB ports draw from 12 V?",
            List.of(
                    "Every port gives as much as its level allows, all at once, but together no more than the shared limit.",
                    "Power Delivery settles the voltage of its power rule: 5, 9, 15 or 20 V, above 100 W 28, 36 or 48 V. 12 V is not among them.",
                    "One converter with one efficiency serves all ports. It holds its power, so the current rises as the supply voltage falls."),
            fields(),
            outputs(),
            List.of(
                    new NamedFormula("port-current", UsbFormulas.PORT_AMPERES),
                    new NamedFormula("input-power", UsbFormulas.INPUT_POWER),
                    new NamedFormula("current", UsbFormulas.SUPPLY_CURRENT),
                    new NamedFormula("current-at-lowest", UsbFormulas.LOWEST_CURRENT)));

    private UsbFields() {}

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        for (int number = 1; number <= PORTS; number++) {
            boolean first = number == 1;
            String name = UsbPort.name(number);
            fields.add(UsbLevel.field(UsbPort.key(number, "level"), name + ": level", first ? "Printed beside the port or in its data sheet." : ""));
            fields.add(QuantityField.of(
                            UsbPort.key(number, "power"), name + ": power",
                            first ? "For Power Delivery only: the watts of its label." : "", 0.5, 240, Units.WATT)
                    .optional());
            fields.add(UsbCable.field(
                    UsbPort.key(number, "cable"), name + ": cable",
                    first ? "Counts for Power Delivery: up to 60 W without a marker chip, up to 100 W with one." : ""));
        }
        fields.add(QuantityField.of(
                        "shared-limit", "Shared limit of the outlet", "The line Total on the label. Empty counts every port in full.", 0.5, 1000,
                        Units.WATT)
                .optional());
        fields.add(QuantityField.of(
                        "efficiency", "Efficiency of the converter",
                        "From the data sheet. 80 % to 90 % is common practice for planning; we take the lower.", 10, 100, Units.PERCENT)
                .usually("80 %"));
        fields.add(QuantityField.of(
                        "own-draw", "Own draw of the outlet", "Pilot light and electronics with nothing plugged in.", 0, 20, Units.WATT,
                        Units.MILLIWATT)
                .usually("0 W"));
        fields.add(QuantityField.of("supply-voltage", "Supply voltage", "What the supply has as a rule.", 5, 60, Units.VOLT).usually("12 V"));
        fields.add(QuantityField.of(
                        "lowest-voltage", "Lowest supply voltage", "With the battery nearly empty. The current is largest here.", 5, 60, Units.VOLT)
                .usually(SupplyWindow.LOWEST.text()));
        return List.copyOf(fields);
    }

    private static List<Output> outputs() {
        List<Output> outputs = new ArrayList<>();
        outputs.add(new Output("current", "Current at the supply voltage", Units.AMPERE));
        outputs.add(new Output("current-at-lowest", "Current at the lowest voltage: the design current", Units.AMPERE));
        outputs.add(new Output("output-power", "Power the outlet gives", Units.WATT));
        outputs.add(new Output("ports-power", "Power of all ports added up", Units.WATT));
        outputs.add(new Output("input-power", "Power taken from the supply", Units.WATT));
        outputs.add(new Output("heat", "Heat in the outlet", Units.WATT));
        for (int number = 1; number <= PORTS; number++) {
            String name = UsbPort.name(number);
            outputs.add(new Output(UsbPort.key(number, "power"), name + ": power", Units.WATT));
            outputs.add(new Output(UsbPort.key(number, "voltage"), name + ": voltage", Units.VOLT));
            outputs.add(new Output(UsbPort.key(number, "current"), name + ": current in the USB cable", Units.AMPERE));
        }
        return List.copyOf(outputs);
    }
}
