package loomwright.switching;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Comparison;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * What happens when a relay coil is switched off: the peak of voltage it makes, and how its release slows down.
 *
 * <p>At the moment of switching off the coil keeps its current, and drives it through whatever is across it. Across a resistor the peak is
 * current × resistance; a diode holds it to less than a volt, a Zener diode to its own voltage and the diode's.
 *
 * @source Ohm's law; figures for a reference relay from the table coil-suppression
 */
public final class CoilSuppression implements Calculator {
    private static final ChoiceField PART = ChoiceField.of(
            "part",
            "Part across the coil",
            "Many relays have one built in: look at the drawing on the case.",
            new Option("resistor", "resistor"),
            new Option("diode", "diode"),
            new Option("diode-zener", "diode with a Zener diode"));
    private static final QuantityField RESISTOR = QuantityField.of(
                    "resistor", "Resistance of the resistor", "680 Ω is usual in relays with one built in.", 10, 10_000, Units.OHM)
            .usually("680 Ω");
    private static final QuantityField ZENER = QuantityField.of(
                    "zener-voltage", "Voltage of the Zener diode", "Printed on the part or in its data sheet.", 2, 200, Units.VOLT)
            .usually("24 V");
    private static final QuantityField DIODE = QuantityField.of(
                    "diode-voltage", "Voltage of the diode when it conducts", "0.6 V to 1 V for a silicon diode.", 0.1, 2, Units.VOLT)
            .usually("0.8 V");

    private static final Symbol RESISTANCE = Symbol.of("R", "p", "resistance across the coil", Dimension.RESISTANCE);
    private static final Symbol ZENER_VOLTAGE = Symbol.of("U", "z", "voltage of the Zener diode", Dimension.VOLTAGE);
    private static final Symbol DIODE_VOLTAGE = Symbol.of("U", "f", "voltage of the diode when it conducts", Dimension.VOLTAGE);
    private static final Symbol PEAK = Symbol.of("U", "peak", "peak voltage across the coil", Dimension.VOLTAGE);
    private static final Symbol AT_SWITCH = Symbol.of("U", "switch", "voltage across the opening switch", Dimension.VOLTAGE);

    private static final Formula PEAK_OF_RESISTOR = new Formula(PEAK, SwitchSymbols.COIL_CURRENT.times(RESISTANCE));
    private static final Formula PEAK_OF_DIODE = new Formula(PEAK, DIODE_VOLTAGE);
    private static final Formula PEAK_OF_ZENER = new Formula(PEAK, ZENER_VOLTAGE.plus(DIODE_VOLTAGE));
    private static final Formula OVER_SWITCH = new Formula(AT_SWITCH, SwitchSymbols.SUPPLY.plus(PEAK));
    private static final Formula SUPPLY_OVER_RESISTOR =
            new Formula(SwitchSymbols.COIL_CURRENT, SwitchSymbols.SUPPLY.over(RESISTANCE));
    private static final Formula SUPPLY_TAKEN_AWAY = new Formula(AT_SWITCH, PEAK.minus(SwitchSymbols.SUPPLY));
    private static final Formula SUPPLY_ONLY = new Formula(PEAK, SwitchSymbols.SUPPLY);

    private static final Description DESCRIPTION = new Description(
            "coil-suppression",
            "Switching a relay coil off",
            "What voltage does the relay coil make when it is switched off, and does the part across it slow it down?",
            List.of(
                    "The coil had its full current at the moment of switching off.",
                    "Release times depend on the relay: those in the table are of one relay, and from memory."),
            List.of(CoilFields.COIL_RESISTANCE, CoilFields.COIL_POWER, CoilFields.RATED_VOLTAGE, CoilFields.SUPPLY_VOLTAGE, PART, RESISTOR, ZENER, DIODE),
            List.of(
                    new Output("coil-current", "Current in the coil", Units.MILLIAMPERE),
                    new Output("peak-voltage", "Peak voltage across the coil", Units.VOLT),
                    new Output("switch-voltage", "Voltage across the opening switch", Units.VOLT)),
            List.of(
                    new NamedFormula("peak-resistor", PEAK_OF_RESISTOR),
                    new NamedFormula("peak-zener", PEAK_OF_ZENER),
                    new NamedFormula("switch-voltage", OVER_SWITCH)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        String part = entries.choice(PART.key());
        Values values = Values.of(SwitchSymbols.SUPPLY, entries.quantity(CoilFields.SUPPLY_VOLTAGE.key()))
                .with(SwitchSymbols.COIL_RESISTANCE, CoilResistance.of(entries, working))
                .with(RESISTANCE, entries.quantity(RESISTOR.key()))
                .with(ZENER_VOLTAGE, entries.quantity(ZENER.key()))
                .with(DIODE_VOLTAGE, entries.quantity(DIODE.key()));
        Quantity current = working.compute(
                "Find the current in the coil", CoilFormulas.CURRENT, values, Units.AMPERE,
                "At the moment of switching off the coil keeps this current.");
        values = values.with(SwitchSymbols.COIL_CURRENT, current);
        Formula formula = part.equals("resistor") ? PEAK_OF_RESISTOR : part.equals("diode") ? PEAK_OF_DIODE : PEAK_OF_ZENER;
        Quantity peak = working.compute(
                "Find the peak across the coil", formula, values, Units.VOLT,
                part.equals("resistor") ? "The coil drives its current through the resistor." : "The diode conducts and holds the voltage.");
        values = values.with(PEAK, peak);
        Quantity across = working.compute(
                "Add the supply", OVER_SWITCH, values, Units.VOLT, "The opening switch holds back the supply and the peak together.");
        working.result("coil-current", current);
        working.result("peak-voltage", peak);
        working.result("switch-voltage", across);
        addFindings(working, part, peak);
        working.slip(
                "supply-through-the-resistor", "coil-current", "The resistor used in place of the coil",
                "The current is set by the coil; the resistor only takes it over.", SUPPLY_OVER_RESISTOR, values);
        working.slip(
                "supply-for-the-peak", "peak-voltage", "The supply voltage used in place of the peak",
                "A coil that loses its supply makes a voltage of its own, the other way round.", SUPPLY_ONLY, values);
        working.slip(
                "supply-taken-away", "switch-voltage", "The supply taken away instead of added",
                "Peak and supply stand in a row across the open switch.", SUPPLY_TAKEN_AWAY, values);
    }

    private static void addFindings(WorkingBuilder working, String part, Quantity peak) {
        Row none = PublishedTables.coilSuppression().row("none-12-v");
        working.finding(Comparison.of("The peak", peak)
                .atMost(none.quantity("peak-voltage"), "the least that a 12 V relay coil makes with nothing across it", none.source())
                .exact()
                .settledBy(new MissingFigure("", "peak of the relay's coil", "the relay's data sheet"))
                .otherwise(Verdict.CAUTION, "Take a smaller resistor, or a diode with a Zener diode.")
                .finding());
        Row row = PublishedTables.coilSuppression().row(part);
        working.finding(new Finding(
                Verdict.CAUTION,
                "In the reference relay the contacts opened " + row.quantity("release-time").text() + " after switching off with "
                        + row.text("says") + ", against " + PublishedTables.coilSuppression().row("none").quantity("release-time").text()
                        + " with nothing.",
                row.quantity("release-time"), null, row.source(),
                part.equals("diode")
                        ? "A slow release lets the contacts burn when they part a heavy load: a diode with a Zener diode is quicker."
                        : "Ask the relay's data sheet for its own release time."));
    }
}
