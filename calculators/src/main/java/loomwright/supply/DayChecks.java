package loomwright.supply;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Findings and known mistakes of a day's energy. */
final class DayChecks {
    private static final Formula HOURS_AS_CHARGE =
            new Formula(Symbols.CHARGE, Symbols.ENERGY.over(Expression.fixed(Quantity.of(1, Units.VOLT))));
    private static final Formula TIMES_VOLTAGE = new Formula(
            Symbols.CHARGE, Symbols.ENERGY.times(Symbols.VOLTAGE).over(Expression.fixed(Quantity.of(1, Units.VOLT)).squared()));
    private static final Formula COIL_DAY =
            new Formula(Symbols.ENERGY, Symbols.POWER.times(DayFormulas.WHOLE_DAY));

    private DayChecks() {}

    static void addFindings(WorkingBuilder working, List<LoadLine> lines, Values values, boolean standing) {
        if (!standing) {
            Row coil = PublishedTables.tradeFacts().row("relay-coil");
            Quantity power = coil.quantity("value", Units.WATT);
            Quantity day = COIL_DAY.value(Values.of(Symbols.POWER, power), Units.WATT_HOUR);
            working.finding(Finding.notKnown(
                    "No standing draw is counted. A relay coil alone takes about " + power.text() + " all the time, " + day.text(3) + " a day.",
                    day, coil.source(),
                    new MissingFigure("standing-current", "standing draw", "measure what flows with everything off")));
            return;
        }
        Quantity idle = values.of(DayFormulas.STANDING);
        Quantity largest = Quantity.of(0, Units.WATT_HOUR);
        for (LoadLine line : lines) {
            Quantity energy = values.of(line.energy());
            largest = energy.base() > largest.base() ? energy : largest;
        }
        working.finding(Comparison.of("The standing draw of a day", idle)
                .atMost(largest, "what the largest load takes", SupplyFields.computed())
                .exact()
                .otherwise(Verdict.CAUTION, "Switch off what nobody uses, or choose parts that draw less when idle.")
                .finding());
    }

    static void addSlips(WorkingBuilder working, List<LoadLine> lines, Values values, boolean standing) {
        Quantity voltage = values.of(Symbols.VOLTAGE);
        if (!lines.isEmpty()) {
            working.slip(
                    "duty-left-out", "energy-per-day", "The duty left out",
                    "A load that switches itself off takes energy for its share of the time only.",
                    new Formula(Symbols.ENERGY, withoutDuty(lines, standing)), values);
        }
        if (standing) {
            Quantity thousandfold = Quantity.of(1000 * values.of(DayFormulas.STANDING).value(), Units.WATT_HOUR);
            working.slip(
                    "milliamperes-for-amperes", "standing-energy", "Milliamperes taken as amperes",
                    "A thousand milliamperes are one ampere.", DayFormulas.STANDING_ENERGY,
                    values.with(DayFormulas.STANDING_CURRENT,
                            Quantity.of(1000 * values.of(DayFormulas.STANDING_CURRENT).value(), Units.AMPERE)));
            addWithoutStanding(working, lines, values, thousandfold);
        }
        working.slip(
                "watt-hours-for-ampere-hours", "charge-per-day", "Watt-hours taken as ampere-hours",
                "Watt-hours become ampere-hours only when divided by the voltage.", HOURS_AS_CHARGE, values);
        working.slip(
                "multiplied-by-the-voltage", "charge-per-day", "Multiplied by the voltage",
                "Ampere-hours times volts are watt-hours; the way back is to divide.", TIMES_VOLTAGE, values);
        Quantity other = Quantity.of(voltage.value() == 12 && voltage.unit() == Units.VOLT ? 12.8 : 12, Units.VOLT);
        working.slip(
                "another-voltage", "charge-per-day", "Divided by " + other.text(),
                "Use one system voltage from start to end.", DayFormulas.CHARGE, values.with(Symbols.VOLTAGE, other));
    }

    private static void addWithoutStanding(WorkingBuilder working, List<LoadLine> lines, Values values, Quantity thousandfold) {
        Expression sum = null;
        for (LoadLine line : lines) {
            sum = sum == null ? line.energy() : sum.plus(line.energy());
        }
        if (sum == null) {
            return;
        }
        working.slip(
                "standing-left-out", "energy-per-day", "The standing draw left out",
                "A small current that flows for 24 h can take as much as a lamp in the evening.", new Formula(Symbols.ENERGY, sum), values);
        working.slip(
                "standing-in-milliamperes", "energy-per-day", "Milliamperes of the standing draw taken as amperes",
                "A thousand milliamperes are one ampere.", new Formula(Symbols.ENERGY, sum.plus(DayFormulas.STANDING)),
                values.with(DayFormulas.STANDING, thousandfold));
    }

    private static Expression withoutDuty(List<LoadLine> lines, boolean standing) {
        Expression sum = null;
        for (LoadLine line : lines) {
            sum = sum == null ? line.energyWithoutDuty() : sum.plus(line.energyWithoutDuty());
        }
        return standing ? sum.plus(DayFormulas.STANDING) : sum;
    }
}
