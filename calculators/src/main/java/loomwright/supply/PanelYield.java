package loomwright.supply;

import java.util.Map;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * What a solar panel gives in a day, what is left over, and how long it takes to put back what was drawn.
 *
 * <p>yield = rated power × peak sun hours × efficiency, in Wh; panel needed = energy used ÷ (peak sun hours × efficiency), in W.
 *
 * @source peak sun hour page; efficiency for planning from the table solar-sizing; limits of charging from the table battery-limits
 */
public final class PanelYield implements Calculator {
    @Override
    public Description description() {
        return YieldFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity efficiency = YieldEfficiency.of(entries, working);
        Values values = Values.of(YieldFormulas.PANEL, entries.quantity("panel-power"))
                .with(YieldFormulas.SUN, entries.quantity("peak-sun-hours"))
                .with(YieldFormulas.EFFICIENCY, efficiency)
                .with(Symbols.VOLTAGE, entries.quantity("battery-voltage"));
        Quantity yield = working.compute(
                "Multiply power, peak sun hours and efficiency", YieldFormulas.DAY_YIELD, values, Units.WATT_HOUR,
                "The sun of a day is counted as so many hours of full sun.", Source.of(Documents.peakSunHourPage(), ""));
        values = values.with(YieldFormulas.YIELD, yield);
        Quantity charge = working.compute(
                "Divide by the battery voltage", YieldFormulas.DAY_CHARGE, values, Units.AMPERE_HOUR,
                "A battery is sold by its ampere-hours.");
        working.result("yield-per-day", yield);
        working.result("charge-per-day", charge);
        working.result("efficiency-in-all", efficiency);
        values = entries.has("energy-per-day") ? balance(entries, working, values) : values;
        values = entries.has("deficit") ? recover(entries, working, values) : values;
        Quantity current = working.compute(
                "Find the charging current in full sun", YieldFormulas.FULL_SUN_CURRENT, values, Units.AMPERE,
                "A charger that loses nothing would give this much.");
        working.result("full-sun-current", current);
        YieldChecks.addFindings(working, entries, values, current);
        YieldChecks.addSlips(working, values, entries.has("energy-per-day"), recovers(values, entries));
        working.next("voltage-drop", "What does the cable of the panel lose?", Map.of("current", current.text()));
    }

    private static Values balance(Entries entries, WorkingBuilder working, Values given) {
        Quantity used = working.convert(
                "Turn the energy used into watt-hours", entries.quantity("energy-per-day"), Units.WATT_HOUR, "The yield is in watt-hours.");
        Values values = given.with(YieldFormulas.USED, used);
        Quantity balance = working.compute(
                "Take the energy used from the yield", YieldFormulas.DAY_BALANCE, values, Units.WATT_HOUR,
                "Only what is left over can fill the battery.");
        Quantity needed = working.compute(
                "Find the panel that would cover the day", YieldFormulas.POWER_NEEDED, values, Units.WATT,
                "The same formula the other way round.");
        working.result("balance", balance);
        working.result("panel-needed", needed);
        return values.with(YieldFormulas.BALANCE, balance);
    }

    /** Without an energy used, the whole yield goes into the battery. */
    private static Values recover(Entries entries, WorkingBuilder working, Values given) {
        Values values = given.with(YieldFormulas.DEFICIT, entries.quantity("deficit"));
        Quantity energy = working.compute(
                "Turn the ampere-hours into watt-hours", YieldFormulas.ENERGY_TO_PUT_BACK, values, Units.WATT_HOUR,
                "Volts times ampere-hours are watt-hours.");
        values = values.with(YieldFormulas.DEFICIT_ENERGY, energy);
        if (!entries.has("energy-per-day")) {
            values = values.with(YieldFormulas.BALANCE, values.of(YieldFormulas.YIELD));
        }
        if (recovers(values, entries)) {
            Quantity days = working.compute(
                    "Divide by what is left over in a day", YieldFormulas.DAYS_TO_RECOVER, values, Units.DAY,
                    "Each day puts so much back.");
            working.result("days-to-recover", days);
        }
        return values;
    }

    private static boolean recovers(Values values, Entries entries) {
        return entries.has("deficit") && values.of(YieldFormulas.BALANCE).base() > 1e-6 * values.of(YieldFormulas.YIELD).base();
    }
}
