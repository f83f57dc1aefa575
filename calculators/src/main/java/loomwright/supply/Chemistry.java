package loomwright.supply;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Entries;

/** The kinds of battery that figures are published for. */
public enum Chemistry implements Choice {
    LIFEPO4("lifepo4", "LiFePO4", "lifepo4-depth", "lifepo4-pack-cut-off"),
    LEAD_ACID("lead-acid", "lead-acid", "lead-acid-depth", "lead-acid-end-20-h");

    public static final Choices<Chemistry> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String depth;
    private final String cutOff;

    Chemistry(String key, String label, String depth, String cutOff) {
        this.key = key;
        this.label = label;
        this.depth = depth;
        this.cutOff = cutOff;
    }

    public static ChoiceField field() {
        return CHOICES.field("chemistry", "Kind of battery", "Printed on the battery.");
    }

    public static Chemistry of(Entries entries) {
        return CHOICES.of(entries.option("chemistry"));
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** The row with the usable depth for planning. */
    public Row depth() {
        return limit(depth);
    }

    /** That depth. */
    public Quantity plannedDepth() {
        return depth().quantity("value", Units.PERCENT);
    }

    /** The row with the voltage at which discharge ends. */
    public Row cutOff() {
        return limit(cutOff);
    }

    public static Row limit(String item) {
        return PublishedTables.batteryLimits().row(item);
    }
}
