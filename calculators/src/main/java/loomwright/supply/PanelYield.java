package loomwright.supply;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
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
        if (!entries.has("panel-power") && !entries.has("energy-per-day")) {
            throw new Refusal(
                    "panel-power",
                    "Rated power of the solar panel and Energy used in a day are both empty: enter the panel to see its yield, or the energy to "
                            + "find the panel");
        }
        Quantity efficiency = YieldEfficiency.of(entries, working);
        working.result("efficiency-in-all", efficiency);
        Values values = Values.of(YieldFormulas.SUN, entries.quantity("peak-sun-hours"))
                .with(YieldFormulas.EFFICIENCY, efficiency)
                .with(Symbols.VOLTAGE, entries.quantity("battery-voltage"));
        if (entries.has("panel-power")) {
            ofPanel(entries, working, values.with(YieldFormulas.PANEL, entries.quantity("panel-power")));
        } else {
            Values used = needed(entries, working, used(entries, working, values));
            YieldChecks.addNeededSlips(working, used);
            working.next(
                    "panel-yield", "What does a panel of that size give, and how soon is the battery full?",
                    "panel-power", used.of(YieldFormulas.NEEDED).text(), "peak-sun-hours", entries.quantity("peak-sun-hours").text());
        }
    }

    private static void ofPanel(Entries entries, WorkingBuilder working, Values given) {
        Quantity yield = working.compute(
                "Multiply power, peak sun hours and efficiency", YieldFormulas.DAY_YIELD, given, Units.WATT_HOUR,
                "The sun of a day is counted as so many hours of full sun.", Source.of(Documents.peakSunHourPage(), ""));
        Values values = given.with(YieldFormulas.YIELD, yield);
        Quantity charge = working.compute(
                "Divide by the battery voltage", YieldFormulas.DAY_CHARGE, values, Units.AMPERE_HOUR,
                "A battery is sold by its ampere-hours.");
        working.result("yield-per-day", yield);
        working.result("charge-per-day", charge);
        values = entries.has("energy-per-day") ? balance(entries, working, values) : values;
        values = entries.has("deficit") ? recover(entries, working, values) : values;
        Quantity current = working.compute(
                "Find the charging current in full sun", YieldFormulas.FULL_SUN_CURRENT, values, Units.AMPERE,
                "A charger that loses nothing would give this much.");
        working.result("full-sun-current", current);
        YieldChecks.addFindings(working, entries, values, current);
        YieldChecks.addSlips(working, values, entries.has("energy-per-day"), recovers(values, entries));
        working.next("voltage-drop", "What does the cable of the panel lose?", "current", current.text());
    }

    private static Values used(Entries entries, WorkingBuilder working, Values values) {
        return values.with(
                YieldFormulas.USED, DayUse.wattHours(working, entries.quantity("energy-per-day"), entries.quantity("battery-voltage")));
    }

    private static Values balance(Entries entries, WorkingBuilder working, Values given) {
        Values values = used(entries, working, given);
        Quantity balance = working.compute(
                "Take the energy used from the yield", YieldFormulas.DAY_BALANCE, values, Units.WATT_HOUR,
                "Only what is left over can fill the battery.");
        working.result("balance", balance);
        return needed(entries, working, values.with(YieldFormulas.BALANCE, balance));
    }

    /** The panel that would cover the day, with the reserve if there is one. */
    private static Values needed(Entries entries, WorkingBuilder working, Values given) {
        Quantity needed = working.compute(
                "Find the panel that would cover the day", YieldFormulas.POWER_NEEDED, given, Units.WATT,
                "The energy used, divided by what each watt of panel gives in a day.");
        working.result("panel-needed", needed);
        Values values = given.with(YieldFormulas.NEEDED, needed);
        if (entries.has("reserve")) {
            working.result("panel-with-reserve", working.compute(
                    "Add the reserve", YieldFormulas.WITH_RESERVE, values.with(DayUse.RESERVE, entries.quantity("reserve")), Units.WATT,
                    "Dull weeks, dirt and age take more than the mean of a month shows."));
        }
        return values;
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
