package loomwright.switching;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** Heat of a switch and what its trigger needs, for a whole circuit, where no single step is shown. */
public final class SwitchFigures {
    private static final Quantity NONE = Quantity.of(0, Units.KELVIN_PER_WATT);

    private SwitchFigures() {}

    /** The fields of a coil: its resistance, its power, and the voltage the power holds for. */
    public static List<Field> coilFields() {
        return List.of(CoilFields.COIL_RESISTANCE, CoilFields.COIL_POWER, CoilFields.RATED_VOLTAGE);
    }

    /** The field of the trigger current of a solid-state switch. */
    public static QuantityField triggerField() {
        return TriggerLoop.TRIGGER;
    }

    /** The field of the resistance of a switch when on. */
    public static QuantityField onResistanceField() {
        return SwitchCompare.ON_RESISTANCE;
    }

    /** The field of the time a switch is on in a day. */
    public static QuantityField hoursField() {
        return CoilFields.HOURS;
    }

    /** The field of the temperature of the air around a switch. */
    public static QuantityField airField() {
        return JunctionTemperature.AMBIENT;
    }

    /** The field of the highest temperature of a junction. */
    public static QuantityField junctionLimitField() {
        return JunctionTemperature.LIMIT;
    }

    /** The field of the fuse-link of a trigger. */
    public static QuantityField triggerFuseField() {
        return TriggerLoop.FUSE;
    }

    /** Resistance of a coil from its power at its rated voltage. */
    public static Quantity coilResistance(Quantity power, Quantity ratedVoltage) {
        Values values = Values.of(SwitchSymbols.RATED_VOLTAGE, ratedVoltage).with(SwitchSymbols.RATED_POWER, power.in(Units.WATT));
        return CoilFormulas.RESISTANCE_FROM_POWER.value(values, Units.OHM);
    }

    /** Heat in the closed switch. */
    public static Quantity heat(Quantity current, Quantity resistance) {
        return SwitchFormulas.CONTACT_HEAT.value(
                Values.of(SwitchSymbols.CURRENT, current).with(SwitchSymbols.CONTACT, resistance), Units.WATT);
    }

    /** Temperature of a junction above the air around the switch. */
    public static Quantity junction(Quantity air, Quantity heat, Quantity junctionToAir) {
        Values values = Values.of(HeatFormulas.AMBIENT, air.in(Units.CELSIUS))
                .with(HeatFormulas.HEAT, heat)
                .with(HeatFormulas.JUNCTION_CASE, junctionToAir)
                .with(HeatFormulas.CASE_SINK, NONE)
                .with(HeatFormulas.SINK_AIR, NONE);
        return HeatFormulas.JUNCTION_TEMPERATURE.value(values, Units.CELSIUS);
    }

    /** The row on the highest usual temperature of a junction. */
    public static Row junctionLimit() {
        return SwitchFindings.solidState("junction-limit");
    }

    /** The row on the voltage a trigger needs at least: that of a relay of the 70 A class, or of a logic-level input. */
    public static Row leastTrigger(boolean relay) {
        return relay ? CoilFormulas.relay("70-a-operate") : SwitchFindings.solidState("trigger-voltage");
    }
}
