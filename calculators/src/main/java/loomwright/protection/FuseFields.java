package loomwright.protection;

import java.util.ArrayList;
import java.util.List;
import loomwright.conductor.CapacitySteps;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the choice of a fuse-link asks and answers. */
final class FuseFields {
    static final QuantityField DESIGN_CURRENT = QuantityField.of(
            "design-current", "Design current", "The most the load draws for longer than a moment. Starting currents are another matter.",
            0.001, 1000, Units.AMPERE, Units.MILLIAMPERE);

    static final ChoiceField CONTINUOUS = ChoiceField.of(
            "continuous",
            "Runs for three hours or more",
            "A rule for mains asks that such a load takes 80 % of the rating at most. 12 V work has borrowed it.",
            new Option("yes", "yes"),
            new Option("no", "no"));

    static final QuantityField SIZE = QuantityField.of(
            "size", "Size of the thinnest conductor behind it",
            "The thinnest piece decides. Enter SAE gauge by its area, in mm² or circular mils.", 0.05, 150, Units.SQUARE_MILLIMETRE,
            Units.AWG,
            Units.CIRCULAR_MIL);

    static final QuantityField AMBIENT = QuantityField.of(
                    "fuse-ambient", "Temperature around the fuse-link", "In a closed box in the sun it may be 40 °C and more.", -40, 125,
                    Units.CELSIUS,
                    Units.FAHRENHEIT)
            .usually("20 °C");

    static final QuantityField WARM_SHARE = QuantityField.of(
                    "warm-share", "Share of its rating left in the warm",
                    "From the re-rating in the data sheet of your own fuse-link, for the temperature above. Empty takes that of a large blade.",
                    10, 100, Units.PERCENT)
            .optional();

    static final QuantityField PROSPECTIVE = BreakingFields.PROSPECTIVE.optional();

    static final Description DESCRIPTION = new Description(
            "fuse-choice",
            "Choosing a fuse-link",
            "Which rating carries the load and still guards the conductor?",
            List.of(
                    "The fuse-link guards the conductor. The device may need a smaller one of its own: follow its maker.",
                    "What the conductor may carry is worked out as in \u201cAmpacity of a conductor\u201d: by the table of the rule set, as warm and as bundled as it "
                            + "lies. Where nobody said, insulation for 60 °C and 40 °C around it.",
                    "Nothing is said of how fast it opens, of starting currents, or of where it has to sit.",
                    "Circuits below 50 V, direct current."),
            fields(),
            List.of(
                    new Output("ampacity", "Current the conductor may carry", Units.AMPERE),
                    new Output("at-most", "It carries less than", Units.AMPERE),
                    new Output("highest-rating", "Highest rating the conductor allows", Units.AMPERE),
                    new Output("least-rating", "Least rating the load asks for", Units.AMPERE),
                    new Output("chosen-rating", "Standard rating chosen", Units.AMPERE),
                    new Output("loading-percent", "Load as a share of the rating", Units.PERCENT)),
            FuseFormulas.NAMED);

    private FuseFields() {}

    private static List<Field> fields() {
        List<Field> fields = new ArrayList<>(List.of(DESIGN_CURRENT, CONTINUOUS, SIZE));
        fields.addAll(CapacitySteps.fields());
        fields.addAll(List.of(
                RuleSet.field(), DeviceKind.withRatings().field("fuse-type", "Kind of fuse-link", "What the fuse-holder takes."), AMBIENT, WARM_SHARE,
                PROSPECTIVE));
        return List.copyOf(fields);
    }
}
