package loomwright.supply;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the calculator of a day's energy asks and answers. */
final class DayFields {
    static final int LOADS = 8;

    static final Description DESCRIPTION = new Description(
            "day-energy",
            "Energy of a day",
            "How many watt-hours and ampere-hours does a day take?",
            List.of(
                    "Powers and currents are those on the 12 V side, with the losses of converters already in them.",
                    "Each load draws the same whenever it draws. The start of a motor is too short to count.",
                    "Nothing is charged meanwhile, and losses in cables and in the battery are not counted."),
            fields(),
            outputs(),
            List.of(
                    new NamedFormula("energy", DayFormulas.ENERGY_BY_POWER),
                    new NamedFormula("energy-by-current", DayFormulas.ENERGY_BY_CURRENT),
                    new NamedFormula("standing", DayFormulas.STANDING_ENERGY),
                    new NamedFormula("charge", DayFormulas.CHARGE),
                    new NamedFormula("average-current", DayFormulas.AVERAGE_CURRENT)));

    private DayFields() {}

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>();
        for (int number = 1; number <= LOADS; number++) {
            addLoad(fields, number);
        }
        fields.add(standing());
        fields.add(SupplyFields.SYSTEM_VOLTAGE);
        return List.copyOf(fields);
    }

    private static QuantityField standing() {
        return QuantityField.of(
                        "standing-current",
                        "Standing draw",
                        "What flows all day and night: pilot lights, relay coils, converters with nothing plugged in.",
                        0, 20_000, Units.MILLIAMPERE, Units.AMPERE)
                .optional();
    }

    private static void addLoad(List<Field> fields, int number) {
        String name = LoadLine.name(number);
        fields.add(QuantityField.of(
                        LoadLine.key(number, "power"), name + ": power", number == 1 ? "Enter a power or a current, not both." : "",
                        0.001, 10_000, Units.WATT)
                .optional());
        fields.add(QuantityField.of(
                        LoadLine.key(number, "current"), name + ": current", "", 0.0001, 500, Units.AMPERE, Units.MILLIAMPERE)
                .optional());
        fields.add(QuantityField.of(
                        LoadLine.key(number, "hours"), name + ": time switched on in a day", "", 0, 24, Units.HOUR, Units.MINUTE)
                .optional());
        fields.add(QuantityField.of(
                        LoadLine.key(number, "duty"), name + ": share of that time it draws",
                        number == 1 ? "A refrigerator or a charger that switches itself off draws for a part of the time only." : "",
                        0, 100, Units.PERCENT)
                .usually("100 %"));
    }

    private static List<Output> outputs() {
        List<Output> outputs = new ArrayList<>();
        outputs.add(new Output("energy-per-day", "Energy of a day", Units.WATT_HOUR));
        outputs.add(new Output("charge-per-day", "Ampere-hours of a day", Units.AMPERE_HOUR));
        outputs.add(new Output("average-current", "Average current over the day", Units.AMPERE));
        outputs.add(new Output("current-together", "Current with every load drawing at once", Units.AMPERE));
        outputs.add(new Output("standing-energy", "Energy of the standing draw", Units.WATT_HOUR));
        for (int number = 1; number <= LOADS; number++) {
            outputs.add(new Output(LoadLine.key(number, "energy"), LoadLine.name(number) + ": energy", Units.WATT_HOUR));
        }
        return List.copyOf(outputs);
    }
}
