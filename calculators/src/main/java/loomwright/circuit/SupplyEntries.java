package loomwright.circuit;

import java.util.ArrayList;
import java.util.List;
import loomwright.protection.FaultBattery;
import loomwright.protection.RuleSet;
import loomwright.quantity.Units;
import loomwright.supply.BatteryDay;
import loomwright.supply.Chemistry;
import loomwright.worked.ChoiceField;
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
        // Empty if there is no panel.
        fields.add(BatteryDay.panelPowerField().optional());
        fields.add(BatteryDay.peakSunHoursField().usually("3 h"));
        ChoiceField rule = RuleSet.field();
        fields.add(new ChoiceField("fuse-rule", rule.label(), rule.help(), rule.options(), rule.usual()));
        return List.copyOf(fields);
    }

    private static QuantityField voltage(String key, String label, String help, String usual) {
        return QuantityField.of(key, label, help, 5, 32, Units.VOLT).usually(usual);
    }
}
