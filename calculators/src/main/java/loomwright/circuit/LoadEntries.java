package loomwright.circuit;

import java.util.List;
import loomwright.load.Converter;
import loomwright.load.LoadKind;
import loomwright.quantity.Units;
import loomwright.switching.SwitchedLoad;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.QuantityField;

/** What is asked for a load. */
final class LoadEntries {
    /** The choice of {@code switched-as} that leaves it to the other figures. */
    static final String BY_FIGURES = "by-figures";

    static final QuantityField POWER = QuantityField.of(
                    "power", "Power it takes", "At its own terminals, losses of a converter included. Or give current or resistance.", 0.001,
                    10_000, Units.WATT, Units.MILLIWATT, Units.KILOWATT)
            .optional();
    static final QuantityField CURRENT = QuantityField.of(
                    "current", "Current it takes", "At its rated voltage. Or give power or resistance.", 0.0001, 1000, Units.AMPERE,
                    Units.MILLIAMPERE)
            .optional();
    static final QuantityField RESISTANCE = QuantityField.of(
                    "resistance", "Its resistance", "For a heater or a coil. Or give power or current.", 0.01, 100_000, Units.OHM)
            .optional();

    static final QuantityField PORTS_POWER = QuantityField.of(
                    "ports-power", "Power at its USB ports, all together", "What the devices take at the ports: 5 V times amperes, or the watts of "
                            + "USB-C. The loss of the converter is added. Or give power, current or resistance.",
                    0.1, 1000, Units.WATT)
            .optional();

    static final List<Field> FIELDS = List.of(
            LoadKind.field(),
            POWER,
            CURRENT,
            RESISTANCE,
            PORTS_POWER,
            QuantityField.of(
                            "ports-limit", "What its ports share", "The most that all ports together give, from the data sheet. Empty if not known.", 0.1,
                            1000, Units.WATT)
                    .optional(),
            Converter.field(),
            QuantityField.of(
                            "converter-efficiency", "Efficiency of its converter", "From its data sheet. Empty takes the least that is published or planned for its kind.", 30, 100,
                            Units.PERCENT)
                    .optional(),
            QuantityField.of(
                            "outlet-rating", "Rated current of the outlet or device",
                            "What an outlet may carry, or the largest fuse-link the maker of a device allows before it. From its data sheet.", 0.1, 1000,
                            Units.AMPERE)
                    .optional(),
            QuantityField.of("rated-voltage", "Voltage the figure holds for", "From its label.", 1, 60, Units.VOLT).usually("12 V"),
            QuantityField.of(
                            "hours", "Time in use in a day", "How long it is switched on.", 0, 24, Units.HOUR, Units.MINUTE)
                    .usually("1 h"),
            QuantityField.of(
                            "duty", "Duty cycle", "The share of that time it draws. A pump that runs half the time: 50 %.", 0, 100, Units.PERCENT)
                    .usually("100 %"),
            ChoiceField.of(
                    "use", "In use",
                    "Loads marked alone are never on two at a time; each may be on with all that are marked together.",
                    new Option("together", "together with others"),
                    new Option("alone", "alone of those marked so")),
            ChoiceField.of(
                    "allowance", "Voltage drop allowed",
                    "3 % for main feeds, navigation lights, bilge blowers and electronics; 10 % for lighting and what is not critical.",
                    new Option("abyc-main", "3 % of 12 V"),
                    new Option("abyc-other", "10 % of 12 V")),
            QuantityField.of(
                            "start-current", "Current at its start", "A motor draws several times as much for a moment.", 0.001, 2000,
                            Units.AMPERE)
                    .optional(),
            switchedAs(),
            QuantityField.of("start-time", "How long the start lasts", "Up to its usual current.", 0.001, 60, Units.SECOND, Units.MILLISECOND)
                    .usually("0.5 s"),
            QuantityField.of(
                            "lowest-working-voltage", "Lowest voltage it works at", "From its data sheet. Empty if not known.", 0.5, 60, Units.VOLT)
                    .optional(),
            QuantityField.of(
                            "highest-working-voltage", "Highest voltage it stands", "From its data sheet. Empty if not known.", 1, 100, Units.VOLT)
                    .optional(),
            QuantityField.of(
                            "standing-current", "Standing draw when idle", "Pilot light, converter, button: what it takes while nobody uses it.", 0,
                            1000, Units.MILLIAMPERE, Units.AMPERE)
                    .usually("0 mA"),
            FiguresFrom.field());

    /** Nobody has to say it where the figures tell. */
    private static ChoiceField switchedAs() {
        ChoiceField all = SwitchedLoad.CHOICES.field(
                "switched-as", "What a switch has to make and break", "A cold filament or a starting motor takes many times its running current.",
                new Option(BY_FIGURES, "as its figures say: with a current at its start a motor, with a fixed resistance a heater, else a converter"));
        return new ChoiceField(all.key(), all.label(), all.help(), all.options(), BY_FIGURES);
    }

    private LoadEntries() {}
}
