package loomwright.circuit;

import loomwright.protection.FuseType;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The kinds of device that protect a conductor. Their keys are those of the tables on breaking capacity and opening times. */
public enum DeviceKind {
    BLADE("blade", "Blade fuse-link", "blade fuse-link"),
    MINIATURE_BLADE("miniature-blade", "Miniature (low-profile) blade fuse-link", "miniature blade fuse-link"),
    LARGE_BLADE("large-blade", "Large blade fuse-link", "large blade fuse-link"),
    SMALL_STRIP("small-strip", "Small bolt-in strip fuse-link", "small strip fuse-link"),
    LARGE_STRIP("large-strip", "Large bolt-in strip fuse-link", "large strip fuse-link"),
    CLASS_T("class-t", "Current-limiting class T fuse", "class T fuse"),
    BOLTED_WINDOW("bolted-window", "Flat bolted fuse with a window", "flat bolted fuse"),
    TERMINAL_CUBE("terminal-cube", "Cube fuse on a battery terminal", "cube fuse"),
    BREAKER("marine-breaker", "Breaker", "breaker");

    private final String key;
    private final String label;
    private final String words;

    DeviceKind(String key, String label, String words) {
        this.key = key;
        this.label = label;
        this.words = words;
    }

    static ChoiceField field() {
        Option[] options = new Option[values().length];
        for (DeviceKind kind : values()) {
            options[kind.ordinal()] = new Option(kind.key, kind.label);
        }
        return ChoiceField.of(
                "device", "Kind of device", "It decides what current it can break and how soon it opens. A breaker can be reset.", options);
    }

    static DeviceKind of(String key) {
        for (DeviceKind kind : values()) {
            if (kind.key.equals(key)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no device " + key);
    }

    public String key() {
        return key;
    }

    public String label() {
        return label;
    }

    /** In the middle of a sentence. */
    public String words() {
        return words;
    }

    /** The printed row of its breaking capacity, or null. */
    public Row breakingRow() {
        return PublishedTables.fuseBreakingCapacity().find("device", key);
    }

    /** The series of its standard ratings, or null if none is in print. */
    public FuseType series() {
        return switch (this) {
            case BLADE, MINIATURE_BLADE -> FuseType.BLADE;
            case LARGE_BLADE -> FuseType.LARGE_BLADE;
            default -> null;
        };
    }
}
