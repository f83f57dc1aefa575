package loomwright.quantity;

import java.util.ArrayList;
import java.util.List;

/** Every unit the project uses. */
public final class Units {
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double HOUR_SECONDS = 3600;
    private static final double SQUARE_MILLIMETRE_BASE = 1e-6;
    /** Area of a circle one thousandth of an inch across. */
    private static final double CIRCULAR_MIL_BASE = Math.PI / 4 * (INCH / 1000) * (INCH / 1000);
    /** Standard gravity times the international pound. */
    private static final double POUND_FORCE_BASE = 4.4482216152605;

    private static final List<Unit> ALL = new ArrayList<>();

    public static final Unit VOLT = unit("V", "volts", Dimension.VOLTAGE, 1);
    public static final Unit MILLIVOLT = unit("mV", "millivolts", Dimension.VOLTAGE, 1e-3);
    public static final Unit AMPERE = unit("A", "amperes", Dimension.CURRENT, 1);
    public static final Unit MILLIAMPERE = unit("mA", "milliamperes", Dimension.CURRENT, 1e-3);
    public static final Unit KILOAMPERE = unit("kA", "kiloamperes", Dimension.CURRENT, 1e3);
    public static final Unit OHM = unit("Ω", "ohms", Dimension.RESISTANCE, 1);
    public static final Unit MILLIOHM = unit("mΩ", "milliohms", Dimension.RESISTANCE, 1e-3);
    public static final Unit KILOOHM = unit("kΩ", "kilohms", Dimension.RESISTANCE, 1e3);
    public static final Unit WATT = unit("W", "watts", Dimension.POWER, 1);
    public static final Unit MILLIWATT = unit("mW", "milliwatts", Dimension.POWER, 1e-3);
    public static final Unit KILOWATT = unit("kW", "kilowatts", Dimension.POWER, 1e3);

    public static final Unit METRE = unit("m", "metres", Dimension.LENGTH, 1);
    public static final Unit CENTIMETRE = unit("cm", "centimetres", Dimension.LENGTH, 1e-2);
    public static final Unit MILLIMETRE = unit("mm", "millimetres", Dimension.LENGTH, 1e-3);
    public static final Unit FEET = unit("ft", "feet", Dimension.LENGTH, FOOT);
    public static final Unit INCHES = unit("in", "inches", Dimension.LENGTH, INCH);

    public static final Unit SQUARE_MILLIMETRE = unit("mm²", "square millimetres", Dimension.AREA, SQUARE_MILLIMETRE_BASE);
    public static final Unit CIRCULAR_MIL = unit("circular mil", "circular mils", Dimension.AREA, CIRCULAR_MIL_BASE);
    public static final Unit AWG = add(new Unit("AWG", "American wire gauge", Dimension.AREA, new WireGaugeScale()));

    public static final Unit OHM_PER_METRE = unit("Ω/m", "ohms per metre", Dimension.RESISTANCE_PER_LENGTH, 1);
    public static final Unit MILLIOHM_PER_METRE = unit("mΩ/m", "milliohms per metre", Dimension.RESISTANCE_PER_LENGTH, 1e-3);
    public static final Unit OHM_PER_KILOMETRE = unit("Ω/km", "ohms per kilometre", Dimension.RESISTANCE_PER_LENGTH, 1e-3);
    public static final Unit OHM_PER_FOOT = unit("Ω/ft", "ohms per foot", Dimension.RESISTANCE_PER_LENGTH, 1 / FOOT);
    public static final Unit OHM_PER_THOUSAND_FEET =
            unit("Ω/1000 ft", "ohms per thousand feet", Dimension.RESISTANCE_PER_LENGTH, 1 / (1000 * FOOT));
    public static final Unit OHM_SQUARE_MILLIMETRE_PER_METRE =
            unit("Ω·mm²/m", "ohm square millimetres per metre", Dimension.RESISTIVITY, SQUARE_MILLIMETRE_BASE);
    public static final Unit OHM_CIRCULAR_MIL_PER_FOOT =
            unit("Ω·cmil/ft", "ohm circular mils per foot", Dimension.RESISTIVITY, CIRCULAR_MIL_BASE / FOOT);
    public static final Unit METRE_PER_OHM_SQUARE_MILLIMETRE = unit(
            "m/(Ω·mm²)", "metres per ohm square millimetre", Dimension.NUMBER.per(Dimension.RESISTIVITY), 1 / SQUARE_MILLIMETRE_BASE);

    public static final Unit CELSIUS = unit("°C", "degrees Celsius", Dimension.TEMPERATURE, 1);
    public static final Unit FAHRENHEIT = add(new Unit("°F", "degrees Fahrenheit", Dimension.TEMPERATURE, new FahrenheitScale()));
    public static final Unit KELVIN = unit("K", "kelvins of difference", Dimension.TEMPERATURE, 1);
    public static final Unit PER_KELVIN = unit("/K", "per kelvin", Dimension.NUMBER.per(Dimension.TEMPERATURE), 1);
    public static final Unit KELVIN_PER_WATT =
            unit("K/W", "kelvins per watt", Dimension.TEMPERATURE.per(Dimension.POWER), 1);

    public static final Unit SECOND = unit("s", "seconds", Dimension.TIME, 1);
    public static final Unit MILLISECOND = unit("ms", "milliseconds", Dimension.TIME, 1e-3);
    public static final Unit MINUTE = unit("min", "minutes", Dimension.TIME, 60);
    public static final Unit HOUR = unit("h", "hours", Dimension.TIME, HOUR_SECONDS);
    public static final Unit DAY = unit("d", "days", Dimension.TIME, 24 * HOUR_SECONDS);
    public static final Unit AMPERE_HOUR = unit("Ah", "ampere-hours", Dimension.CHARGE, HOUR_SECONDS);
    public static final Unit WATT_HOUR = unit("Wh", "watt-hours", Dimension.ENERGY, HOUR_SECONDS);
    public static final Unit KILOWATT_HOUR = unit("kWh", "kilowatt-hours", Dimension.ENERGY, 1000 * HOUR_SECONDS);
    public static final Unit NEWTON = unit("N", "newtons", Dimension.FORCE, 1);
    public static final Unit POUND_FORCE = unit("lbf", "pounds-force", Dimension.FORCE, POUND_FORCE_BASE);

    public static final Unit AMPERE_SQUARED_SECOND =
            unit("A²s", "ampere squared seconds", Dimension.CURRENT.times(Dimension.CHARGE), 1);
    /** Unit of the constant of the adiabatic equation. */
    public static final Unit AMPERE_ROOT_SECOND_PER_SQUARE_MILLIMETRE = unit(
            "A·√s/mm²",
            "ampere root seconds per square millimetre",
            Dimension.CURRENT.times(Dimension.TIME.toTheHalves(1)).per(Dimension.AREA),
            1 / SQUARE_MILLIMETRE_BASE);
    public static final Unit AMPERE_ROOT_SECOND =
            unit("A·√s", "ampere root seconds", Dimension.CURRENT.times(Dimension.TIME.toTheHalves(1)), 1);
    /** Unit of the constant of the Onderdonk equation. */
    public static final Unit SQUARE_CIRCULAR_MIL_PER_AMPERE_SQUARED_SECOND = unit(
            "cmil²/(A²·s)",
            "square circular mils per ampere squared second",
            Dimension.AREA.times(Dimension.AREA).per(Dimension.CURRENT.times(Dimension.CHARGE)),
            CIRCULAR_MIL_BASE * CIRCULAR_MIL_BASE);
    /** Unit of the constant of Preece's equation. */
    public static final Unit AMPERE_PER_INCH_THREE_HALVES = unit(
            "A/in^1.5",
            "amperes per inch to the one and a half",
            Dimension.CURRENT.per(Dimension.LENGTH.toTheHalves(3)),
            1 / (INCH * Math.sqrt(INCH)));
    public static final Unit WATT_PER_SQUARE_METRE = unit("W/m²", "watts per square metre", Dimension.POWER.per(Dimension.AREA), 1);

    public static final Unit PERCENT = unit("%", "per cent", Dimension.NUMBER, 0.01);
    public static final Unit ONE = unit("", "", Dimension.NUMBER, 1);

    private Units() {}

    /** Every unit, in the order of this file. */
    public static List<Unit> all() {
        return List.copyOf(ALL);
    }

    private static Unit unit(String symbol, String spoken, Dimension dimension, double factor) {
        return add(new Unit(symbol, spoken, dimension, factor));
    }

    private static Unit add(Unit unit) {
        ALL.add(unit);
        return unit;
    }
}
