package loomwright.protection;

import loomwright.worked.ChoiceField;
import loomwright.worked.Option;

/** The kinds of device whose opening times are listed. */
enum TimedDevice {
    BLADE("blade", "Blade fuse-link", "blade fuse-link"),
    MINIATURE("miniature-blade", "Miniature (low-profile) blade fuse-link", "miniature blade fuse-link"),
    LARGE_BLADE("large-blade", "Large blade fuse-link", "large blade fuse-link"),
    CARTRIDGE("cartridge", "Small cartridge fuse listed to UL 248-14", "listed cartridge fuse"),
    SMALL_STRIP("small-strip", "Small bolt-in strip fuse-link (from memory)", "small strip fuse-link"),
    LARGE_STRIP("large-strip", "Large bolt-in strip fuse-link (from memory)", "large strip fuse-link"),
    MARINE_BREAKER("marine-breaker", "Marine-type breaker (times of one breaker)", "marine-type breaker");

    private final Option option;
    private final String words;

    TimedDevice(String key, String label, String words) {
        this.option = new Option(key, label);
        this.words = words;
    }

    static ChoiceField field(String key, String label) {
        Option[] options = new Option[values().length];
        for (TimedDevice device : values()) {
            options[device.ordinal()] = device.option;
        }
        return ChoiceField.of(key, label, "Each kind has its own gates: do not borrow those of another.", options);
    }

    static TimedDevice of(Option chosen) {
        for (TimedDevice device : values()) {
            if (device.option.equals(chosen)) {
                return device;
            }
        }
        throw new IllegalArgumentException("no device " + chosen.key());
    }

    String key() {
        return option.key();
    }

    /** In the middle of a sentence. */
    String words() {
        return words;
    }
}
