package loomwright.supply;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * Energy and ampere-hours of a day, from a list of loads and a standing draw.
 *
 * <p>energy of a load = power × time × duty, in Wh; ampere-hours = energy of the day ÷ system voltage. Holds for loads that draw
 * steadily while they draw.
 *
 * @source arithmetic; the figure of the relay coil from the table trade-facts (common practice)
 */
public final class DayEnergy implements Calculator {
    @Override
    public Description description() {
        return DayFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        List<LoadLine> lines = lines(entries);
        Values values = Values.of(Symbols.VOLTAGE, entries.quantity("system-voltage"));
        for (LoadLine line : lines) {
            values = line.work(line.add(values, entries, working), working);
        }
        boolean standing = entries.has("standing-current");
        if (standing) {
            values = addStanding(entries, working, values);
        }
        Quantity energy = working.compute(
                "Add the energies up", new Formula(Symbols.ENERGY, sum(lines, standing)), values, Units.WATT_HOUR,
                "Every load takes its energy from the same battery.");
        Quantity charge = working.compute(
                "Divide by the system voltage", DayFormulas.CHARGE, values.with(Symbols.ENERGY, energy), Units.AMPERE_HOUR,
                "Watt-hours are volts times ampere-hours, and a battery is sold by its ampere-hours.");
        Quantity average = working.compute(
                "Spread the ampere-hours over the day", DayFormulas.AVERAGE_CURRENT, Values.of(Symbols.CHARGE, charge), Units.AMPERE,
                "This steady current would take as much in 24 h.");
        Quantity together = working.compute(
                "Add up the currents of all loads", new Formula(DayFormulas.TOGETHER, together(lines, standing)), values, Units.AMPERE,
                "This is what the feed carries when everything draws at once.");
        working.result("energy-per-day", energy);
        working.result("charge-per-day", charge);
        working.result("average-current", average);
        working.result("current-together", together);
        if (standing) {
            working.result("standing-energy", values.of(DayFormulas.STANDING));
        }
        for (LoadLine line : lines) {
            working.result(LoadLine.key(line.number(), "energy"), values.of(line.energy()));
        }
        values = values.with(Symbols.ENERGY, energy);
        DayChecks.addFindings(working, lines, values, standing);
        DayChecks.addSlips(working, lines, values, standing);
        addNext(entries, working, energy, average);
    }

    private static List<LoadLine> lines(Entries entries) {
        List<LoadLine> lines = new ArrayList<>();
        for (int number = 1; number <= DayFields.LOADS; number++) {
            LoadLine line = LoadLine.read(entries, number);
            if (line != null) {
                lines.add(line);
            }
        }
        if (lines.isEmpty() && !entries.has("standing-current")) {
            throw new Refusal(
                    LoadLine.key(1, "power"), "Load 1: power is empty, and so is every other load: enter at least one load or a standing draw");
        }
        return lines;
    }

    private static Values addStanding(Entries entries, WorkingBuilder working, Values values) {
        Quantity current = working.convert(
                "Turn the standing draw into amperes", entries.quantity("standing-current"), Units.AMPERE,
                "Volts times amperes are watts.");
        Values with = values.with(DayFormulas.STANDING_CURRENT, current);
        Quantity energy = working.compute(
                "Count the standing draw for 24 h", DayFormulas.STANDING_ENERGY, with, Units.WATT_HOUR,
                "It flows at night too, when nobody is there.");
        return with.with(DayFormulas.STANDING, energy);
    }

    private static Expression sum(List<LoadLine> lines, boolean standing) {
        Expression sum = standing && lines.isEmpty() ? DayFormulas.STANDING : null;
        for (LoadLine line : lines) {
            sum = sum == null ? line.energy() : sum.plus(line.energy());
        }
        return standing && !lines.isEmpty() ? sum.plus(DayFormulas.STANDING) : sum;
    }

    private static Expression together(List<LoadLine> lines, boolean standing) {
        Expression sum = standing ? DayFormulas.STANDING_CURRENT : null;
        for (LoadLine line : lines) {
            sum = sum == null ? line.current() : sum.plus(line.current());
        }
        return sum;
    }

    private static void addNext(Entries entries, WorkingBuilder working, Quantity energy, Quantity average) {
        String voltage = entries.quantity("system-voltage").text();
        working.next(
                "battery-size", "What battery does this need?", "energy-per-day", energy.text(), "battery-voltage", voltage);
        working.next("run-time", "How long does my battery last at the average current?", "load-current", average.text());
        working.next(
                "panel-yield", "Does my panel put it back?", "energy-per-day", energy.text(), "battery-voltage", voltage);
    }
}
