package loomwright.conductor;

import java.util.List;
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

    static final QuantityField AMBIENT = QuantityField.of(
                    "ambient",
                    "Temperature around the conductor",
                    "Where the conductor is warmest. Leave it empty for what the table takes for granted.",
                    -40, 150, Units.CELSIUS, Units.FAHRENHEIT)
            .optional();

    static final QuantityField TOGETHER = QuantityField.of(
                    "conductors-together",
                    "Conductors together",
                    "How many loaded conductors lie against each other, out and back counted as two.",
                    1, 1000, Units.ONE)
            .usually("2");

    static final QuantityField SYSTEM_VOLTAGE = QuantityField.of(
                    "system-voltage",
                    "Nominal voltage",
                    "33 CFR makes its bundling factors compulsory from 50 V up.",
                    1, 600, Units.VOLT)
            .usually("12 V");

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
                    "Each rule set has its own conditions and its own factors. They are never mixed.",
                    "No reading between the rows of a table: between two temperatures the warmer row counts.",
                    "Sizes a table does not list have no ampacity here; in Table 5 of 33 CFR alone, the row of a thinner AWG stands in. "
                            + "A fuse-link or breaker must protect the conductor as well."),
            List.of(
                    AmpacityRuleSet.field(),
                    ConductorFields.size(),
                    Insulation.field(Insulation.values()),
                    ENGINE_SPACE,
                    AMBIENT,
                    TOGETHER,
                    SYSTEM_VOLTAGE,
                    DESIGN_CURRENT),
            List.of(
                    new Output("ampacity", "Ampacity", Units.AMPERE),
                    new Output("table-current", "Current in the table", Units.AMPERE),
                    new Output("warmth-factor", "Factor for warm surroundings", Units.ONE),
                    new Output("bundle-factor", "Factor for conductors together", Units.ONE),
                    new Output("ampacity-bundled", "The same with the bundling factor, compulsory or not", Units.AMPERE),
                    new Output("loading-percent", "Design current as a share of the ampacity", Units.PERCENT)),
            List.of(
                    new NamedFormula("warm", AmpacityFormulas.WARM),
                    new NamedFormula("bundled", AmpacityFormulas.BUNDLED),
                    new NamedFormula("warm-and-bundled", AmpacityFormulas.WARM_AND_BUNDLED),
                    new NamedFormula("loading", AmpacityFormulas.LOADING)));

    private AmpacityFields() {}
}
