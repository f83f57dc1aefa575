package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Table;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Option;

/** The kinds of conductor whose resistance is published, each with its table and the temperature the table is for. */
public enum ConductorKind implements Choice {
    ISO_6722_1("iso-6722-1", "Road-vehicle cable, ISO 6722-1", "resistance", 20, Units.SQUARE_MILLIMETRE.symbol()),
    IEC_60228_CLASS_5("iec-60228-class-5", "Flexible cable, IEC 60228 class 5", "class-5", 20, Units.SQUARE_MILLIMETRE.symbol()),
    IEC_60228_CLASS_2("iec-60228-class-2", "Stranded cable, IEC 60228 class 2", "class-2", 20, Units.SQUARE_MILLIMETRE.symbol()),
    SOLID_COPPER("solid-copper", "Solid copper wire by AWG, NBS Handbook 100", "resistance-per-1000-ft", 20, Units.AWG.symbol()),
    NEC_STRANDED("nec-stranded", "Stranded copper by AWG, NEC chapter 9 table 8 (75 °C)", "resistance-per-1000-ft", 75, Units.AWG.symbol()),
    SAE_BY_AREA("sae-by-area", "SAE gauge cable, by its copper area", "sae-cross-section", 20, "SAE gauge numbers"),
    COPPER_BY_AREA("copper-by-area", "Any copper, by its true area", "", 20, Units.SQUARE_MILLIMETRE.symbol());

    private static final Choices<ConductorKind> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String column;
    private final double tableTemperature;
    private final String sizesIn;

    ConductorKind(String key, String label, String column, double tableTemperature, String sizesIn) {
        this.key = key;
        this.label = label;
        this.column = column;
        this.tableTemperature = tableTemperature;
        this.sizesIn = sizesIn;
    }

    /** The field that asks for the kind. */
    public static ChoiceField field() {
        return field(values());
    }

    /** The field that asks for one of some kinds. */
    static ChoiceField field(ConductorKind... kinds) {
        return Choices.among(kinds).field(
                "conductor", "Kind of conductor",
                "Look at the print on the cable: it names a standard. The kind decides which table the resistance comes from.");
    }

    /** The kind chosen. */
    public static ConductorKind of(Option chosen) {
        return CHOICES.of(chosen);
    }

    /** The kind of that key, or null. */
    public static ConductorKind named(String key) {
        return CHOICES.named(key);
    }

    /** The usual kind whose sizes are named in a unit, in the place of this one; this one if any size will do, or its sizes are named so. */
    public ConductorKind forSizesIn(Unit unit) {
        boolean metric = sizesIn.equals(Units.SQUARE_MILLIMETRE.symbol());
        if (this == COPPER_BY_AREA || metric == (unit == Units.SQUARE_MILLIMETRE)) {
            return this;
        }
        return metric ? NEC_STRANDED : ISO_6722_1;
    }

    /** The table, or null if the resistance is worked out from the area alone. */
    public Table table() {
        return switch (this) {
            case ISO_6722_1 -> PublishedTables.iso67221();
            case IEC_60228_CLASS_2, IEC_60228_CLASS_5 -> PublishedTables.iec60228();
            case SOLID_COPPER -> PublishedTables.awgCopper20c();
            case NEC_STRANDED -> PublishedTables.necCh9Table8();
            case SAE_BY_AREA -> PublishedTables.saeGaugeArea();
            case COPPER_BY_AREA -> null;
        };
    }

    String column() {
        return column;
    }

    /** Whether the table gives an area, from which the resistance is then worked out. */
    public boolean givesArea() {
        return this == SAE_BY_AREA;
    }

    Quantity tableTemperature() {
        return Quantity.of(tableTemperature, Units.CELSIUS);
    }

    /** How the table names its sizes. */
    public String sizesIn() {
        return sizesIn;
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
