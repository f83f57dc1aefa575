package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * One line of a load list: a power or a current, the time it is switched on, and the share of that time it draws.
 *
 * @param number its place in the list, from 1
 * @param rate what stands for its power: a power, or the system voltage times a current
 * @param current what stands for its current
 */
record LoadLine(int number, Expression rate, Expression current) {
    private static final String[] NUMBERS = {"0", "1", "2", "3", "4", "5", "6", "7", "8"};

    static String key(int number, String part) {
        return "load-" + NUMBERS[number] + "-" + part;
    }

    static String name(int number) {
        return "Load " + NUMBERS[number];
    }

    /** The line of that number, or null if it is empty. */
    static LoadLine read(Entries entries, int number) {
        boolean byPower = entries.has(key(number, "power"));
        boolean byCurrent = entries.has(key(number, "current"));
        boolean timed = entries.has(key(number, "hours"));
        if (byPower && byCurrent) {
            throw new Refusal(
                    key(number, "current"), name(number) + " has both a power and a current: empty one of the two");
        }
        if (!byPower && !byCurrent && !timed) {
            return null;
        }
        if (!byPower && !byCurrent) {
            throw new Refusal(
                    key(number, "power"), name(number) + " has a time but no power and no current: enter one of them, or empty the time");
        }
        if (!timed) {
            throw new Refusal(key(number, "hours"), name(number) + " has no time: enter how long it is switched on in a day");
        }
        Symbol power = symbol("P", number, "power of load ", Dimension.POWER);
        Symbol current = symbol("I", number, "current of load ", Dimension.CURRENT);
        return byPower
                ? new LoadLine(number, power, power.over(Symbols.VOLTAGE))
                : new LoadLine(number, Symbols.VOLTAGE.times(current), current);
    }

    Symbol energy() {
        return symbol("E", number, "energy of a day of load ", Dimension.ENERGY);
    }

    Expression energyWithDuty() {
        return rate.times(hours()).times(duty());
    }

    Expression energyWithoutDuty() {
        return rate.times(hours());
    }

    /** These values and those of this line, brought to volts, amperes, watts and hours. */
    Values add(Values values, Entries entries, WorkingBuilder working) {
        boolean byPower = entries.has(key(number, "power"));
        Quantity rated = byPower
                ? working.convert(
                        name(number) + ": turn the power into watts", entries.quantity(key(number, "power")), Units.WATT,
                        "Watts times hours are watt-hours.")
                : working.convert(
                        name(number) + ": turn the current into amperes", entries.quantity(key(number, "current")), Units.AMPERE,
                        "Volts times amperes are watts.");
        Quantity hours = working.convert(
                name(number) + ": turn the time into hours", entries.quantity(key(number, "hours")), Units.HOUR,
                "Watts times hours are watt-hours.");
        Symbol letter = byPower
                ? symbol("P", number, "power of load ", Dimension.POWER)
                : symbol("I", number, "current of load ", Dimension.CURRENT);
        return values.with(letter, rated).with(hours(), hours).with(duty(), entries.quantity(key(number, "duty")));
    }

    /** Works out the energy of this line, and gives the values with it. */
    Values work(Values values, WorkingBuilder working) {
        Quantity energy = working.compute(
                name(number) + ": multiply power, time and duty", new Formula(energy(), energyWithDuty()), values, Units.WATT_HOUR,
                "A load takes energy only while it draws.");
        return values.with(energy(), energy);
    }

    private Symbol hours() {
        return symbol("t", number, "time switched on in a day, load ", Dimension.TIME);
    }

    private Symbol duty() {
        return symbol("d", number, "share of that time it draws, load ", Dimension.NUMBER);
    }

    private static Symbol symbol(String letter, int number, String meaning, Dimension dimension) {
        return Symbol.of(letter, NUMBERS[number], meaning + NUMBERS[number], dimension);
    }
}
