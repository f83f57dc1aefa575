package loomwright.switching;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Comparison;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * What a relay coil takes from the battery in a day.
 *
 * <p>I = U ÷ R, Q = I × t. Holds for a coil of wire without economy circuit, at 20 °C; a warm coil has more resistance and takes less.
 *
 * @source Ohm's law; data sheets of 12 V relays in the table relay-data
 */
public final class CoilDay implements Calculator {
    private static final QuantityField CAPACITY = QuantityField.of(
                    "battery-capacity", "Capacity of the battery", "Printed on the battery, in ampere-hours.", 1, 10_000, Units.AMPERE_HOUR)
            .usually("100 Ah");

    private static final Formula WATTS_AS_AMPERES = new Formula(
            SwitchSymbols.CHARGE,
            SwitchSymbols.COIL_POWER.over(Expression.fixed(Quantity.of(1, Units.VOLT))).times(SwitchSymbols.HOURS));

    private static final Description DESCRIPTION = new Description(
            "coil-day",
            "A relay coil for a day",
            "What does the relay itself take from my battery in a day?",
            List.of(
                    "The coil is plain wire at 20 °C, without an economy circuit.",
                    "It is held on all the time entered, whether or not anything behind it is in use."),
            List.of(
                    CoilFields.COIL_RESISTANCE,
                    CoilFields.COIL_POWER,
                    CoilFields.RATED_VOLTAGE,
                    CoilFields.SUPPLY_VOLTAGE,
                    CoilFields.HOURS,
                    CAPACITY),
            List.of(
                    new Output("coil-current", "Current in the coil", Units.MILLIAMPERE),
                    new Output("coil-power", "Power of the coil", Units.WATT),
                    new Output("charge-per-day", "Charge taken in a day", Units.AMPERE_HOUR),
                    new Output("energy-per-day", "Energy taken in a day", Units.WATT_HOUR),
                    new Output("share-of-battery", "Share of the battery in a day", Units.PERCENT)),
            List.of(
                    new NamedFormula("resistance-from-power", CoilFormulas.RESISTANCE_FROM_POWER),
                    new NamedFormula("current", CoilFormulas.CURRENT),
                    new NamedFormula("power", CoilFormulas.POWER),
                    new NamedFormula("charge", CoilFormulas.CHARGE),
                    new NamedFormula("energy", CoilFormulas.ENERGY)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity resistance = CoilResistance.of(entries, working);
        Quantity supply = entries.quantity(CoilFields.SUPPLY_VOLTAGE.key());
        Quantity hours = working.convert(
                "Turn the time into hours", entries.quantity(CoilFields.HOURS.key()), Units.HOUR, "Batteries are counted in ampere-hours.");
        Values values = Values.of(SwitchSymbols.SUPPLY, supply)
                .with(SwitchSymbols.COIL_RESISTANCE, resistance)
                .with(SwitchSymbols.HOURS, hours)
                .with(SwitchSymbols.CAPACITY, entries.quantity(CAPACITY.key()));
        Quantity current = working.compute(
                "Find the current in the coil", CoilFormulas.CURRENT, values, Units.AMPERE,
                "Ohm's law at the voltage the battery really has.");
        values = values.with(SwitchSymbols.COIL_CURRENT, current);
        Quantity power = working.compute(
                "Find the power it turns into heat", CoilFormulas.POWER, values, Units.WATT, "Holding a contact shut does no work: all of it warms the relay.");
        Quantity charge = working.compute(
                "Multiply the current by the time", CoilFormulas.CHARGE, values, Units.AMPERE_HOUR,
                "A small current that never stops empties a battery.");
        values = values.with(SwitchSymbols.COIL_POWER, power).with(SwitchSymbols.CHARGE, charge);
        Quantity energy = working.compute(
                "Multiply the power by the time", CoilFormulas.ENERGY, values, Units.WATT_HOUR, "Energy is what the panel must bring back.");
        Quantity share = working.compute(
                "Compare it with the battery", CoilFormulas.SHARE, values, Units.PERCENT, "A share is easier to judge than ampere-hours.");
        working.result("coil-current", current);
        working.result("coil-power", power);
        working.result("charge-per-day", charge);
        working.result("energy-per-day", energy);
        working.result("share-of-battery", share);
        addFindings(working, supply, current);
        addSlips(working, entries, values);
        working.next(
                "switch-compare", "Would a solid-state switch cost less at my current?",
                "coil-resistance", resistance.text(), "supply-voltage", supply.text(), "hours-on", hours.text());
    }

    private static void addFindings(WorkingBuilder working, Quantity supply, Quantity current) {
        working.finding(Comparison.of("The supply voltage", supply)
                .atLeast(
                        CoilFormulas.mustOperate(), "that at which a 12 V relay of the 70 A class must have pulled in",
                        CoilFormulas.relay("70-a-operate").source())
                .otherwise(Verdict.STOP, "Below its pull-in voltage a relay chatters and its contacts burn: take one for a lower voltage.")
                .finding());
        Row trigger = PublishedTables.tradeFacts().row("ssr-trigger");
        Comparison solid = Comparison.of("The coil's current", current.in(Units.MILLIAMPERE))
                .atMost(trigger.quantity("value-to", Units.MILLIAMPERE), "the most that a d.c. solid-state relay takes to trigger", trigger.source())
                .exact()
                .otherwise(Verdict.CAUTION, "If it must stay on for hours each day, compare the two before you choose.");
        if (!solid.holds()) {
            working.finding(solid.finding());
        }
    }

    private static void addSlips(WorkingBuilder working, Entries entries, Values values) {
        Quantity rated = entries.quantity(CoilFields.RATED_VOLTAGE.key());
        working.slip(
                "rated-voltage-taken", "coil-current", "The rated voltage used in place of the supply",
                "The battery gives more than 12 V most of the time, and the coil takes more with it.", CoilFormulas.CURRENT,
                values.with(SwitchSymbols.SUPPLY, rated));
        working.slip(
                "watts-for-amperes", "charge-per-day", "Watts times hours used in place of ampere-hours",
                "Watts times hours are watt-hours; divide them by the voltage to get ampere-hours.", WATTS_AS_AMPERES, values);
        working.slip(
                "working-day-only", "charge-per-day", "Only eight hours counted",
                "The coil takes its current as long as it is held on, whether anything is in use or not.", CoilFormulas.CHARGE,
                values.with(SwitchSymbols.HOURS, Quantity.of(8, Units.HOUR)));
        Values atRated = values.with(SwitchSymbols.SUPPLY, rated);
        Quantity ratedCurrent = CoilFormulas.CURRENT.value(atRated, Units.AMPERE);
        working.slip(
                "power-grows-with-voltage-only", "coil-power", "The current of the rated voltage kept at another voltage",
                "In a coil the current grows with the voltage as well, so the power grows with its square.", CoilFormulas.POWER,
                values.with(SwitchSymbols.COIL_CURRENT, ratedCurrent));
    }
}
