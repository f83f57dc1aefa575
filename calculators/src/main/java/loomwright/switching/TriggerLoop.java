package loomwright.switching;

import java.util.List;
import loomwright.conductor.ConductorRun;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
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
 * Whether a trigger reaches its switch over the whole range of the supply: current, drop of the thin wire, voltage left, fuse-link.
 *
 * <p>Relay: I = U ÷ (R_coil + R_loop). Solid state: the trigger current is taken as steady. Worst for the trigger at the lowest supply
 * voltage, worst for the fuse-link at the highest.
 *
 * @source Ohm's law; table of the kind of conductor chosen; must-operate voltage from the table relay-data, trigger voltage from ssr-data
 */
public final class TriggerLoop implements Calculator {
    static final ConductorRun RUN = ConductorRun.only();
    static final ChoiceField KIND = ChoiceField.of(
            "trigger-of",
            "What is triggered",
            "A relay has a coil; a solid-state switch takes a few milliamperes.",
            new Option("relay", "a relay coil"),
            new Option("solid-state", "a solid-state switch for d.c."));
    static final QuantityField TRIGGER = QuantityField.of(
                    "trigger-current", "Trigger current (solid state)", "From the data sheet. 13 mA to 20 mA is common.", 0.1, 500,
                    Units.MILLIAMPERE)
            .usually("15 mA");
    static final QuantityField LOWEST = QuantityField.of(
                    "lowest-voltage", "Lowest supply voltage", "A nearly empty battery under load.", 5, 32, Units.VOLT)
            .usually("10.5 V");
    static final QuantityField HIGHEST = QuantityField.of(
                    "highest-voltage", "Highest supply voltage", "While the battery is being charged.", 5, 32, Units.VOLT)
            .usually("14.6 V");
    static final QuantityField FUSE = QuantityField.of(
                    "fuse-rating", "Rating of the trigger's fuse-link", "In the trigger wire where it leaves its supply. 2 A is common.", 0.1, 30,
                    Units.AMPERE)
            .usually("2 A");

    static final QuantityField AMPACITY = QuantityField.of(
                    "wire-ampacity", "Current that the trigger wire may carry",
                    "From its data sheet. Empty takes the table for its size, with insulation for 60 °C and 40 °C around it. The fuse-link may be no more.", 0.1, 100, Units.AMPERE)
            .optional();

    private static final Description DESCRIPTION = new Description(
            "trigger-loop",
            "The trigger wire",
            "Will the trigger reach the relay or the solid-state switch, and is its wire protected?",
            List.of(
                    "The trigger's return runs beside it and is as long.",
                    "The coil is at 20 °C. A warm coil takes less current but needs more voltage to pull in."),
            List.of(
                    KIND,
                    CoilFields.COIL_RESISTANCE,
                    CoilFields.COIL_POWER,
                    CoilFields.RATED_VOLTAGE,
                    TRIGGER,
                    LOWEST,
                    HIGHEST,
                    ConductorRun.conductorField(),
                    RUN.sizeField(),
                    RUN.routeLengthField(),
                    ConductorRun.temperatureField(),
                    FUSE,
                    AMPACITY),
            List.of(
                    new Output("voltage-at-trigger", "Voltage at the trigger, supply at its lowest", Units.VOLT),
                    new Output("wire-drop", "Drop of the trigger wire", Units.MILLIVOLT),
                    new Output("current-at-lowest", "Trigger current at the lowest voltage", Units.MILLIAMPERE),
                    new Output("current-at-highest", "Trigger current at the highest voltage", Units.MILLIAMPERE),
                    new Output("fuse-loading", "Load on the fuse-link", Units.PERCENT)),
            List.of(
                    new NamedFormula("coil-current", TriggerSymbols.COIL_LOWEST),
                    new NamedFormula("wire-drop", TriggerSymbols.DROP),
                    new NamedFormula("voltage-at-trigger", TriggerSymbols.AT_LOWEST)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity lowest = entries.quantity(LOWEST.key());
        Quantity highest = entries.quantity(HIGHEST.key());
        if (lowest.base() > highest.base()) {
            throw new Refusal(
                    LOWEST.key(), "Lowest supply voltage is above the highest, " + highest.text() + ": enter the smaller of the two here");
        }
        boolean relay = entries.choice(KIND.key()).equals("relay");
        Quantity loop = RUN.resistance(entries, working, RUN.perMetre(entries, working));
        Values values = Values.of(TriggerSymbols.LOWEST, lowest)
                .with(TriggerSymbols.HIGHEST, highest)
                .with(TriggerSymbols.LOOP, loop)
                .with(TriggerSymbols.FUSE, entries.quantity(FUSE.key()));
        values = relay
                ? values.with(SwitchSymbols.COIL_RESISTANCE, CoilResistance.of(entries, working))
                : values.with(SwitchSymbols.TRIGGER, working.convert(
                        "Turn the trigger current into amperes", entries.quantity(TRIGGER.key()), Units.AMPERE, "Volts are amperes times ohms."));
        values = currents(working, values, relay);
        Quantity drop = working.compute(
                "Find the drop of the trigger wire", TriggerSymbols.DROP, values, Units.MILLIVOLT, "A thin wire is enough because the current is small.");
        values = values.with(TriggerSymbols.WIRE_DROP, drop);
        Quantity atTrigger = working.compute(
                "See what is left at the trigger", TriggerSymbols.AT_LOWEST, values, Units.VOLT, "That is what must still pull it in.");
        Quantity loading = working.compute(
                "Compare the current with the fuse-link", TriggerSymbols.FUSE_LOADING, values, Units.PERCENT,
                "The fuse-link is there for the wire; it must not open by the trigger itself.");
        working.result("voltage-at-trigger", atTrigger);
        working.result("wire-drop", drop);
        working.result("current-at-lowest", values.of(TriggerSymbols.LEAST_CURRENT));
        working.result("current-at-highest", values.of(TriggerSymbols.MOST_CURRENT));
        working.result("fuse-loading", loading);
        TriggerFindings.add(working, entries, relay, atTrigger, loading);
        addSlips(working, values, relay);
        if (relay) {
            working.next(
                    "coil-day", "What does the coil take in a day?",
                    "coil-resistance", values.of(SwitchSymbols.COIL_RESISTANCE).text());
        }
    }

    private static Values currents(WorkingBuilder working, Values values, boolean relay) {
        Quantity least = working.compute(
                "Find the trigger current at the lowest voltage", relay ? TriggerSymbols.COIL_LOWEST : TriggerSymbols.SOLID_LOWEST, values,
                Units.AMPERE, relay ? "Coil and wire stand in a row." : "A solid-state input holds its current nearly steady.");
        Quantity most = working.compute(
                "Find it at the highest voltage", relay ? TriggerSymbols.COIL_HIGHEST : TriggerSymbols.SOLID_HIGHEST, values, Units.AMPERE,
                relay ? "A coil takes more when the voltage is higher." : "It stays nearly the same.");
        return values.with(TriggerSymbols.LEAST_CURRENT, least).with(TriggerSymbols.MOST_CURRENT, most);
    }

    private static void addSlips(WorkingBuilder working, Values values, boolean relay) {
        working.slip(
                "forgot-the-return", "wire-drop", "The return of the trigger left out",
                "The trigger current also comes back.", TriggerSymbols.SLIP_ONE_WAY, values);
        working.slip(
                "highest-for-lowest", "voltage-at-trigger", "The highest voltage taken",
                "The trigger must still work when the battery is low.", TriggerSymbols.SLIP_AT_HIGHEST, values);
        working.slip(
                "loading-turned-over", "fuse-loading", "Divided the wrong way round",
                "Divide the current by the rating.", TriggerSymbols.SLIP_LOADING_UPSIDE_DOWN, values);
        if (relay) {
            working.slip(
                    "wire-forgotten", "current-at-lowest", "The wire left out",
                    "The thin wire is in a row with the coil.", TriggerSymbols.SLIP_WIRE_FORGOTTEN, values);
            working.slip(
                    "loading-at-the-lowest", "fuse-loading", "The current of the lowest voltage taken",
                    "A coil takes most when the battery is being charged.", TriggerSymbols.SLIP_LOADING_AT_LOWEST, values);
        }
    }
}
