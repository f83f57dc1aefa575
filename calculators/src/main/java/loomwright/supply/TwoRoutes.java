package loomwright.supply;

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
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * Charging a device direct from 12 V against inverter and mains adapter, over a day.
 *
 * <p>direct = E ÷ η_d + idle; by inverter = E ÷ (η_i × η_a) + idle, in Wh, with E the energy into the device. Idle is standing draw times
 * the time a part is switched on without charging.
 *
 * @source arithmetic; best efficiency seen in print from the table dc-dc-efficiency
 */
public final class TwoRoutes implements Calculator {
    @Override
    public Description description() {
        return RouteFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Values values = read(entries, working);
        values = step(working, values, "Multiply power and time", RouteFormulas.DEVICE_ENERGY, "This much the device must get, by either way.");
        values = step(
                working, values, "Count the direct charger while it idles", RouteFormulas.DIRECT_IDLE_ENERGY,
                "What is switched on takes something, even with nothing to charge.");
        values = step(
                working, values, "Divide by the efficiency of the direct charger and add what it takes idle", RouteFormulas.DIRECT_ENERGY,
                "More goes in than comes out, so divide.");
        values = step(
                working, values, "Count inverter and adapter while they idle", RouteFormulas.INVERTER_IDLE_ENERGY,
                "An inverter left on takes its standing draw all day.");
        values = step(
                working, values, "Divide by both efficiencies and add what they take idle", RouteFormulas.INVERTER_ENERGY,
                "The adapter loses some of what the inverter has left over, so the efficiencies multiply.");
        values = step(working, values, "Take one from the other", RouteFormulas.EXTRA, "This is what the battery pays for the longer way.");
        Quantity charge = working.compute(
                "Divide by the system voltage", RouteFormulas.EXTRA_AMPERE_HOURS, values, Units.AMPERE_HOUR,
                "A battery is sold by its ampere-hours.");
        Quantity direct = values.of(RouteFormulas.DIRECT);
        working.result("direct-energy", direct);
        working.result("inverter-energy", values.of(RouteFormulas.BY_INVERTER));
        working.result("difference", values.of(RouteFormulas.DIFFERENCE));
        working.result("difference-charge", charge);
        working.result("device-energy", values.of(RouteFormulas.DEVICE));
        working.result("direct-lost", lost(working, RouteFormulas.DIRECT_LOST, values));
        working.result("inverter-lost", lost(working, RouteFormulas.INVERTER_LOST, values));
        working.result(
                "inverter-route-efficiency",
                working.compute(
                        "See what share of the energy arrives", RouteFormulas.WHOLE_EFFICIENCY, values, Units.PERCENT,
                        "Standing draw counts against the whole day."));
        addBreakEven(working, values);
        addFindings(working, values);
        addSlips(working, values);
        working.next("day-energy", "Put the direct way into my day", "load-1-power", average(values).text(), "load-1-hours", "24 h");
    }

    private static Values read(Entries entries, WorkingBuilder working) {
        Quantity charging = hours(entries, working, "charging-hours");
        Quantity direct = hours(entries, working, "direct-hours");
        Quantity inverter = hours(entries, working, "inverter-hours");
        requireLonger("direct-hours", "Time the direct charger is switched on", direct, charging);
        requireLonger("inverter-hours", "Time the inverter is switched on", inverter, charging);
        return Values.of(RouteFormulas.POWER, entries.quantity("device-power"))
                .with(RouteFormulas.HOURS, charging)
                .with(RouteFormulas.DIRECT_HOURS, direct)
                .with(RouteFormulas.INVERTER_HOURS, inverter)
                .with(RouteFormulas.DIRECT_EFFICIENCY, entries.quantity("direct-efficiency"))
                .with(RouteFormulas.INVERTER_EFFICIENCY, entries.quantity("inverter-efficiency"))
                .with(RouteFormulas.ADAPTER_EFFICIENCY, entries.quantity("adapter-efficiency"))
                .with(RouteFormulas.DIRECT_STANDING, entries.quantity("direct-standing"))
                .with(RouteFormulas.INVERTER_STANDING, entries.quantity("inverter-standing"))
                .with(RouteFormulas.ADAPTER_STANDING, entries.quantity("adapter-standing"))
                .with(Symbols.VOLTAGE, entries.quantity("system-voltage"));
    }

    private static Quantity hours(Entries entries, WorkingBuilder working, String key) {
        return working.convert("Turn the time into hours", entries.quantity(key), Units.HOUR, "Watts times hours are watt-hours.");
    }

    private static void requireLonger(String key, String label, Quantity on, Quantity charging) {
        if (on.base() < charging.base()) {
            throw new Refusal(
                    key, label + " is " + on.text() + ", but it charges for " + charging.text() + ": enter at least the time it charges");
        }
    }

    private static Values step(WorkingBuilder working, Values values, String words, Formula formula, String why) {
        return values.with(formula.subject(), working.compute(words, formula, values, Units.WATT_HOUR, why));
    }

    private static Quantity lost(WorkingBuilder working, Formula formula, Values values) {
        return working.compute(
                "Take what the device gets from what the battery gives", formula, values, Units.WATT_HOUR, "The rest becomes heat.");
    }

    /** Without a finite, possible efficiency there is no break-even: then the direct way loses by its standing draw alone. */
    private static void addBreakEven(WorkingBuilder working, Values values) {
        double room = values.of(RouteFormulas.BY_INVERTER).base() - values.of(RouteFormulas.DIRECT_IDLE).base();
        if (room >= values.of(RouteFormulas.DEVICE).base()) {
            working.result(
                    "break-even-efficiency",
                    working.compute(
                            "Find the efficiency at which both take the same", RouteFormulas.BREAK_EVEN_EFFICIENCY, values, Units.PERCENT,
                            "A direct charger worse than this would be no gain."));
        }
    }

    private static void addFindings(WorkingBuilder working, Values values) {
        working.finding(Comparison.of("What the direct way takes in a day", values.of(RouteFormulas.DIRECT))
                .atMost(values.of(RouteFormulas.BY_INVERTER), "what the way by inverter takes", SupplyFields.computed())
                .exact()
                .otherwise(
                        Verdict.CAUTION, "Switch the direct charger off when it is not charging, or check the efficiencies you entered.")
                .finding());
        Row best = PublishedTables.dcDcEfficiency().row("synchronous-half-load");
        Comparison printed = Comparison.of("The efficiency of the direct charger", values.of(RouteFormulas.DIRECT_EFFICIENCY))
                .atMost(best.quantity("efficiency"), "the best we have seen published", best.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Take the figure of the maker, at your load.");
        if (!printed.holds()) {
            working.finding(printed.finding());
        }
    }

    private static void addSlips(WorkingBuilder working, Values values) {
        working.slip(
                "multiplied-by-the-efficiency", "direct-energy", "Multiplied by the efficiency",
                "More must go in than comes out, so divide.", RouteFormulas.DIRECT_MULTIPLIED, values);
        working.slip(
                "efficiency-left-out", "direct-energy", "The efficiency of the charger left out",
                "A converter keeps some of the energy as heat.", RouteFormulas.DIRECT_WITHOUT_LOSS, values);
        working.slip(
                "adapter-left-out", "inverter-energy", "The losses of the adapter left out",
                "The adapter comes after the inverter and loses some again.", RouteFormulas.ADAPTER_LEFT_OUT, values);
        working.slip(
                "efficiencies-averaged", "inverter-energy", "The mean of the two efficiencies taken",
                "One loss follows the other, so the efficiencies multiply.", RouteFormulas.EFFICIENCIES_AVERAGED, values);
        working.slip(
                "multiplied-by-both-efficiencies", "inverter-energy", "Multiplied by the efficiencies",
                "More must go in than comes out, so divide.", RouteFormulas.INVERTER_MULTIPLIED, values);
        working.slip(
                "standing-left-out", "inverter-energy", "The standing draw left out",
                "An inverter left on takes its standing draw all day.", RouteFormulas.STANDING_LEFT_OUT, values);
    }

    private static Quantity average(Values values) {
        return Quantity.of(values.of(RouteFormulas.DIRECT).value() / 24, Units.WATT);
    }
}
