package loomwright.supply;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.WorkingBuilder;

/**
 * The battery a day's energy asks for.
 *
 * <p>capacity = ampere-hours of a day × days ÷ usable depth × multiplier for the cold, in Ah. The rule of five, 5 × Wh ÷ V, is beside it.
 *
 * @source battery sizing worksheet with temperature multipliers; battery sizing rule of five; table battery-limits
 */
public final class BatterySize implements Calculator {
    private static final Formula HOURS_AS_CHARGE =
            new Formula(Symbols.CHARGE, Symbols.ENERGY.over(Expression.fixed(Quantity.of(1, Units.VOLT))));

    private static final QuantityField ENERGY = DayUse.field("From the energy of your day.");

    private static final QuantityField DAYS = QuantityField.of(
                    "days", "Days without charging", "How many days the battery must last when nothing charges it.", 0.25, 60, Units.ONE)
            .usually("1");

    private static final Description DESCRIPTION = new Description(
            "battery-size",
            "Size of a battery",
            "How many ampere-hours should the battery have?",
            List.of(
                    "Nothing charges the battery on these days, and every day takes the same.",
                    "The usable depth is for planning; the maker's figure rules.",
                    "Cold is counted for lead-acid only. LiFePO4 loses too, by its maker's own table: enter a smaller depth."),
            List.of(ENERGY, YieldFields.BATTERY_VOLTAGE, DAYS, Chemistry.field().usually(Chemistry.LEAD_ACID.key()), UsableDepth.FIELD, Cold.TEMPERATURE,
                    DayUse.RESERVE_FIELD),
            List.of(
                    new Output("capacity", "Capacity needed", Units.AMPERE_HOUR),
                    new Output("capacity-with-reserve", "Capacity with the reserve", Units.AMPERE_HOUR),
                    new Output("capacity-energy", "Watt-hours of such a battery", Units.WATT_HOUR),
                    new Output("charge-per-day", "Ampere-hours of a day", Units.AMPERE_HOUR),
                    new Output("rule-of-five", "Capacity by the rule of five", Units.AMPERE_HOUR)),
            List.of(
                    new NamedFormula("charge", SizeFormulas.CHARGE),
                    new NamedFormula("capacity", SizeFormulas.CAPACITY),
                    new NamedFormula("capacity-cold", SizeFormulas.CAPACITY_COLD),
                    new NamedFormula("capacity-with-reserve", SizeFormulas.WITH_RESERVE),
                    new NamedFormula("capacity-energy", SizeFormulas.CAPACITY_ENERGY),
                    new NamedFormula("rule-of-five", SizeFormulas.RULE_OF_FIVE)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Chemistry chemistry = Chemistry.of(entries);
        Quantity entered = entries.quantity("energy-per-day");
        Quantity energy = DayUse.wattHours(working, entered, entries.quantity("battery-voltage"));
        Values values = Values.of(Symbols.ENERGY, energy)
                .with(Symbols.VOLTAGE, entries.quantity("battery-voltage"))
                .with(SizeFormulas.DAYS, entries.quantity("days"));
        Quantity charge = DayUse.isCharge(entered) ? entered : working.compute(
                "Divide by the battery voltage", SizeFormulas.CHARGE, values, Units.AMPERE_HOUR, "A battery is sold by its ampere-hours.");
        values = values.with(Symbols.CHARGE, charge).with(Symbols.DEPTH, UsableDepth.of(entries, working, chemistry));
        boolean cold = chemistry == Chemistry.LEAD_ACID && entries.has("temperature");
        if (cold) {
            values = values.with(Symbols.MULTIPLIER, Cold.multiplier(working, entries.quantity("temperature")));
        }
        Quantity capacity = working.compute(
                cold ? "Multiply by the days and for the cold, and divide by the depth" : "Multiply by the days and divide by the depth",
                cold ? SizeFormulas.CAPACITY_COLD : SizeFormulas.CAPACITY, values, Units.AMPERE_HOUR,
                "The battery must hold more than you take, because a part of it stays in.", Source.of(Documents.batterySizingWorksheet(), ""));
        Quantity withReserve = withReserve(entries, working, values.with(SizeFormulas.NEEDED, capacity));
        Quantity whole = working.compute(
                "Turn the ampere-hours of the battery into watt-hours", SizeFormulas.CAPACITY_ENERGY,
                values.with(SizeFormulas.NEEDED, withReserve), Units.WATT_HOUR, "Some batteries are sold by their watt-hours.");
        Quantity byFive = working.compute(
                "Compare with the rule of five", SizeFormulas.RULE_OF_FIVE, values, Units.AMPERE_HOUR,
                "A rule of thumb that has days, depth and cold in one number.", Source.of(Documents.batteryRuleOfFive(), ""));
        working.result("capacity", capacity);
        if (entries.has("reserve")) {
            working.result("capacity-with-reserve", withReserve);
        }
        working.result("capacity-energy", whole);
        working.result("charge-per-day", charge);
        working.result("rule-of-five", byFive);
        if (chemistry == Chemistry.LIFEPO4 && entries.has("temperature")) {
            Cold.addLithiumFindings(working, entries.quantity("temperature"));
        }
        addSlips(working, values, cold);
        working.next(
                "panel-yield", "What panel puts this back every day?",
                "energy-per-day", energy.text(), "battery-voltage", entries.quantity("battery-voltage").text(), "chemistry",
                        entries.choice("chemistry"));
        working.next(
                "run-time", "How long does it last at my current?",
                "capacity", withReserve.text(), "chemistry", entries.choice("chemistry"));
    }

    private static Quantity withReserve(Entries entries, WorkingBuilder working, Values values) {
        if (!entries.has("reserve")) {
            return values.of(SizeFormulas.NEEDED);
        }
        return working.compute(
                "Add the reserve", SizeFormulas.WITH_RESERVE, values.with(DayUse.RESERVE, entries.quantity("reserve")), Units.AMPERE_HOUR,
                "A battery loses capacity as it grows old, and a day may take more than planned.");
    }

    private static void addSlips(WorkingBuilder working, Values values, boolean cold) {
        working.slip(
                "watt-hours-for-ampere-hours", "charge-per-day", "Watt-hours taken as ampere-hours",
                "Watt-hours become ampere-hours only when divided by the voltage.", HOURS_AS_CHARGE, values);
        working.slip(
                "depth-left-out", "capacity", "The usable depth left out", "A battery of this size would be emptied every time.",
                cold ? SizeFormulas.DEPTH_LEFT_OUT_COLD : SizeFormulas.DEPTH_LEFT_OUT, values);
        working.slip(
                "multiplied-by-the-depth", "capacity", "Multiplied by the depth", "The battery must be larger than what you take, so divide.",
                cold ? SizeFormulas.MULTIPLIED_BY_DEPTH_COLD : SizeFormulas.MULTIPLIED_BY_DEPTH, values);
        working.slip(
                "days-left-out", "capacity", "The days left out", "Every day without charging takes as much again.",
                cold ? SizeFormulas.DAYS_LEFT_OUT_COLD : SizeFormulas.DAYS_LEFT_OUT, values);
        if (cold) {
            working.slip(
                    "cold-turned-over", "capacity", "The cold factor used the wrong way round", "In the cold the battery must be larger.",
                    SizeFormulas.COLD_TURNED_OVER, values);
            working.slip(
                    "cold-left-out", "capacity", "The cold left out", "A cold lead-acid battery has less to give.", SizeFormulas.CAPACITY, values);
        }
    }
}
