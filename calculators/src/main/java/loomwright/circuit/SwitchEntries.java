package loomwright.circuit;

import java.util.ArrayList;
import java.util.List;
import loomwright.conductor.ConductorFigures;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.Insulation;
import loomwright.quantity.Units;
import loomwright.switching.SwitchFigures;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.QuantityField;

/** What is asked for a switching device and its trigger. */
final class SwitchEntries {
    static final ChoiceField DEVICE = ChoiceField.of(
            "switching",
            "Switched by",
            "A relay has a coil that takes current as long as it is on; a solid-state switch warms up instead.",
            new Option("manual", "a switch by hand"),
            new Option("relay", "a relay"),
            new Option("solid-state", "a solid-state switch for d.c."));

    static final List<Field> FIELDS = fields();

    private SwitchEntries() {}

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        fields.add(DEVICE);
        fields.add(QuantityField.of(
                        "continuous-current", "Continuous current",
                        "What it may carry all the time at its warmest place, from its data sheet, for direct current.", 0.1, 1000, Units.AMPERE)
                .usually("30 A"));
        fields.add(SwitchFigures.onResistanceField().usually("0 mΩ"));
        fields.addAll(SwitchFigures.coilFields());
        fields.add(SwitchFigures.triggerField());
        fields.add(SwitchFigures.hoursField());
        fields.add(SwitchFigures.triggerFuseField().optional());
        ChoiceField insulation = Insulation.field(Insulation.values());
        fields.add(new ChoiceField(
                "trigger-insulation", "Trigger wire: insulation rated for", insulation.help(), insulation.options(), insulation.usual()));
        fields.add(trigger("trigger-conductor", ConductorKind.field()));
        fields.add(trigger("trigger-size", ConductorFigures.sizeField().usually("0.75 mm²")));
        fields.add(trigger("trigger-route-length", ConductorFigures.routeLengthField().usually("1 m")));
        fields.add(QuantityField.of(
                        "trigger-ampacity", "Trigger wire: ampacity by its data sheet", "What the wire may carry where it lies. Empty takes the table.",
                        0.1, 100, Units.AMPERE)
                .optional());
        fields.add(QuantityField.of(
                        "junction-to-air", "Thermal resistance, junction to air",
                        "Of a solid-state switch with its heat sink, from their data sheets added up. Empty if not known.", 0.01, 500,
                        Units.KELVIN_PER_WATT)
                .optional());
        fields.add(SwitchFigures.airField().keyed("switch-ambient"));
        fields.add(SwitchFigures.junctionLimitField());
        fields.add(FiguresFrom.field());
        return List.copyOf(fields);
    }

    private static ChoiceField trigger(String key, ChoiceField field) {
        return new ChoiceField(key, "Trigger wire: " + lower(field.label()), field.help(), field.options(), field.usual());
    }

    private static QuantityField trigger(String key, QuantityField field) {
        return new QuantityField(key, "Trigger wire: " + lower(field.label()), field.help(), field.units(), field.limits(), field.usual());
    }

    private static String lower(String label) {
        return (char) (label.charAt(0) + ('a' - 'A')) + label.substring(1);
    }
}
