package loomwright.supply;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.QuantityField;

/** What a battery and a solar panel give in a day, for a whole circuit, where no single step is shown. */
public final class BatteryDay {
    private BatteryDay() {}

    /** The field that asks for the capacity. */
    public static QuantityField capacityField() {
        return SupplyFields.CAPACITY;
    }

    /** The field that asks for the usable depth; empty takes the published planning value. */
    public static QuantityField depthField() {
        return UsableDepth.FIELD;
    }

    /** The field that asks for the current limit of the battery. */
    public static QuantityField limitField() {
        return RunTime.BATTERY_LIMIT;
    }

    /** The field that asks for the rated power of a solar panel. */
    public static QuantityField panelPowerField() {
        return YieldFields.PANEL_POWER;
    }

    /** The field that asks for the peak sun hours of a day. */
    public static QuantityField peakSunHoursField() {
        return YieldFields.PEAK_SUN_HOURS;
    }

    /** The ampere-hours a plan may take from a full battery. */
    public static Quantity usable(Quantity capacity, Quantity depth) {
        return RunTimeFormulas.USABLE.value(
                Values.of(Symbols.CAPACITY, capacity).with(Symbols.DEPTH, depth), Units.AMPERE_HOUR);
    }

    /** How long ampere-hours last at a current. */
    public static Quantity runTime(Quantity usable, Quantity current) {
        return RunTimeFormulas.RUN_TIME.value(Values.of(Symbols.USABLE, usable).with(Symbols.CURRENT, current), Units.HOUR);
    }

    /** What a panel gives in a day, with the published efficiency for planning. */
    public static Quantity yield(Quantity panel, Quantity peakSunHours) {
        Values values = Values.of(YieldFormulas.PANEL, panel)
                .with(YieldFormulas.SUN, peakSunHours)
                .with(YieldFormulas.EFFICIENCY, efficiencyRow().quantity("value", Units.PERCENT));
        return YieldFormulas.DAY_YIELD.value(values, Units.WATT_HOUR);
    }

    /** The row of that efficiency. */
    public static Row efficiencyRow() {
        return YieldEfficiency.row();
    }

    /** What a load takes in a day: power, time switched on, and the share of that time it draws. */
    public static Quantity energy(Quantity power, Quantity hours, Quantity duty) {
        Values values = Values.of(Symbols.POWER, power).with(Symbols.TIME, hours).with(Symbols.DUTY, duty);
        return DayFormulas.ENERGY_BY_POWER.value(values, Units.WATT_HOUR);
    }

    /** The ampere-hours behind an energy at a voltage. */
    public static Quantity charge(Quantity energy, Quantity voltage) {
        return DayFormulas.CHARGE.value(Values.of(Symbols.ENERGY, energy).with(Symbols.VOLTAGE, voltage), Units.AMPERE_HOUR);
    }
}
