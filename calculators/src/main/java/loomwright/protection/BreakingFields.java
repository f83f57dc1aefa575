package loomwright.protection;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the check of a breaking capacity asks and answers. */
final class BreakingFields {
    static final QuantityField CAPACITY = QuantityField.of(
                    "rated-capacity", "Breaking capacity of the device", "Only for a device whose figures you enter.", 1, 200_000,
                    Units.AMPERE,
                    Units.KILOAMPERE)
            .optional();

    static final QuantityField RATED_VOLTAGE = QuantityField.of(
                    "rated-voltage", "Direct voltage it holds for",
                    "Only for a device whose figures you enter. A figure for a.c. does not count.",
                    1, 1000, Units.VOLT)
            .optional();

    private static final ChoiceField DEVICE = DeviceKind.withBreakingCapacity().field(
            "device",
            "Fuse-link or breaker",
            "The breaking capacity stands in its data sheet, often as AIC or interrupting rating, with the voltage it holds for.",
            new Option("given", "Device whose figures I enter"));

    static final QuantityField PROSPECTIVE = QuantityField.of(
            "prospective-current", "Highest prospective current", "At the place of the device: the highest end of the range.", 1, 200_000,
            Units.AMPERE, Units.KILOAMPERE);

    private static final QuantityField SYSTEM_VOLTAGE = QuantityField.of(
                    "system-voltage", "Highest voltage of the circuit", "While the battery is being charged.", 1, 1000, Units.VOLT)
            .usually("14.6 V");

    private static final QuantityField CRANKING = QuantityField.of(
                    "cold-cranking-current",
                    "Cold-cranking current of all batteries",
                    "From their labels, added up for batteries in parallel. If you enter it, a boat rule is checked as well.",
                    50, 20_000, Units.AMPERE)
            .optional();

    private static final ChoiceField PLACE = ChoiceField.of(
            "place",
            "The device is",
            "The boat rule asks less of a device behind another.",
            new Option("main", "the first one after the battery"),
            new Option("branch", "in a branch, behind a main device"));

    static final Description DESCRIPTION = new Description(
            "breaking-capacity",
            "Breaking capacity",
            "Can this fuse-link or breaker interrupt the worst short circuit here?",
            List.of(
                    "Direct current. A figure for alternating current says nothing: an a.c. arc goes out by itself.",
                    "The prospective current is the one that would flow with a link of no resistance in the device's place.",
                    "The rating of a device in amperes is not its breaking capacity."),
            List.of(DEVICE, PROSPECTIVE, SYSTEM_VOLTAGE, CAPACITY, RATED_VOLTAGE, CRANKING, PLACE),
            List.of(
                    new Output("breaking-capacity", "Breaking capacity of the device", Units.AMPERE),
                    new Output("share-percent", "Short-circuit current as a share of breaking capacity", Units.PERCENT),
                    new Output("wanted-capacity", "Breaking capacity that the boat rule asks for", Units.AMPERE)),
            List.of(new NamedFormula("share", BreakingFormulas.LOADING)));

    private BreakingFields() {}
}
