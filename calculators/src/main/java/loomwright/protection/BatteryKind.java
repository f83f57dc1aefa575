package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Entries;
import loomwright.worked.Option;

/** Where the inside resistance of a battery may come from. */
enum BatteryKind implements Choice {
    SHORT_CIRCUIT_CURRENT("short-circuit-current", "Short-circuit current from the battery's maker", ""),
    LEAD_ACID("lead-acid-100-ah", "12 V lead-acid, 100 Ah", "lead-acid-100-ah-resistance"),
    LIFEPO4("lifepo4-100-ah", "12.8 V LiFePO4, 100 Ah, its electronic switch shorted (from memory)", "lifepo4-100-ah"),
    LIFEPO4_SMALL("lifepo4-small-pack", "12.8 V LiFePO4 pack, 3.6 Ah to 4.8 Ah", "lifepo4-small-pack"),
    STARTING("starting-60-ah", "Car starting battery, 60 Ah (from memory)", "starting-60-ah"),
    GIVEN("given", "Inside resistance that I enter", "");

    static final Choices<BatteryKind> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String item;

    BatteryKind(String key, String label, String item) {
        this.key = key;
        this.label = label;
        this.item = item;
    }

    static ChoiceField field() {
        return CHOICES.field(
                        "battery", "Battery",
                        "The short-circuit current stated by its maker always rules. Without it, take a printed range.")
                .usually(LEAD_ACID.key);
    }

    /** The kind chosen. A LiFePO4 battery never takes the figures of a lead-acid one. */
    static BatteryKind of(Entries entries) {
        BatteryKind kind = CHOICES.of(entries.option("battery"));
        Option chemistry = entries.option("chemistry");
        boolean lithium = chemistry != null && chemistry.key().equals("lifepo4");
        return lithium && (kind == LEAD_ACID || kind == STARTING) ? LIFEPO4 : kind;
    }

    /** The capacity its figures are printed for; null if they are for no single one. */
    Quantity capacity() {
        return switch (this) {
            case LEAD_ACID, LIFEPO4 -> Quantity.of(100, Units.AMPERE_HOUR);
            case STARTING -> Quantity.of(60, Units.AMPERE_HOUR);
            default -> null;
        };
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** In the middle of a sentence. */
    String words() {
        return switch (this) {
            case LEAD_ACID -> "a 12 V lead-acid battery of 100 Ah";
            case LIFEPO4 -> "a 12.8 V LiFePO4 battery of 100 Ah";
            case LIFEPO4_SMALL -> "a 12.8 V LiFePO4 pack of 3.6 Ah to 4.8 Ah";
            case STARTING -> "a car starting battery of 60 Ah";
            case SHORT_CIRCUIT_CURRENT, GIVEN -> "the one entered";
        };
    }

    boolean isLithium() {
        return this == LIFEPO4 || this == LIFEPO4_SMALL;
    }

    /** The printed row of its inside resistance; null if the reader enters it. */
    Row row() {
        return item.isEmpty() ? null : PublishedTables.batteryFaultCurrent().row(item);
    }

    /** The row on school exercises, whose resistances are far too large. */
    static Row schoolExercise() {
        return PublishedTables.batteryFaultCurrent().row("school-exercise");
    }
}
