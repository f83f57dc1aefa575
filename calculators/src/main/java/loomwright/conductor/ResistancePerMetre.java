package loomwright.conductor;

import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.WorkingBuilder;

/**
 * The resistance of one metre of a conductor: from the table of its kind, brought to the temperature it works at.
 *
 * <p>Holds for copper between −50 °C and 150 °C. The tables give the highest value allowed to the maker, so a real cable has a little
 * less.
 */
final class ResistancePerMetre {
    private static final Row CONDUCTIVITY_ROW = PublishedTables.copperConstants().row("iacs-conductivity");
    private static final Row TEMPERATURE_ROW = PublishedTables.copperConstants().row("temperature-rule-zero");

    /** Conductivity of annealed copper at 20 °C. source: IEC 60028, 1925. */
    private static final Quantity CONDUCTIVITY =
            CONDUCTIVITY_ROW.quantity("value", Units.METRE_PER_OHM_SQUARE_MILLIMETRE);

    /** The temperature, below zero, at which the straight line of copper's resistance would reach nothing. source: FAA AC 43.13-1B. */
    private static final Expression ZERO_TEMPERATURE = Expression.fixed(TEMPERATURE_ROW.quantity("value", Units.CELSIUS));

    static final Formula BY_AREA = new Formula(
            Symbols.PER_METRE_20, Expression.number(1).over(Expression.fixed(CONDUCTIVITY).times(Symbols.AREA)));

    static final Formula AT_TEMPERATURE = new Formula(
            Symbols.PER_METRE,
            Symbols.PER_METRE_TABLE.times(ZERO_TEMPERATURE.plus(Symbols.TEMPERATURE)
                    .over(ZERO_TEMPERATURE.plus(Symbols.TABLE_TEMPERATURE))));

    /** Where the rule for temperature comes from. */
    static Source temperatureSource() {
        return TEMPERATURE_ROW.source();
    }

    private ResistancePerMetre() {}

    /** Works the resistance of one metre out, with its steps. */
    static Quantity at(WorkingBuilder working, ConductorKind kind, Quantity size, Quantity temperature) {
        return warmed(working, atTableTemperature(working, kind, size), kind.tableTemperature(), temperature);
    }

    /** The resistance of one metre of a row, without a step. */
    static Quantity of(ConductorKind kind, Row row, Quantity temperature) {
        Quantity figure = row.quantity(kind.column());
        if (kind.givesArea()) {
            figure = BY_AREA.value(Values.of(Symbols.AREA, figure), Units.MILLIOHM_PER_METRE);
        }
        Values values = Values.of(Symbols.PER_METRE_TABLE, figure)
                .with(Symbols.TEMPERATURE, temperature)
                .with(Symbols.TABLE_TEMPERATURE, kind.tableTemperature());
        return AT_TEMPERATURE.value(values, Units.MILLIOHM_PER_METRE);
    }

    /** The figure of the table itself, or the one worked out from the area at 20 °C. */
    static Quantity atTableTemperature(WorkingBuilder working, ConductorKind kind, Quantity size) {
        if (kind.table() == null) {
            return byArea(working, working.convert(
                    "Turn the size into square millimetres", size, Units.SQUARE_MILLIMETRE, "The formula takes the area of copper."));
        }
        Row row = SizeRow.of(kind.table(), size, kind.sizesIn());
        if (kind.givesArea()) {
            return byArea(working, working.lookUp(
                    "Read the copper area of " + row.name().replace("AWG", "SAE") + " from the table",
                    Symbols.AREA, row, kind.column(), "An SAE gauge number stands for less copper than the same AWG number."));
        }
        Quantity printed = working.lookUp(
                "Read the resistance of " + row.name() + " from the table",
                Symbols.PER_METRE_TABLE, row, kind.column(), "Thicker copper has less resistance in each metre.");
        return working.convert(
                "Turn it into milliohms per metre", printed, Units.MILLIOHM_PER_METRE, "The table is printed per 1000 feet.");
    }

    /** A figure of one temperature brought to another; no step if they are the same. */
    static Quantity warmed(WorkingBuilder working, Quantity figure, Quantity from, Quantity to) {
        if (to.base() == from.base()) {
            return figure;
        }
        Values values = Values.of(Symbols.PER_METRE_TABLE, figure)
                .with(Symbols.TEMPERATURE, to)
                .with(Symbols.TABLE_TEMPERATURE, from);
        return working.compute(
                "Bring it to the temperature the conductor works at", AT_TEMPERATURE, values, Units.MILLIOHM_PER_METRE,
                "Warm copper has more resistance: nearly 0.4 % for each degree.", temperatureSource());
    }

    private static Quantity byArea(WorkingBuilder working, Quantity area) {
        return working.compute(
                "Work out the resistance of one metre from the copper area", BY_AREA, Values.of(Symbols.AREA, area),
                Units.MILLIOHM_PER_METRE, "One metre of copper of 1 mm² has 1/58 of an ohm at 20 °C.", CONDUCTIVITY_ROW.source());
    }
}
