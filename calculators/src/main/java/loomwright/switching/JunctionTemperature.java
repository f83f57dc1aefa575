package loomwright.switching;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Comparison;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * How warm a solid-state switch gets, the warmest air it may stand in, and the heat sink it needs.
 *
 * <p>θ_j = θ_a + P × (R_jc + R_cs + R_sa), with P = I × voltage drop. Holds for steady current after the parts have warmed through.
 *
 * @source thermal application pages for solid-state relays, p. 8.52
 */
public final class JunctionTemperature implements Calculator {
    private static final QuantityField CURRENT = QuantityField.of(
            "current", "Current switched", "What flows all the time when all loads that may be on are on.", 0.01, 200, Units.AMPERE);
    private static final QuantityField DROP = QuantityField.of(
            "voltage-drop",
            "Voltage drop of the switch",
            "From the data sheet at this current, or measured across its two load terminals.",
            0.001, 5, Units.VOLT, Units.MILLIVOLT);
    private static final QuantityField JUNCTION_CASE =
            thermal("junction-to-case", "Thermal resistance, junction to case", "From the data sheet of the switch.", 0).usually(null);
    private static final QuantityField CASE_SINK = thermal(
                    "case-to-sink", "Thermal resistance, case to heat sink", "The joint with heat-conducting paste, from its data sheet.", 0)
            .usually("0.1 K/W");
    private static final QuantityField SINK_AIR =
            thermal("sink-to-air", "Thermal resistance, heat sink to air", "From the data sheet of the heat sink.", 0.01);
    static final QuantityField AMBIENT = QuantityField.of(
                    "ambient", "Temperature of the air around it", "Inside a closed box in the sun, not in the shade outside.", -40, 120,
                    Units.CELSIUS, Units.FAHRENHEIT)
            .usually("40 °C");
    static final QuantityField LIMIT = QuantityField.of(
                    "junction-limit",
                    "Highest junction temperature",
                    "From the data sheet. 125 °C is usual; one maker designs to 100 °C.",
                    60, 200, Units.CELSIUS)
            .usually("125 °C");

    private static final String COOLER = "Take a larger heat sink, a switch with less drop, a cooler place or less current.";

    private static final Description DESCRIPTION = new Description(
            "junction-temperature",
            "Heat of a solid-state switch",
            "How warm does the solid-state switch get, and what heat sink does it need?",
            List.of(
                    "Steady current, after the parts have warmed through.",
                    "The heat sink stands in free air. In a closed box the air itself warms up."),
            List.of(CURRENT, DROP, JUNCTION_CASE, CASE_SINK, SINK_AIR, AMBIENT, LIMIT),
            List.of(
                    new Output("heat", "Heat in the switch", Units.WATT),
                    new Output("junction", "Temperature of the junction", Units.CELSIUS),
                    new Output("case", "Temperature of the case", Units.CELSIUS),
                    new Output("sink", "Temperature of the heat sink", Units.CELSIUS),
                    new Output("highest-ambient", "Warmest air it may stand in", Units.CELSIUS),
                    new Output("sink-needed", "Largest thermal resistance the heat sink may have", Units.KELVIN_PER_WATT)),
            List.of(
                    new NamedFormula("heat", HeatFormulas.HEAT_OF_DROP),
                    new NamedFormula("junction", HeatFormulas.JUNCTION_TEMPERATURE),
                    new NamedFormula("case", HeatFormulas.CASE_TEMPERATURE),
                    new NamedFormula("highest-ambient", HeatFormulas.AMBIENT_ALLOWED),
                    new NamedFormula("sink-needed", HeatFormulas.SINK_RESISTANCE)));

    private static QuantityField thermal(String key, String label, String help, double least) {
        return QuantityField.of(key, label, help, least, 200, Units.KELVIN_PER_WATT);
    }

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity drop = working.convert(
                "Turn the drop into volts", entries.quantity(DROP.key()), Units.VOLT, "Volts times amperes are watts.");
        Values values = Values.of(SwitchSymbols.CURRENT, entries.quantity(CURRENT.key()))
                .with(HeatFormulas.DROP, drop)
                .with(HeatFormulas.JUNCTION_CASE, entries.quantity(JUNCTION_CASE.key()))
                .with(HeatFormulas.CASE_SINK, entries.quantity(CASE_SINK.key()))
                .with(HeatFormulas.SINK_AIR, entries.quantity(SINK_AIR.key()))
                .with(HeatFormulas.AMBIENT, entries.quantity(AMBIENT.key()).in(Units.CELSIUS))
                .with(HeatFormulas.LIMIT, entries.quantity(LIMIT.key()).in(Units.CELSIUS));
        Source pages = Source.of(Documents.ssrThermalPages(), "p. 8.52");
        Quantity heat = working.compute(
                "Find the heat", HeatFormulas.HEAT_OF_DROP, values, Units.WATT, "Volts lost times amperes are watts of heat in the switch.");
        values = values.with(HeatFormulas.HEAT, heat);
        Quantity junction = working.compute(
                "Climb from the air to the junction", HeatFormulas.JUNCTION_TEMPERATURE, values, Units.CELSIUS,
                "Each part of the way holds the heat back; the three add up like resistors in a row.", pages);
        Quantity housing = working.compute(
                "Find the temperature of the case", HeatFormulas.CASE_TEMPERATURE, values, Units.CELSIUS,
                "A thermometer on the case reads this; the junction inside is warmer.", pages);
        Quantity sink = working.compute(
                "Find the temperature of the heat sink", HeatFormulas.SINK_TEMPERATURE, values, Units.CELSIUS, "That is the part a hand can touch.");
        Quantity ambient = working.compute(
                "Find the warmest air it may stand in", HeatFormulas.AMBIENT_ALLOWED, values, Units.CELSIUS,
                "The junction limit less the climb.", pages);
        Quantity needed = working.compute(
                "Find the heat sink it needs in this air", HeatFormulas.SINK_RESISTANCE, values, Units.KELVIN_PER_WATT,
                "What is left of the climb after junction and joint have had their part.", pages);
        working.result("heat", heat);
        working.result("junction", junction);
        working.result("case", housing);
        working.result("sink", sink);
        working.result("highest-ambient", ambient);
        working.result("sink-needed", needed);
        addFindings(working, values, junction, sink, needed);
        addSlips(working, values);
    }

    private static void addFindings(WorkingBuilder working, Values values, Quantity junction, Quantity sink, Quantity needed) {
        Quantity limit = values.of(HeatFormulas.LIMIT);
        Source usual = SwitchFindings.solidState("junction-limit").source();
        Comparison hottest = Comparison.of("The junction", junction).atMost(limit, "the limit entered", usual).exact().otherwise(Verdict.STOP, COOLER);
        Comparison margin = Comparison.of("The junction", junction)
                .atMost(Quantity.of(limit.in(Units.CELSIUS).value() - 10, Units.CELSIUS), "the limit entered less a margin of 10 K", usual)
                .exact()
                .otherwise(Verdict.CAUTION, COOLER);
        working.finding((hottest.holds() ? margin : hottest).finding());
        if (needed.base() <= 0) {
            working.finding(new Finding(
                    Verdict.STOP, "No heat sink can do it: junction and joint alone use up the whole climb.", needed, null, usual,
                    "Take a switch with less drop, or less current."));
        }
        Row touch = PublishedTables.touchTemperature().row("touched-metal");
        working.finding(Comparison.of("The heat sink", sink)
                .atMost(touch.quantity("limit"), "the limit for metal that may be touched but is not gripped", touch.source())
                .exact()
                .otherwise(Verdict.CAUTION, "Put it where no hand, cable or cloth touches it, and say so on the label.")
                .finding());
    }

    private static void addSlips(WorkingBuilder working, Values values) {
        working.slip(
                "sink-left-out", "junction", "The heat sink left out of the chain",
                "The heat still has to pass from the sink into the air.", HeatFormulas.SLIP_SINK_LEFT_OUT, values);
        working.slip(
                "ambient-left-out", "junction", "The air taken as 0 °C",
                "The climb begins at the temperature of the air, not at zero.", HeatFormulas.SLIP_AMBIENT_LEFT_OUT, values);
        working.slip(
                "junction-to-case-only", "highest-ambient", "Only the first part of the chain counted",
                "From the case the heat must still reach the sink and then the air.", HeatFormulas.SLIP_AMBIENT_WITHOUT_CASE, values);
        working.slip(
                "whole-chain-for-the-sink", "sink-needed", "The whole chain used in place of the heat sink",
                "Junction and joint use up part of the climb before the sink comes.", HeatFormulas.SLIP_WHOLE_CHAIN_FOR_SINK, values);
    }
}
