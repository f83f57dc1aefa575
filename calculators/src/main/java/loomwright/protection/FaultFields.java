package loomwright.protection;

import java.util.List;
import loomwright.conductor.ConductorRun;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the fault-current calculator asks and answers. */
final class FaultFields {
    static final ConductorRun FEED = ConductorRun.optional("feed-", "Feed");
    static final ConductorRun BRANCH = ConductorRun.optional("branch-", "Branch");

    static final QuantityField BATTERY_VOLTAGE = QuantityField.of(
                    "battery-voltage", "Voltage of the battery at rest",
                    "Charged and without load: the voltage that the maker's short-circuit current holds for.", 1, 60, Units.VOLT)
            .usually("12.8 V");

    static final QuantityField HIGHEST_VOLTAGE = QuantityField.of(
                    "highest-voltage", "Highest voltage at the battery", "While it is being charged. It drives the highest current.", 1, 60,
                    Units.VOLT)
            .usually("14.6 V");

    static final QuantityField LOWEST_VOLTAGE = QuantityField.of(
                    "lowest-voltage", "Lowest voltage at the battery", "Nearly empty. It drives the lowest current.", 1, 60, Units.VOLT)
            .usually("10.5 V");

    static final QuantityField CAPACITY = QuantityField.of(
                    "capacity", "Capacity of one battery",
                    "A published range holds for one size and is brought to yours. Empty takes the published size.", 1, 10_000, Units.AMPERE_HOUR)
            .optional();

    static final QuantityField SHORT_CIRCUIT_CURRENT = QuantityField.of(
                    "short-circuit-current", "Short-circuit current of one battery", "From its data sheet.", 10, 100_000, Units.AMPERE,
                    Units.KILOAMPERE)
            .optional();

    static final QuantityField RESISTANCE_LOW = resistance("battery-resistance-low", "Least inside resistance of one battery");
    static final QuantityField RESISTANCE_HIGH = resistance("battery-resistance-high", "Greatest inside resistance of one battery");

    static final QuantityField IN_PARALLEL = QuantityField.of(
                    "batteries-in-parallel",
                    "Batteries in parallel",
                    "Each adds its own short-circuit current. Batteries in series do not: enter their resistance together.",
                    1, 50, Units.ONE)
            .usually("1");

    static final QuantityField JOINTS = QuantityField.of(
                    "joint-resistance",
                    "Resistance of all joints and switches",
                    "Counted for the lowest current only: for the highest they are taken as perfect.",
                    0, 10_000, Units.MILLIOHM, Units.OHM)
            .usually("0 mΩ");

    static final ChoiceField FUSE_LINK = ChoiceField.of(
            "fuse-link",
            "Fuse-link on the way",
            "Fuse-links between battery and the device you check, without that device.",
            new Option("none", "none, or not known"),
            new Option("blade-40", "blade, 40 A"),
            new Option("large-blade-30", "large blade, 30 A"),
            new Option("large-blade-35", "large blade, 35 A"),
            new Option("large-blade-40", "large blade, 40 A"),
            new Option("given", "cold resistance that I enter"));

    static final QuantityField FUSE_RESISTANCE = QuantityField.of(
                    "fuse-resistance", "Cold resistance of the fuse-links on the way", "From their data sheets, added up.", 0.01, 10_000,
                    Units.MILLIOHM, Units.OHM)
            .optional();

    static final Description DESCRIPTION = new Description(
            "fault-current",
            "Prospective fault current",
            "How much current would flow into a short circuit here?",
            List.of(
                    "A short circuit of no resistance at the end of the branch, or of the feed, or at the battery if neither is entered.",
                    "Highest: battery being charged, at its least resistance, conductors of the full copper area at 20 °C, joints perfect.",
                    "Lowest: battery nearly empty, at its greatest resistance, conductors at the highest resistance of their table, warm, with their "
                            + "joints.",
                    "A cable may have a few per cent more copper than its name, and an arc has resistance of its own: leave a margin both "
                            + "ways.",
                    "The figure of the battery's maker always rules."),
            List.of(
                    BatteryKind.field(),
                    CAPACITY,
                    HIGHEST_VOLTAGE,
                    LOWEST_VOLTAGE,
                    BATTERY_VOLTAGE,
                    SHORT_CIRCUIT_CURRENT,
                    RESISTANCE_LOW,
                    RESISTANCE_HIGH,
                    IN_PARALLEL,
                    ConductorRun.conductorField(),
                    ConductorRun.temperatureField(),
                    FEED.sizeField(),
                    FEED.routeLengthField(),
                    BRANCH.sizeField(),
                    BRANCH.routeLengthField(),
                    FUSE_LINK,
                    FUSE_RESISTANCE,
                    JOINTS),
            List.of(
                    new Output("highest-current", "Highest prospective current", Units.AMPERE),
                    new Output("lowest-current", "Lowest prospective current", Units.AMPERE),
                    new Output("battery-current-highest", "The same at the terminals of the battery", Units.AMPERE),
                    new Output("loop-resistance-low", "Least resistance of the loop", Units.MILLIOHM),
                    new Output("loop-resistance-high", "Greatest resistance of the loop", Units.MILLIOHM),
                    new Output("battery-resistance-low", "Least inside resistance of the battery", Units.MILLIOHM),
                    new Output("battery-resistance-high", "Greatest inside resistance of the battery", Units.MILLIOHM)),
            FaultFormulas.NAMED);

    private FaultFields() {}

    private static QuantityField resistance(String key, String label) {
        return QuantityField.of(key, label, "Only if you enter it yourself, from a data sheet or a load test.", 0.1, 10_000, Units.MILLIOHM,
                Units.OHM)
                .optional();
    }
}
