package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** What sets the highest rating of a fuse-link for a conductor. */
public enum RuleSet {
    CONDUCTOR_AMPACITY("conductor-ampacity", "No more than the conductor may carry (common practice)"),
    US_33_CFR("33-cfr-183", "33 CFR 183.455 for petrol boats in the USA: up to 150 % of Table 5");

    private final Option option;

    RuleSet(String key, String label) {
        this.option = new Option(key, label);
    }

    public static ChoiceField field() {
        Option[] options = new Option[values().length];
        for (RuleSet rules : values()) {
            options[rules.ordinal()] = rules.option;
        }
        return ChoiceField.of(
                "rule-set",
                "Rule for the highest rating",
                "Rule sets differ. Your own code decides; without one, stay at what the conductor may carry.",
                options);
    }

    public static RuleSet of(Option chosen) {
        for (RuleSet rules : values()) {
            if (rules.option.equals(chosen)) {
                return rules;
            }
        }
        throw new IllegalArgumentException("no rule set " + chosen.key());
    }

    /** The share of the ampacity it allows. */
    public Quantity share() {
        return this == US_33_CFR ? row().quantity("limit") : Quantity.of(100, Units.PERCENT);
    }

    public Source source() {
        return this == US_33_CFR ? row().source() : Source.commonPractice();
    }

    String why() {
        return this == US_33_CFR
                ? "This rule lets the fuse-link be rated above the ampacity, in circuits below 50 V."
                : "A fuse-link rated no higher than the ampacity clears overloads as well as short circuits.";
    }

    private static Row row() {
        return PublishedTables.overcurrentRating().find("case", "33-cfr-below-50-v");
    }
}
