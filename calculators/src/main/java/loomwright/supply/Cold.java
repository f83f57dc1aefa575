package loomwright.supply;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.ChoiceField;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Option;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What cold takes from a lead-acid battery, by one of two published tables. There is no reading between rows: the colder row counts. */
final class Cold {
    static final QuantityField TEMPERATURE = QuantityField.of(
                    "temperature",
                    "Temperature of the battery",
                    "The coldest you plan for. Empty counts no cold.",
                    -40, 60, Units.CELSIUS, Units.FAHRENHEIT)
            .optional();

    static final ChoiceField TABLE = ChoiceField.of(
            "cold-table",
            "Table for the cold (lead-acid)",
            "The worksheet prints seven temperatures down to \u22126.7 °C; the army manual prints 0 °C and \u221217.8 °C.",
            new Option("sizing-worksheet", "battery sizing worksheet"),
            new Option("army-manual", "army manual TM 10-6140-200-14"));

    static final Formula SHARE_OF_MULTIPLIER = new Formula(Symbols.COLD_SHARE, Expression.number(1).over(Symbols.MULTIPLIER));

    /** The tables were printed in °F; their °C are rounded by as much as this. */
    private static final double ROUNDED = 0.1;

    private static final String WHY = "No table is read between its rows: the colder one is on the careful side.";

    private Cold() {}

    /** The multiplier of the sizing worksheet at {@code temperature}. */
    static Quantity multiplier(WorkingBuilder working, Quantity temperature) {
        Row row = row(PublishedTables.batterySizeMultiplier(), "temperature", temperature);
        return working.lookUp(
                "Read the multiplier of the row " + row.name() + " from the table", Symbols.MULTIPLIER, row, "multiplier", Units.ONE, WHY);
    }

    /** The share of the capacity left at the temperature entered, or null if none was. */
    static Quantity share(Entries entries, WorkingBuilder working) {
        Quantity temperature = entries.quantity("temperature");
        if (temperature == null) {
            return null;
        }
        if (entries.choice("cold-table").equals("sizing-worksheet")) {
            Quantity multiplier = multiplier(working, temperature);
            return working.compute(
                    "Turn the multiplier into a share", SHARE_OF_MULTIPLIER, Values.of(Symbols.MULTIPLIER, multiplier), Units.PERCENT,
                    "A battery that must be so much larger has so much less to give.");
        }
        Row row = row(PublishedTables.leadAcidColdCapacity(), "electrolyte", temperature);
        return working.lookUp(
                "Read the share of the capacity of the row " + row.name() + " from the table", Symbols.COLD_SHARE, row, "capacity", WHY);
    }

    /** The warmest row that is not warmer than {@code temperature}. */
    private static Row row(Table table, String column, Quantity temperature) {
        Row found = null;
        Quantity coldest = null;
        for (Row row : table.rows()) {
            Quantity here = row.quantity(column);
            coldest = coldest == null || here.base() < coldest.base() ? here : coldest;
            boolean fits = here.base() <= temperature.base() + ROUNDED;
            if (fits && (found == null || here.base() > found.quantity(column).base())) {
                found = row;
            }
        }
        if (found == null) {
            throw new Refusal(
                    "temperature",
                    "Temperature of the battery is " + temperature.text() + ", colder than the last row of the table, " + coldest.text()
                            + ": choose the other table, or take the figure of the maker");
        }
        return found;
    }

    /** What is published on a LiFePO4 battery at that temperature. */
    static void addLithiumFindings(WorkingBuilder working, Quantity temperature) {
        Row discharging = Chemistry.limit("lifepo4-discharging-temperature");
        working.finding(within(
                discharging, temperature, "for drawing from LiFePO4", "Bring the battery within these temperatures first, or follow its data sheet."));
        if (temperature.base() < Quantity.of(10, Units.CELSIUS).base()) {
            Row cold = Chemistry.limit("lifepo4-cold-capacity");
            working.finding(Finding.notKnown(
                    "Cold takes from a LiFePO4 battery too: one maker prints " + cold.quantity("value", Units.PERCENT).text()
                            + " of the capacity at 0 °C. Makers differ, so nothing is taken off here.", temperature, cold.source(),
                    new MissingFigure("", "capacity of the battery in the cold", "its data sheet, or its maker; until then plan for less")));
        }
        addChargingLimit(working, temperature);
    }

    /** Below 0 °C a LiFePO4 battery must not be charged. */
    static void addChargingLimit(WorkingBuilder working, Quantity temperature) {
        working.finding(within(
                Chemistry.limit("lifepo4-charging-temperature"), temperature, "for charging LiFePO4",
                "Do not charge it: disconnect the panel and every charger until the battery is within these temperatures."));
    }

    /** A temperature against the range of a row; it is held against the end that it is nearer to passing. */
    private static Finding within(Row row, Quantity temperature, String what, String remedy) {
        Quantity low = row.quantity("value", Units.CELSIUS);
        Comparison range = Comparison.of("The temperature of the battery", temperature);
        return (Comparison.atLeast(temperature, low)
                        ? range.atMost(row.quantity("value-to", Units.CELSIUS), "the greatest " + what, row.source())
                        : range.atLeast(low, "the least " + what, row.source()))
                .exact()
                .otherwise(Verdict.STOP, remedy)
                .finding();
    }
}
