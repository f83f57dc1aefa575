package loomwright.circuit;

import java.util.ArrayList;
import java.util.List;
import loomwright.protection.FaultBattery;
import loomwright.protection.RuleSet;
import loomwright.quantity.Units;
import loomwright.supply.BatteryDay;
import loomwright.supply.Chemistry;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** What is asked for the battery. */
final class SupplyEntries {
    static final List<Field> FIELDS = fields();

    private SupplyEntries() {}

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        fields.add(Chemistry.field());
        fields.add(BatteryDay.capacityField().usually("100 Ah"));
        fields.add(QuantityField.of(
                        "state-of-charge", "State of charge", "How full the battery is when the day begins.", 0, 100, Units.PERCENT)
                .usually("100 %"));
        fields.add(BatteryDay.depthField());
        fields.add(BatteryDay.limitField());
        fields.add(voltage("lowest-voltage", "Lowest voltage at the battery", "Nearly empty, with the loads on.", "10.5 V"));
        fields.add(voltage("highest-voltage", "Highest voltage at the battery", "While it is being charged.", "14.6 V"));
        fields.addAll(FaultBattery.fields());
        fields.add(QuantityField.of(
                        "charge-voltage-most", "Highest charging voltage", "From its data sheet. Empty takes what print says of its kind.", 5, 64,
                        Units.VOLT)
                .optional());
        fields.add(QuantityField.of(
                        "charge-current-most", "Largest charging current", "From its data sheet: the most that may flow into it.", 0.1, 2000,
                        Units.AMPERE)
                .optional());
        fields.add(QuantityField.of(
                        "days-wanted", "Days without sun it shall last", "How long you want to do without charging. A weekend is two days.", 0, 60,
                        Units.DAY, Units.HOUR)
                .optional());
        // Empty if there is no panel, or if its controller is drawn as a source of charge.
        fields.add(BatteryDay.panelPowerField().optional());
        fields.add(BatteryDay.peakSunHoursField().usually("3 h"));
        fields.add(RuleSet.field());
        fields.add(FiguresFrom.field());
        return List.copyOf(fields);
    }

    private static QuantityField voltage(String key, String label, String help, String usual) {
        return QuantityField.of(key, label, help, 5, 32, Units.VOLT).usually(usual);
    }
}
