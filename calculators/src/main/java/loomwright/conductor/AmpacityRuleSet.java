package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.table.Table;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** The rule sets on ampacity. Each has its own table and conditions; {@link Warmth} says which factors go with which table. */
public enum AmpacityRuleSet implements Choice {
    BOAT("33-cfr-183", "Boat: 33 CFR 183.425 Table 5", "t60 t75 t80 t90 t105 t125 t200", "AWG",
            "33 CFR 183.425 Table 5: 30\u00a0°C around the conductor, outside engine spaces; an engine space counts as 50\u00a0°C."),
    AIRCRAFT("faa-11-9", "Aircraft bundle: FAA AC 43.13-1B Table 11-9", "t105 t150 t200", "AWG",
            "FAA Table 11-9: bundles of 33 wires and more (24 to 10 AWG) or of 9 (8 AWG and larger) with at most 20 % of the harness "
                    + "capacity"
                    + " in use, 70\u00a0°C around them, 60,000 ft up."),
    FREE_AIR("nec-free-air", "One conductor in free air: table of the NEC kind", "t60 t75 t90", "AWG",
            "Free-air table of the NEC kind: one single conductor with air all round it, 30\u00a0°C."),
    CORD("bs-7671-cord", "Flexible cord: BS 7671 Table 4F3A", "t60 t90", "the sizes of flexible cords",
            "BS 7671 Table 4F3A: cautious currents for the flexible cords of appliances, one cord by itself; its factors begin at 35\u00a0°C."),
    TOWING("towing-cable", "Vehicle cable of 0.30 mm strands: trade page", "", "vehicle cable of 0.30 mm strands",
            "Trade page on towing-electrics cable: continuous current; the page states no temperature and no bundle.");

    private static final int MOST_TOGETHER_LARGE_AIRCRAFT = 9;

    private static final Choices<AmpacityRuleSet> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String columns;
    private final String sizesIn;
    private final String conditions;

    AmpacityRuleSet(String key, String label, String columns, String sizesIn, String conditions) {
        this.key = key;
        this.label = label;
        this.columns = columns;
        this.sizesIn = sizesIn;
        this.conditions = conditions;
    }

    /** The field that asks for the rule set, with {@code more} choices behind. */
    public static ChoiceField field(Option... more) {
        return CHOICES.field(
                "rule-set", "Rule set on ampacity",
                "Tables differ because their conditions differ. Choose the one whose conditions are nearest to yours, and stay with it.", more);
    }

    /** The rule set chosen, or null if the choice is none of them. */
    public static AmpacityRuleSet of(Option chosen) {
        return CHOICES.find(chosen);
    }

    /** Under what conditions its figures hold. */
    public String conditions() {
        return conditions;
    }

    Table table() {
        return switch (this) {
            case BOAT -> PublishedTables.no33Cfr183425Table5();
            case AIRCRAFT -> PublishedTables.faaTable119();
            case FREE_AIR -> PublishedTables.freeAirAmpacity30c();
            case CORD -> PublishedTables.bs7671FlexibleCord();
            case TOWING -> PublishedTables.towingCable();
        };
    }

    /** The row of a size, or null if the table does not list it. Table 5 lets a thinner row stand in. */
    public Row row(Quantity size) {
        if (this == BOAT) {
            return TableFive.row(size);
        }
        boolean gaugeTable = table().columns().get(0).unit() == Units.AWG;
        return gaugeTable == (size.unit() == Units.AWG) ? table().find("size", size) : null;
    }

    /** The column of an insulation. */
    String column(Insulation insulation) {
        return this == CORD || this == TOWING ? "current" : insulation.column();
    }

    /** Whether the rule set has figures for an insulation. */
    boolean covers(Insulation insulation) {
        return columns.isEmpty() || (columns + " ").contains(insulation.column() + " ");
    }

    /** How many conductors together its table holds for, without a factor. */
    int mostTogether(Row row) {
        return switch (this) {
            case BOAT, CORD, TOWING -> 2;
            case FREE_AIR -> 3;
            case AIRCRAFT -> row.quantity("size").value() <= 8 ? MOST_TOGETHER_LARGE_AIRCRAFT : Integer.MAX_VALUE;
        };
    }

    static Row bundleRow(int together) {
        Row found = null;
        for (Row row : PublishedTables.no33Cfr183425Bundling().rows()) {
            if (row.quantity("conductors-from", Units.ONE).value() <= together) {
                found = row;
            }
        }
        return found;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }
}
