package loomwright.supply;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/**
 * State of charge of a flooded 12 V lead-acid battery from its voltage at rest.
 *
 * <p>Read from one published table: the answer is the two rows the voltage lies between, in %. There is no reading between rows.
 *
 * @source tables battery-ocv-bci, battery-ocv-magazine; freezing points battery-specific-gravity
 */
public final class StateOfCharge implements Calculator {
    private static final ChoiceField KIND = ChoiceField.of(
            "kind",
            "Kind of battery",
            "The tables hold for flooded lead-acid.",
            new Option("flooded", "flooded lead-acid"),
            new Option("gel-or-agm", "gel or AGM lead-acid"),
            new Option("lifepo4", "LiFePO4"));

    private static final QuantityField VOLTAGE = QuantityField.of(
            "voltage", "Voltage at rest", "At the terminals of a 12 V battery, with nothing charging and nothing drawing.", 5, 20, Units.VOLT);

    private static final QuantityField REST = QuantityField.of(
            "rest-time", "Time at rest", "How long nothing has charged the battery or drawn from it.", 0, 10_000, Units.HOUR, Units.MINUTE);

    private static final QuantityField TEMPERATURE = QuantityField.of(
                    "temperature", "Temperature of the battery", "To see whether it may freeze. Empty leaves this out.", -60, 60, Units.CELSIUS,
                    Units.FAHRENHEIT)
            .optional();

    private static final Description DESCRIPTION = new Description(
            "state-of-charge",
            "State of charge from the voltage at rest",
            "How full is this lead-acid battery?",
            List.of(
                    "A sound flooded 12 V lead-acid battery near 27 °C, long at rest.",
                    "The answer is a span between two rows of one table, because no table prints what lies between.",
                    "The rows are about 0.2 V apart: a meter that is 0.1 V wrong can move the answer by a row."),
            List.of(KIND, VOLTAGE, REST, ChargeTable.field(), capacity(), TEMPERATURE),
            List.of(
                    new Output("charge-at-least", "State of charge, at least", Units.PERCENT),
                    new Output("charge-at-most", "State of charge, at most", Units.PERCENT),
                    new Output("row-voltage-below", "Voltage of the row below", Units.VOLT),
                    new Output("row-voltage-above", "Voltage of the row above", Units.VOLT),
                    new Output("charge-left", "Ampere-hours left, at least", Units.AMPERE_HOUR),
                    new Output("deficit", "Ampere-hours to put back, at most", Units.AMPERE_HOUR)),
            List.of(
                    new NamedFormula("charge-left", ChargeFormulas.LEFT_AT_LEAST),
                    new NamedFormula("deficit", ChargeFormulas.DEFICIT_AT_MOST)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        requireFlooded(entries.choice("kind"));
        ChargeTable table = ChargeTable.of(entries.option("table"));
        Quantity measured = working.convert(
                "Turn the voltage into volts", entries.quantity("voltage"), Units.VOLT, "The table is in volts.");
        Row below = table.below(measured);
        Row above = table.above(measured);
        requireRows(table, measured, below, above);
        Quantity low = working.lookUp(
                "Take the row at or below " + measured.text() + ", printed with " + below.quantity("voltage").text(), ChargeFormulas.AT_LEAST,
                below, "charge", "The battery holds at least this much.");
        Quantity high = working.lookUp(
                "Take the row at or above " + measured.text() + ", printed with " + above.quantity("voltage").text(), ChargeFormulas.AT_MOST,
                above, "charge", "It holds at most this much. What lies between is not published.");
        working.result("charge-at-least", low);
        working.result("charge-at-most", high);
        working.result("row-voltage-below", below.quantity("voltage"));
        working.result("row-voltage-above", above.quantity("voltage"));
        Values values = Values.of(ChargeFormulas.MEASURED, measured)
                .with(ChargeFormulas.AT_LEAST, low)
                .with(ChargeFormulas.AT_MOST, high)
                .with(ChargeFormulas.ROW_BELOW, below.quantity("voltage"))
                .with(ChargeFormulas.ROW_ABOVE, above.quantity("voltage"))
                .with(ChargeFormulas.FULL, table.full().quantity("voltage"));
        if (entries.has("capacity")) {
            values = addAmpereHours(working, values.with(Symbols.CAPACITY, entries.quantity("capacity")));
        }
        ChargeChecks.addFindings(working, entries, table, values);
        ChargeChecks.addSlips(working, table, values, entries.has("capacity"));
    }

    private static QuantityField capacity() {
        return SupplyFields.CAPACITY.optional();
    }

    private static void requireFlooded(String kind) {
        if (kind.equals("lifepo4")) {
            throw new Refusal(
                    "kind",
                    "Kind of battery is LiFePO4, and its voltage hardly changes between nearly full and nearly empty: read the counter of"
                            + " its management system, or fit a shunt that counts ampere-hours");
        }
        if (kind.equals("gel-or-agm")) {
            throw new Refusal(
                    "kind", "Kind of battery is gel or AGM, which reads higher than these tables: take the table of the maker of the battery");
        }
    }

    private static void requireRows(ChargeTable table, Quantity measured, Row below, Row above) {
        if (above == null) {
            throw new Refusal(
                    "voltage",
                    "Voltage at rest is " + measured.text() + ", above the full row of this table, " + table.full().quantity("voltage").text()
                            + ": disconnect charger and panel, let the battery rest for 8 h and measure again");
        }
        if (below == null) {
            throw new Refusal(
                    "voltage",
                    "Voltage at rest is " + measured.text() + ", below the last row of this table, "
                            + table.lowest().quantity("voltage").text()
                            + (table == ChargeTable.MAGAZINE
                                    ? ": choose a table with more rows"
                                    : ": the battery is flat, or a cell has failed. Charge it and have it tested"));
        }
    }

    private static Values addAmpereHours(WorkingBuilder working, Values values) {
        Quantity left = working.compute(
                "Multiply by the capacity", ChargeFormulas.LEFT_AT_LEAST, values, Units.AMPERE_HOUR,
                "The lower row is the one to plan with.");
        Quantity deficit = working.compute(
                "Find what has to be put back", ChargeFormulas.DEFICIT_AT_MOST, values, Units.AMPERE_HOUR,
                "Charging losses come on top.");
        working.result("charge-left", left);
        working.result("deficit", deficit);
        working.next(
                "panel-yield", "How long does my panel need to put it back?", "deficit", deficit.text(), "chemistry", "lead-acid");
        return values;
    }
}
