package loomwright.conductor;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the ampacity calculator asks and answers. */
final class AmpacityFields {
    static final ChoiceField ENGINE_SPACE = ChoiceField.of(
            "engine-space",
            "Engine space",
            "Whether any part of the conductor runs where an engine warms it. A factor of 33 CFR only.",
            new Option("no", "no"),
            new Option("yes", "yes"));

    /** A closed vehicle in summer; warmer than the 30 °C that most tables start from. source: common practice. */
    static final Quantity USUAL_AMBIENT = Quantity.of(40, Units.CELSIUS);

    static final QuantityField AMBIENT = QuantityField.of(
                    "ambient",
                    "Temperature around the conductor",
                    "Where the conductor is warmest: 40 °C for a closed vehicle in summer, more under a roof in the sun.",
                    -40, 150, Units.CELSIUS, Units.FAHRENHEIT)
            .usually("40 °C");

    static final QuantityField TOGETHER = QuantityField.of(
                    "conductors-together",
                    "Conductors together",
                    "How many loaded conductors lie against each other, out and back counted as two.",
                    1, 1000, Units.ONE)
            .usually("2");

    static final QuantityField OWN_FACTOR = QuantityField.of(
                    "own-factor",
                    "Factor of your own",
                    "If a data sheet or a rule of yours asks for a further factor, such as 0.8: the current is multiplied by it. It can only take away.",
                    0.05, 1, Units.ONE, Units.PERCENT)
            .optional();

    static final QuantityField SHEET = QuantityField.of(
                    "sheet-ampacity", "Ampacity by its data sheet",
                    "What the cable may carry as warm and as bundled as it lies here, if its data sheet says so. Empty takes the table.", 0.1, 1000,
                    Units.AMPERE)
            .optional();

    static final QuantityField DESIGN_CURRENT = QuantityField.of(
                    "design-current",
                    "Design current",
                    "If you enter it, it is held against the ampacity.",
                    0.001, 2000, Units.AMPERE, Units.MILLIAMPERE)
            .optional();

    static final Description DESCRIPTION = new Description(
            "ampacity",
            "Ampacity of a conductor",
            "How much current may this conductor carry without pause?",
            List.of(
                    "Copper, direct current, carried without pause.",
                    "Each rule set has its own conditions. For places of 30 °C to 55 °C, of which 33 CFR prints only the engine space of 50 °C, the factors of the "
                            + "NEC are used with its table: both start at 30 °C and print the same figures at 50 °C.",
                    "No reading between the rows of a table: between two temperatures the warmer row counts.",
                    "For a size that a table does not list the row of a thinner one stands in. A size thinner than every row, or a place warmer than "
                            + "every factor, has no ampacity: then only what it carries at most is shown.",
                    "A fuse-link or breaker must protect the conductor as well."),
            List.of(
                    AmpacityRuleSet.field(),
                    ConductorFields.size(),
                    Insulation.field(Insulation.values()),
                    ENGINE_SPACE,
                    AMBIENT,
                    TOGETHER,
                    OWN_FACTOR,
                    DESIGN_CURRENT),
            List.of(
                    new Output("ampacity", "Ampacity", Units.AMPERE),
                    new Output("at-most", "It carries less than", Units.AMPERE),
                    new Output("table-current", "Current in the table", Units.AMPERE),
                    new Output("warmth-factor", "Factor for warm surroundings", Units.ONE),
                    new Output("bundle-factor", "Factor for conductors together", Units.ONE),
                    new Output("own-factor", "Factor of your own", Units.ONE),
                    new Output("loading-percent", "Design current as a share of the ampacity", Units.PERCENT)),
            List.of(
                    new NamedFormula("warm", AmpacityFormulas.WARM),
                    new NamedFormula("bundled", AmpacityFormulas.BUNDLED),
                    new NamedFormula("warm-and-bundled", AmpacityFormulas.WARM_AND_BUNDLED),
                    new NamedFormula("own-factor", AmpacityFormulas.OWN),
                    new NamedFormula("loading", AmpacityFormulas.LOADING)));

    private AmpacityFields() {}
}
