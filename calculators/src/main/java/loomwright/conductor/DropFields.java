package loomwright.conductor;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the voltage-drop calculator asks and answers. */
final class DropFields {
    static final QuantityField CURRENT = QuantityField.of(
            "current", "Design current", "The most the load draws for longer than a moment.", 0.001, 1000, Units.AMPERE, Units.MILLIAMPERE);

    static final QuantityField ROUTE_LENGTH = QuantityField.of(
            "route-length",
            "Route length",
            "Measure along the way the cable really runs, up and down as well.",
            0.05, 200, Units.METRE, Units.FEET);

    static final ChoiceField LENGTH_COUNTS = ChoiceField.of(
            "length-counts",
            "The length is",
            "One way from supply to load, or the whole conductor out and back. Books differ: this is the commonest factor of two.",
            new Option("one-way", "one way"),
            new Option("out-and-back", "out and back together"));

    static final QuantityField RESISTANCE_PER_LENGTH = QuantityField.of(
                    "resistance-per-length",
                    "Resistance per length",
                    "Only if you enter it yourself, from a data sheet or a handbook table.",
                    0.01, 1000, Units.MILLIOHM_PER_METRE, Units.OHM_PER_KILOMETRE, Units.OHM_PER_FOOT, Units.OHM_PER_THOUSAND_FEET)
            .optional();

    static final QuantityField SUPPLY_VOLTAGE = QuantityField.of(
                    "supply-voltage",
                    "Supply voltage",
                    "What the share is taken of. Rule sets take it of the nominal 12 V.",
                    1, 60, Units.VOLT)
            .usually("12 V");

    static final Description DESCRIPTION = new Description(
            "voltage-drop",
            "Voltage drop of a run",
            "How much voltage is lost on the way to the load and back?",
            List.of(
                    "Steady direct current; the conductor back is the same as the one out.",
                    "Joints, fuse-links and switches are not counted: they come on top.",
                    "The current is taken as given. A load that holds its power draws more as its voltage falls."),
            List.of(
                    CURRENT,
                    ROUTE_LENGTH,
                    LENGTH_COUNTS,
                    ConductorKind.field(),
                    ConductorFields.size().optional(),
                    ConductorFields.temperature(),
                    SUPPLY_VOLTAGE,
                    DropMethod.field(),
                    RESISTANCE_PER_LENGTH),
            List.of(
                    new Output("drop", "Voltage drop", Units.VOLT),
                    new Output("drop-percent", "Drop as a share of the supply voltage", Units.PERCENT),
                    new Output("voltage-at-load", "Voltage at the load", Units.VOLT),
                    new Output("power-lost", "Heat in the conductors", Units.WATT),
                    new Output("circuit-length", "Length out and back", Units.METRE),
                    new Output("resistance-per-metre", "Resistance of one metre", Units.MILLIOHM_PER_METRE),
                    new Output("circuit-resistance", "Resistance out and back", Units.MILLIOHM)),
            List.of(
                    new NamedFormula("circuit-length", DropFormulas.CIRCUIT_LENGTH),
                    new NamedFormula("circuit-resistance", DropFormulas.CIRCUIT_RESISTANCE),
                    new NamedFormula("drop", DropFormulas.DROP),
                    new NamedFormula("share", DropFormulas.SHARE),
                    new NamedFormula("power-lost", DropFormulas.POWER_LOST),
                    new NamedFormula("circular-mil", DropFormulas.CIRCULAR_MIL),
                    new NamedFormula("conductivity-56", DropFormulas.BY_CONDUCTIVITY_56),
                    new NamedFormula("constant-0.0164", DropFormulas.RESISTIVITY_0_0164)));

    private DropFields() {}
}
