package loomwright.switching;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * A relay against a solid-state switch at one current: drop, heat, what each takes in a day, and the current at which they are even.
 *
 * <p>Relay: coil power + I² × contact resistance. Solid state: I² × on-resistance + supply voltage × trigger current. Holds for steady
 * current and parts at their data-sheet temperature; the resistance of both rises as they warm.
 *
 * @source Ohm's law; figures of the parts from their data sheets, in the tables relay-data and ssr-data
 */
public final class SwitchCompare implements Calculator {
    private static final QuantityField CURRENT = QuantityField.of(
            "current", "Current switched", "What flows to the loads when all that may be on is on.", 0.01, 200, Units.AMPERE, Units.MILLIAMPERE);
    private static final QuantityField CONTACT = QuantityField.of(
                    "contact-resistance",
                    "Resistance of the relay contact",
                    "From the data sheet of the relay, or its drop in millivolts divided by the current. Enter 0 to leave it out.",
                    0, 100, Units.MILLIOHM)
            .usually("0 mΩ");
    private static final ChoiceField KIND = ChoiceField.of(
            "solid-state-kind",
            "Kind of solid-state switch",
            "A MOS output is made for d.c. A thyristor or triac output is made for a.c. mains.",
            new Option("mos", "MOS output, for d.c."),
            new Option("thyristor", "thyristor or triac output, for a.c."));
    static final QuantityField ON_RESISTANCE = QuantityField.of(
                    "on-resistance", "Resistance when on",
                    "Of the closed contact, or of a MOS output at working temperature, from the data sheet. One published part has 20 mΩ; parts for 30 A have a "
                            + "few milliohms. 0 leaves it out.",
                    0, 1000, Units.MILLIOHM)
            .usually("20 mΩ");
    private static final QuantityField TRIGGER = QuantityField.of(
                    "trigger-current", "Trigger current of the solid-state switch", "From the data sheet.", 0.01, 200, Units.MILLIAMPERE)
            .usually("15 mA");

    static final QuantityField RATING = QuantityField.of(
                    "switch-rating", "Rating of the switch or contact",
                    "For direct current and a resistive load, from its data sheet. A figure for a.c. does not count.", 0.1, 500, Units.AMPERE)
            .optional();

    private static final Description DESCRIPTION = new Description(
            "switch-compare",
            "Relay or solid state",
            "Which switch loses less at my current: a relay or a solid-state one?",
            List.of(
                    "Steady current. Both resistances are taken as entered; they rise as they warm.",
                    "Both are held on for the whole time entered, with the loads drawing throughout."),
            List.of(
                    CURRENT,
                    SwitchedLoad.field(),
                    RATING,
                    CoilFields.COIL_RESISTANCE,
                    CoilFields.COIL_POWER,
                    CoilFields.RATED_VOLTAGE,
                    CONTACT,
                    KIND,
                    ON_RESISTANCE,
                    TRIGGER,
                    CoilFields.SUPPLY_VOLTAGE,
                    CoilFields.HOURS),
            List.of(
                    new Output("relay-power", "Relay: coil and contact together", Units.WATT),
                    new Output("solid-drop", "Solid state: voltage drop", Units.VOLT),
                    new Output("solid-heat", "Solid state: heat in the switch", Units.WATT),
                    new Output("solid-power", "Solid state: heat and trigger together", Units.WATT),
                    new Output("relay-energy", "Relay: energy in a day", Units.WATT_HOUR),
                    new Output("solid-energy", "Solid state: energy in a day", Units.WATT_HOUR),
                    new Output("break-even-current", "Current at which both lose the same", Units.AMPERE)),
            List.of(
                    new NamedFormula("relay-power", SwitchFormulas.RELAY_POWER),
                    new NamedFormula("solid-power", SwitchFormulas.SOLID_POWER),
                    new NamedFormula("solid-heat", SwitchFormulas.SOLID_HEAT),
                    new NamedFormula("break-even", SwitchFormulas.BREAK_EVEN)));

    private static final Formula ENERGY = new Formula(SwitchSymbols.ENERGY, SwitchSymbols.HEAT.times(SwitchSymbols.HOURS));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Values values = given(entries, working);
        boolean thyristor = entries.choice(KIND.key()).equals("thyristor");
        Quantity relay = working.compute(
                "Add the coil and the heat of the contact", SwitchFormulas.RELAY_POWER, values, Units.WATT,
                "The coil takes its power whatever flows; the contact adds a little.");
        Quantity drop = thyristor ? thyristorDrop(working) : working.compute(
                "Find the drop of the solid-state switch", SwitchFormulas.DROP_OF_RESISTANCE, values, Units.VOLT,
                "When it is on, a MOS output is a resistance.");
        values = values.with(SwitchSymbols.DROP, drop);
        Quantity heat = working.compute(
                "Find its heat", SwitchFormulas.SOLID_HEAT, values, Units.WATT, "Volts lost times amperes are watts of heat in one small part.");
        Quantity solid = working.compute(
                "Add the trigger", SwitchFormulas.SOLID_POWER, values, Units.WATT, "The trigger current also comes from the battery.");
        working.result("relay-power", relay);
        working.result("solid-drop", drop);
        working.result("solid-heat", heat);
        working.result("solid-power", solid);
        working.result("relay-energy", energy(working, "relay", relay, values));
        working.result("solid-energy", energy(working, "solid-state switch", solid, values));
        addBreakEven(working, thyristor, values);
        SwitchFindings.add(working, thyristor, values, drop);
        working.finding(SwitchFindings.duty(entries, values));
        addSlips(working, values, thyristor);
        working.next(
                "junction-temperature", "How warm does the solid-state switch get?",
                "current", values.of(SwitchSymbols.CURRENT).text(), "voltage-drop", drop.text());
    }

    private static Values given(Entries entries, WorkingBuilder working) {
        Quantity current = working.convert(
                "Turn the current into amperes", entries.quantity(CURRENT.key()), Units.AMPERE, "Watts are volts times amperes.");
        Quantity trigger = working.convert(
                "Turn the trigger current into amperes", entries.quantity(TRIGGER.key()), Units.AMPERE, "Watts are volts times amperes.");
        Quantity supply = entries.quantity(CoilFields.SUPPLY_VOLTAGE.key());
        Quantity hours = working.convert(
                "Turn the time into hours", entries.quantity(CoilFields.HOURS.key()), Units.HOUR, "Energy is counted in watt-hours.");
        Quantity coil = CoilResistance.of(entries, working);
        Values values = Values.of(SwitchSymbols.CURRENT, current)
                .with(SwitchSymbols.TRIGGER, trigger)
                .with(SwitchSymbols.SUPPLY, supply)
                .with(SwitchSymbols.HOURS, hours)
                .with(SwitchSymbols.COIL_RESISTANCE, coil)
                .with(SwitchSymbols.CONTACT, entries.quantity(CONTACT.key()))
                .with(SwitchSymbols.ON_RESISTANCE, entries.quantity(ON_RESISTANCE.key()));
        values = values.with(
                SwitchSymbols.COIL_CURRENT,
                working.compute("Find the current in the coil", CoilFormulas.CURRENT, values, Units.AMPERE, "Ohm's law."));
        return values.with(
                SwitchSymbols.COIL_POWER,
                working.compute("Find the power of the coil", CoilFormulas.POWER, values, Units.WATT, "Volts times amperes are watts."));
    }

    private static Quantity thyristorDrop(WorkingBuilder working) {
        Row row = SwitchFindings.solidState("thyristor-drop");
        return working.lookUp(
                "Read the drop of a thyristor output, the lower end", SwitchSymbols.DROP, row, "value",
                Units.VOLT, "It hardly changes with the current; the published upper end is " + row.quantity("value-to", Units.VOLT).text() + ".");
    }

    private static Quantity energy(WorkingBuilder working, String what, Quantity power, Values values) {
        return working.compute(
                "Multiply the power of the " + what + " by the time", ENERGY, values.with(SwitchSymbols.HEAT, power), Units.WATT_HOUR,
                "A day's energy is what the panel must bring back.");
    }

    /** There is a break-even only if the coil takes more than the trigger, and the semiconductor has more resistance than the contact. */
    private static void addBreakEven(WorkingBuilder working, boolean thyristor, Values values) {
        if (thyristor) {
            return;
        }
        double coil = values.of(SwitchSymbols.COIL_POWER).base();
        double trigger = values.of(SwitchSymbols.SUPPLY).base() * values.of(SwitchSymbols.TRIGGER).base();
        double solid = values.of(SwitchSymbols.ON_RESISTANCE).base();
        double contact = values.of(SwitchSymbols.CONTACT).base();
        if (coil > trigger && solid > contact) {
            working.result("break-even-current", working.compute(
                    "Find the current at which both lose the same", SwitchFormulas.BREAK_EVEN, values, Units.AMPERE,
                    "Below it the solid-state switch loses less; above it the relay does."));
            return;
        }
        boolean solidAlways = coil >= trigger && solid <= contact;
        boolean relayAlways = coil <= trigger && solid >= contact;
        String words = solidAlways && relayAlways ? "At every current both lose the same." : solidAlways
                ? "At every current the solid-state switch loses less: no coil, and no more resistance than the contact."
                : relayAlways
                        ? "At every current the relay loses less: its coil takes no more than the trigger of the other."
                        : "The relay loses less at small currents and the solid-state switch at large ones: compare the two figures above.";
        working.finding(new Finding(
                Verdict.PASSED, words, values.of(SwitchSymbols.CURRENT), null, Source.of(Document.COMPUTED, ""), ""));
    }

    private static void addSlips(WorkingBuilder working, Values values, boolean thyristor) {
        working.slip(
                "coil-left-out", "relay-power", "The coil left out",
                "The contact alone loses little; the coil takes its power all the time.", SwitchFormulas.CONTACT_HEAT, values);
        working.slip(
                "trigger-left-out", "solid-power", "The trigger left out",
                "The trigger current is small, but it also comes from the battery all the time.", SwitchFormulas.SOLID_HEAT, values);
        if (!thyristor) {
            working.slip(
                    "square-forgotten", "solid-heat", "The current not squared",
                    "Twice the current means four times the heat in the same resistance.", SwitchFormulas.SQUARE_FORGOTTEN, values);
        }
        if (!thyristor && values.of(SwitchSymbols.ON_RESISTANCE).base() > 0) {
            working.slip(
                    "trigger-and-contact-left-out", "break-even-current", "Trigger and contact left out of the break-even",
                    "The solid-state switch has a standing draw of its own, and the contact a resistance.", SwitchFormulas.NO_TRIGGER, values);
        }
    }
}
