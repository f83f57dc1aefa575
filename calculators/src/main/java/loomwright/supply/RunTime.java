package loomwright.supply;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * How long a battery lasts at a steady current.
 *
 * <p>run time = capacity × usable depth × share left in the cold ÷ current, in h. Holds near the rate the capacity is given at; Peukert's
 * law has its own calculator. Under load the terminals are at E − I × R.
 *
 * @source tables battery-limits, battery-size-multiplier, lead-acid-cold-capacity
 */
public final class RunTime implements Calculator {
    static final QuantityField RESTING_VOLTAGE = QuantityField.of(
                    "resting-voltage",
                    "Voltage at rest",
                    "Only with an internal resistance: the voltage at the state of charge at which you would stop.",
                    1, 60, Units.VOLT)
            .optional();

    static final QuantityField INTERNAL_RESISTANCE = QuantityField.of(
                    "internal-resistance",
                    "Internal resistance",
                    "If you know it, from the data sheet or from two readings. It pulls the voltage down under load.",
                    0.01, 10_000, Units.MILLIOHM, Units.OHM)
            .optional();

    static final QuantityField BATTERY_LIMIT = QuantityField.of(
                    "battery-limit",
                    "Current limit of the battery",
                    "The steady current its maker or its management system allows.",
                    0.1, 5000, Units.AMPERE)
            .optional();

    private static final Description DESCRIPTION = new Description(
            "run-time",
            "Run time of a battery",
            "How long does the battery last at this current?",
            List.of(
                    "The current is steady, and the battery is full at the start and as good as new.",
                    "The capacity is taken as printed. A lead-acid battery gives less at more than its rated current: see Peukert's law.",
                    "Lead-acid loses capacity in the cold by the table chosen. LiFePO4 loses too, by its maker's own table: nothing is taken off for it."),
            List.of(
                    Chemistry.field().usually(Chemistry.LEAD_ACID.key()), SupplyFields.CAPACITY, SupplyFields.LOAD_CURRENT, UsableDepth.FIELD, SupplyFields.SYSTEM_VOLTAGE, Cold.TEMPERATURE, Cold.TABLE,
                    BATTERY_LIMIT, RESTING_VOLTAGE, INTERNAL_RESISTANCE),
            List.of(
                    new Output("run-time", "Run time", Units.HOUR),
                    new Output("usable-capacity", "Usable ampere-hours", Units.AMPERE_HOUR),
                    new Output("capacity-energy", "Watt-hours of the battery", Units.WATT_HOUR),
                    new Output("usable-energy", "Usable watt-hours", Units.WATT_HOUR),
                    new Output("voltage-under-load", "Voltage under load at the end", Units.VOLT)),
            List.of(
                    new NamedFormula("usable-capacity", RunTimeFormulas.USABLE),
                    new NamedFormula("usable-capacity-cold", RunTimeFormulas.USABLE_COLD),
                    new NamedFormula("usable-energy", RunTimeFormulas.USABLE_ENERGY),
                    new NamedFormula("run-time", RunTimeFormulas.RUN_TIME),
                    new NamedFormula("voltage-under-load", RunTimeFormulas.VOLTAGE_UNDER_LOAD)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Chemistry chemistry = Chemistry.of(entries);
        Quantity current = working.convert(
                "Turn the current into amperes", entries.quantity("load-current"), Units.AMPERE, "Ampere-hours are amperes times hours.");
        Values values = Values.of(Symbols.CAPACITY, entries.quantity("capacity"))
                .with(Symbols.CURRENT, current)
                .with(Symbols.DEPTH, UsableDepth.of(entries, working, chemistry));
        Quantity cold = chemistry == Chemistry.LEAD_ACID ? Cold.share(entries, working) : null;
        values = cold == null ? values : values.with(Symbols.COLD_SHARE, cold);
        Quantity usable = working.compute(
                cold == null ? "Multiply capacity and depth" : "Multiply capacity, depth and the share left in the cold",
                cold == null ? RunTimeFormulas.USABLE : RunTimeFormulas.USABLE_COLD, values, Units.AMPERE_HOUR,
                "Only this part of the printed capacity is yours to plan with.");
        values = values.with(Symbols.USABLE, usable).with(Symbols.VOLTAGE, entries.quantity("system-voltage"));
        Quantity whole = working.compute(
                "Turn the ampere-hours of the battery into watt-hours", RunTimeFormulas.WHOLE_ENERGY, values, Units.WATT_HOUR,
                "Volts times ampere-hours are watt-hours; some batteries are sold by them.");
        Quantity usableEnergy = working.compute(
                "Turn the usable part into watt-hours", RunTimeFormulas.USABLE_ENERGY, values, Units.WATT_HOUR,
                "The loads of a day are added up in watt-hours.");
        Quantity time = working.compute(
                "Divide by the current", RunTimeFormulas.RUN_TIME, values, Units.HOUR, "Ampere-hours are amperes times hours.");
        working.result("run-time", time);
        working.result("usable-capacity", usable);
        working.result("capacity-energy", whole);
        working.result("usable-energy", usableEnergy);
        boolean loaded = entries.has("internal-resistance");
        values = loaded ? underLoad(entries, working, values) : values;
        RunTimeChecks.addFindings(working, entries, chemistry, values);
        RunTimeChecks.addSlips(working, values, cold != null, loaded);
        working.next(
                "panel-yield", "How long does my panel need to put it back?",
                "deficit", usable.text(), "chemistry", entries.choice("chemistry"));
        if (chemistry == Chemistry.LEAD_ACID) {
            working.next(
                    "peukert", "What does the battery really give at this current?",
                    "capacity", entries.quantity("capacity").text(), "load-current", current.text());
        }
    }

    private static Values underLoad(Entries entries, WorkingBuilder working, Values values) {
        Quantity resting = entries.required(RESTING_VOLTAGE);
        Values with = values.with(RunTimeFormulas.RESTING, resting)
                .with(RunTimeFormulas.RESISTANCE, entries.quantity("internal-resistance"));
        Quantity underLoad = working.compute(
                "Take what the internal resistance loses from the voltage at rest", RunTimeFormulas.VOLTAGE_UNDER_LOAD, with, Units.VOLT,
                "The current flows through the inside of the battery too.");
        if (underLoad.value() <= 0) {
            throw new Refusal(
                    "load-current",
                    "Current drawn cannot flow here: the internal resistance alone would take all of " + resting.text()
                            + ". Take a smaller current or check the resistance, which is a few milliohms in a real battery");
        }
        working.result("voltage-under-load", underLoad);
        return with.with(RunTimeFormulas.UNDER_LOAD, underLoad);
    }
}
