package loomwright.plan;

import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.Choices;

/** The things that a reader fits. What is usual of each stands in the table usual-loads. */
public enum ItemKind implements Choice {
    USB("usb", "USB outlet", "constant-power", "constant-power", true),
    OUTLET("outlet", "12 V outlet", "constant-power", "constant-current", true),
    LIGHTS("lights", "Lights", "constant-power", "constant-power", false),
    NAVIGATION("navigation", "Navigation light", "resistive", "resistive", true),
    FAN("fan", "Fan", "constant-power", "constant-current", false),
    PUMP("pump", "Water pump", "constant-power", "constant-current", false),
    BILGE("bilge", "Bilge pump", "constant-power", "constant-current", true),
    MAT("mat", "Heated mat", "resistive", "resistive", false),
    RADIO("radio", "Radio", "constant-power", "constant-power", true),
    FRIDGE("fridge", "Fridge", "constant-power", "constant-power", true),
    OTHER("other", "Something else", "constant-power", "constant-power", true);

    static final Choices<ItemKind> CHOICES = Choices.among(values());

    private final String key;
    private final String label;
    private final String byPower;
    private final String byCurrent;
    private final boolean strict;

    ItemKind(String key, String label, String byPower, String byCurrent, boolean strict) {
        this.key = key;
        this.label = label;
        this.byPower = byPower;
        this.byCurrent = byCurrent;
        this.strict = strict;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String label() {
        return label;
    }

    /** The row of what is usual of it. */
    Row row() {
        return PublishedTables.usualLoads().row(key);
    }

    /** What it does when the voltage changes, if its watts or its amperes are known: a key of {@code load-kind}. */
    String loadKind(boolean amperes) {
        return amperes ? byCurrent : byPower;
    }

    /** What may be lost on the way to it: 3 % for what ABYC E-11 and ISO 10133 name and for what nobody named, else 10 %. */
    String allowance() {
        return strict ? "abyc-main" : "abyc-other";
    }

    /** Whether a motor starts in it. */
    boolean isMotor() {
        return row().has("start-factor");
    }

    /** Whether several hang on one run. All others have a run and a device each, so that a fault takes one away. */
    boolean sharesARun() {
        return this == LIGHTS;
    }

    /** What a switch has to make, as a key of {@code switched-as}. What nobody said may be a filament. */
    String switchedAs() {
        return switch (this) {
            case LIGHTS, NAVIGATION, OTHER -> "lamp";
            case MAT -> "resistive";
            case FAN, PUMP, BILGE, FRIDGE -> "motor";
            case USB, OUTLET, RADIO -> "by-figures";
        };
    }
}
