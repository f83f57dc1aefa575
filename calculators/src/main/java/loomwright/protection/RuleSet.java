package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** What sets the highest rating of a fuse-link for a conductor. */
public enum RuleSet implements Choice {
    CONDUCTOR_AMPACITY("conductor-ampacity", "No more than the conductor may carry (common practice)"),
    US_33_CFR("33-cfr-183", "33 CFR 183.455 for petrol boats in the USA: up to 150 % of Table 5");

    static final Choices<RuleSet> CHOICES = Choices.among(values());

    private final String key;
    private final String label;

    RuleSet(String key, String label) {
        this.key = key;
        this.label = label;
    }

    public static ChoiceField field() {
        return CHOICES.field(
                "fuse-rule",
                "Rule for the highest rating",
                "Rule sets differ. Your own code decides; without one, stay at what the conductor may carry.");
    }

    public static RuleSet of(Option chosen) {
        return CHOICES.of(chosen);
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** The share of the ampacity it allows. */
    public Quantity share() {
        return this == US_33_CFR ? row().quantity("limit") : Quantity.of(100, Units.PERCENT);
    }

    /** The share it allows of an ampacity: more than the whole only of one from its own Table 5. */
    public Quantity shareOf(boolean ownTable) {
        return ownTable ? share() : Quantity.of(100, Units.PERCENT);
    }

    public Source source() {
        return this == US_33_CFR ? row().source() : Source.commonPractice();
    }

    String why(boolean allowsMore) {
        return allowsMore
                ? "This rule lets the fuse-link be rated above the ampacity, in circuits below 50 V."
                : "A fuse-link rated no higher than the ampacity clears overloads as well as short circuits.";
    }

    private static Row row() {
        return PublishedTables.overcurrentRating().row("33-cfr-below-50-v");
    }
}
