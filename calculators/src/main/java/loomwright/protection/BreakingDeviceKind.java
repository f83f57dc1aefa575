package loomwright.protection;

import java.util.Locale;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The kinds of device whose breaking capacity is listed, and one the reader enters. */
enum BreakingDeviceKind {
    BLADE("blade", "Blade fuse-link", ""),
    LARGE_BLADE("large-blade", "Large blade fuse-link", ""),
    SMALL_STRIP("small-strip", "Small bolt-in strip fuse-link", ""),
    LARGE_STRIP("large-strip", "Large bolt-in strip fuse-link", ""),
    CLASS_T("class-t", "Current-limiting class T fuse", " (from memory)"),
    BOLTED_WINDOW("bolted-window", "Flat bolted fuse with a window", " (from memory)"),
    TERMINAL_CUBE("terminal-cube", "Cube fuse on a battery terminal", " (from memory)"),
    GIVEN("given", "Device whose figures I enter", "");

    private final Option option;
    private final String name;

    BreakingDeviceKind(String key, String name, String remark) {
        this.option = new Option(key, name + remark);
        this.name = name;
    }

    static ChoiceField field() {
        Option[] options = new Option[values().length];
        for (BreakingDeviceKind kind : values()) {
            options[kind.ordinal()] = kind.option;
        }
        return ChoiceField.of(
                "device",
                "Fuse-link or breaker",
                "The breaking capacity stands in its data sheet, often as AIC or interrupting rating, with the voltage it holds for.",
                options);
    }

    static BreakingDeviceKind of(Option chosen) {
        for (BreakingDeviceKind kind : values()) {
            if (kind.option.equals(chosen)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no device " + chosen.key());
    }

    /** In the middle of a sentence. */
    String words() {
        return this == GIVEN ? "the device entered" : "a " + name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** The printed row; null if the reader enters the figures. */
    Row row() {
        return PublishedTables.fuseBreakingCapacity().find("device", option.key());
    }
}
