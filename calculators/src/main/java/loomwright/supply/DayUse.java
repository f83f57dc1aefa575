package loomwright.supply;

import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.QuantityField;
import loomwright.worked.WorkingBuilder;

/** What is used in a day, entered as watt-hours or as ampere-hours, and the reserve that is added to it. */
final class DayUse {
    /** E = U × Q. */
    static final Formula ENERGY_OF_CHARGE = new Formula(Symbols.ENERGY, Symbols.VOLTAGE.times(Symbols.CHARGE));

    static final Symbol RESERVE = Symbol.of("r", "reserve", Dimension.NUMBER);

    static final QuantityField RESERVE_FIELD = QuantityField.of(
                    "reserve", "Reserve on top",
                    "What to add for an older battery, a dull week or one load more: 20 % to 25 % is common practice. Empty adds nothing.", 0.1, 300,
                    Units.PERCENT)
            .optional();

    private DayUse() {}

    /** The field; ampere-hours are taken too, as a meter at the battery counts them. */
    static QuantityField field(String help) {
        return QuantityField.of(
                        "energy-per-day", "Energy used in a day", help + " Ampere-hours will do as well.", 0.001, 10_000_000, Units.WATT_HOUR,
                        Units.KILOWATT_HOUR)
                .orElse(0.0001, 1_000_000, Units.AMPERE_HOUR);
    }

    /** Whether it was entered as ampere-hours. */
    static boolean isCharge(Quantity entered) {
        return entered.unit().dimension().equals(Dimension.CHARGE);
    }

    /** What was entered, in watt-hours. */
    static Quantity wattHours(WorkingBuilder working, Quantity entered, Quantity voltage) {
        if (isCharge(entered)) {
            return working.compute(
                    "Turn the ampere-hours into watt-hours", ENERGY_OF_CHARGE,
                    Values.of(Symbols.VOLTAGE, voltage).with(Symbols.CHARGE, entered), Units.WATT_HOUR, "Volts times ampere-hours are watt-hours.");
        }
        return working.convert("Turn the energy into watt-hours", entered, Units.WATT_HOUR, "Volts times ampere-hours are watt-hours.");
    }
}
