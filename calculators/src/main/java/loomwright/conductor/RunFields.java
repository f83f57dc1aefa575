package loomwright.conductor;

import java.util.List;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** What the choice of a size for a run asks and answers. */
final class RunFields {
    static final Option DROP_ONLY = new Option("drop-only", "none: by drop alone");

    static final QuantityField ALLOWANCE = QuantityField.of(
                    "allowance", "Drop allowed", "3 % for main feeds, navigation lights, bilge pumps and electronics; 10 % for lighting "
                            + "and the like.",
                    0.1, 50, Units.PERCENT)
            .orElse(0.01, 20, Units.VOLT, Units.MILLIVOLT)
            .usually("3 %");

    static final ChoiceField METHOD = ChoiceField.of(
            "method",
            "Way of working out the drop",
            "From the table of the conductor, or by the small-craft formula with K = 10.75 behind the printed 12 V tables.",
            new Option("table", "from the table of the conductor"),
            new Option("circular-mil-10.75", "circular mils, K = 10.75"));

    static final QuantityField FUSE_RATING = QuantityField.of(
                    "fuse-rating", "Rating of the fuse-link or breaker", "If you have chosen one. The conductor must suit it.", 0.5, 600,
                    Units.AMPERE)
            .optional();

    static final ChoiceField FUSE_RULE = ChoiceField.of(
            "fuse-rule",
            "Rule for the highest rating",
            "What the conductor may carry, or 150 % of it by 33 CFR 183.455 below 50 V.",
            new Option("conductor-ampacity", "at most the ampacity"),
            new Option("33-cfr-183", "at most 150 % of the ampacity, 33 CFR 183.455"));

    private static final ChoiceField KIND = ConductorKind.field(
            ConductorKind.ISO_6722_1, ConductorKind.IEC_60228_CLASS_5, ConductorKind.IEC_60228_CLASS_2, ConductorKind.NEC_STRANDED,
            ConductorKind.SOLID_COPPER, ConductorKind.SAE_BY_AREA);

    private static final ChoiceField RULE_SET = AmpacityRuleSet.field(DROP_ONLY);

    static final Description DESCRIPTION = new Description(
            "size-for-run",
            "Size of conductor for a run",
            "Which is the thinnest conductor that passes every check?",
            List.of(
                    "Steady direct current; the conductor back is the same as the one out. Joints, fuse-links and switches come on top.",
                    "Three checks, each by its own source: drop, ampacity, and the fuse-link if one is entered.",
                    "Only sizes that a table lists, and only ampacities of the one rule set chosen. What no table gives does not pass.",
                    "The thinnest that passes is the least, not the best: thicker loses less."),
            List.of(
                    DropFields.CURRENT,
                    DropFields.ROUTE_LENGTH,
                    DropFields.LENGTH_COUNTS,
                    KIND,
                    ConductorFields.temperature(),
                    DropFields.SUPPLY_VOLTAGE,
                    ALLOWANCE,
                    METHOD,
                    RULE_SET,
                    Insulation.field(Insulation.values()),
                    AmpacityFields.ENGINE_SPACE,
                    AmpacityFields.AMBIENT,
                    AmpacityFields.TOGETHER,
                    AmpacityFields.OWN_FACTOR,
                    FUSE_RATING,
                    FUSE_RULE),
            List.of(
                    new Output("chosen-size", "Thinnest metric size that passes", Units.SQUARE_MILLIMETRE),
                    new Output("chosen-gauge", "Thinnest gauge that passes", Units.AWG, "chosen-size"),
                    new Output("chosen-sae-area", "Area of the thinnest SAE gauge that passes", Units.SQUARE_MILLIMETRE, "chosen-size"),
                    new Output("drop", "Voltage drop with it", Units.VOLT),
                    new Output("drop-percent", "Drop as a share of the supply voltage", Units.PERCENT),
                    new Output("ampacity", "Ampacity of it", Units.AMPERE),
                    new Output("fuse-limit", "Highest rating of a fuse-link on it", Units.AMPERE),
                    new Output("highest-resistance-per-metre", "Highest resistance of one metre for the drop", Units.MILLIOHM_PER_METRE),
                    new Output("least-area", "Least area for the drop", Units.CIRCULAR_MIL)),
            RunFormulas.NAMED);

    private RunFields() {}
}
