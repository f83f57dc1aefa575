package loomwright.supply;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the calculator of a panel's yield asks and answers. */
final class YieldFields {
    static final int FACTORS = 6;
    private static final String[] NUMBERS = {"0", "1", "2", "3", "4", "5", "6"};

    static final QuantityField BATTERY_VOLTAGE = QuantityField.of(
                    "battery-voltage", "Battery voltage", "The nominal voltage that turns watt-hours into ampere-hours.", 1, 60, Units.VOLT)
            .usually("12 V");

    static final QuantityField PANEL_POWER = QuantityField.of(
            "panel-power", "Rated power of the solar panel", "From its label.", 1, 20_000, Units.WATT, Units.KILOWATT);

    static final QuantityField PEAK_SUN_HOURS = QuantityField.of(
            "peak-sun-hours", "Peak sun hours of a day",
            "For your place, month and tilt: the same number as the kilowatt-hours a day on a square metre.", 0.05, 14, Units.HOUR);

    static final Description DESCRIPTION = new Description(
            "panel-yield",
            "Yield of a solar panel",
            "How much does the panel give in a day, and how soon is the battery full again?",
            List.of(
                    "One peak sun hour is 1 kWh on each square metre, so a panel gives its rated power for that long.",
                    "The panel lies as it lay when the peak sun hours were measured, clean and out of every shadow.",
                    "Losses between panel and battery are in the efficiency. What a battery loses while charging is not counted again."),
            fields(),
            List.of(
                    new Output("yield-per-day", "Energy of a day from the panel", Units.WATT_HOUR),
                    new Output("charge-per-day", "Ampere-hours of a day from the panel", Units.AMPERE_HOUR),
                    new Output("efficiency-in-all", "Efficiency in all", Units.PERCENT),
                    new Output("balance", "Energy left over in a day", Units.WATT_HOUR),
                    new Output("panel-needed", "Panel power that would cover the day", Units.WATT),
                    new Output("panel-with-reserve", "Panel power with the reserve", Units.WATT),
                    new Output("days-to-recover", "Days to put back what was taken", Units.DAY),
                    new Output("full-sun-current", "Charging current in full sun, at most", Units.AMPERE)),
            List.of(
                    new NamedFormula("yield", YieldFormulas.DAY_YIELD),
                    new NamedFormula("balance", YieldFormulas.DAY_BALANCE),
                    new NamedFormula("days-to-recover", YieldFormulas.DAYS_TO_RECOVER),
                    new NamedFormula("panel-needed", YieldFormulas.POWER_NEEDED),
                    new NamedFormula("panel-with-reserve", YieldFormulas.WITH_RESERVE)));

    private YieldFields() {}

    static String factor(int number) {
        return "factor-" + NUMBERS[number];
    }

    static String number(int number) {
        return NUMBERS[number];
    }

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        fields.add(QuantityField.of(
                        PANEL_POWER.key(), PANEL_POWER.label(), PANEL_POWER.help() + " Empty finds the panel that your day needs.", 1, 20_000, Units.WATT,
                        Units.KILOWATT)
                .optional());
        fields.add(PEAK_SUN_HOURS);
        fields.add(QuantityField.of(
                        "efficiency", "Efficiency in all",
                        "From the panel to the battery. Empty takes the published planning value, 70 %, unless you enter factors below.", 1, 100,
                        Units.PERCENT)
                .optional());
        for (int number = 1; number <= FACTORS; number++) {
            fields.add(QuantityField.of(
                            factor(number), "Factor " + NUMBERS[number],
                            number == 1 ? "If you have a list of single factors (dirt, heat, cable, charging), enter them instead." : "", 1, 100,
                            Units.PERCENT)
                    .optional());
        }
        fields.add(DayUse.field("Empty leaves the balance out.").optional());
        fields.add(DayUse.RESERVE_FIELD);
        fields.add(QuantityField.of(
                        "deficit", "Ampere-hours to put back", "What was taken out of the battery. Empty leaves the days out.", 0.0001, 1_000_000,
                        Units.AMPERE_HOUR)
                .optional());
        fields.add(BATTERY_VOLTAGE);
        fields.add(Chemistry.field());
        fields.add(SupplyFields.CAPACITY.optional());
        fields.add(QuantityField.of(
                        "temperature", "Temperature of the battery", "LiFePO4 must not be charged below 0 °C. Empty leaves the check open.", -60,
                        80, Units.CELSIUS, Units.FAHRENHEIT)
                .optional());
        return List.copyOf(fields);
    }
}
