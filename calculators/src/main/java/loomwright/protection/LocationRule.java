package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Standing;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Choices;
import loomwright.worked.Comparison;
import loomwright.worked.Option;

/** What print says of the distance between a source and its fuse-link or breaker, by rule set and situation. */
enum LocationRule implements Choice {
    CFR_SOURCE("33-cfr-source", "33 CFR 183.455(b): from the source, conductor in the open"),
    CFR_SHEATHED("33-cfr-sheathed", "33 CFR 183.455(b): conductor in a sheath or enclosure all the way"),
    ABYC_OLDER("abyc-older", "ABYC E-11, older: sheathed battery cable"),
    ABYC_NEWER("abyc-newer", "ABYC E-11, newer practice: conductor at a battery bank"),
    ISO_SOURCE("iso-10133-source", "ISO 10133 and ISO 13297: from the source (from memory)"),
    ISO_CHARGING("iso-13297-charging", "ISO 13297: conductor to a charging source, from that source"),
    ISO_13590_ORIGIN("iso-13590-origin", "ISO 13590, personal watercraft: from the origin of the conductor"),
    ISO_13590_SHEATHED("iso-13590-sheathed", "ISO 13590, personal watercraft: sheathed conductor"),
    ISO_13590_BATTERY("iso-13590-battery", "ISO 13590, personal watercraft: from a storage battery"),
    NEC_552("nec-552", "NEC Article 552, park trailers: from where the supply connects");

    static final Choices<LocationRule> CHOICES = Choices.among(values());

    private final String key;
    private final String label;

    LocationRule(String key, String label) {
        this.key = key;
        this.label = label;
    }

    static ChoiceField field() {
        return CHOICES.field(
                "rule-set",
                "Rule set and situation",
                "Take the rule set that binds you. None of them was written for a small trailer: without one of your own, take the "
                        + "shortest.");
    }

    static LocationRule of(Option chosen) {
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

    Row row() {
        return PublishedTables.overcurrentLocation().row(key);
    }

    /** The distance as it is printed, in the unit of the print. */
    Quantity limit() {
        return row().quantity("as-printed", Units.METRE);
    }

    boolean isFromMemory() {
        return row().source().standing() == Standing.FROM_MEMORY;
    }

    boolean allows(Quantity distance) {
        return Comparison.atMost(distance, limit());
    }

    /** The same rule for the conductor in the other situation, sheathed for open or open for sheathed; null if there is none. */
    LocationRule otherSheath() {
        return switch (this) {
            case CFR_SOURCE -> CFR_SHEATHED;
            case CFR_SHEATHED -> CFR_SOURCE;
            case ISO_13590_ORIGIN -> ISO_13590_SHEATHED;
            case ISO_13590_SHEATHED -> ISO_13590_ORIGIN;
            default -> null;
        };
    }

    /** The published rule that allows least. */
    static LocationRule strictest() {
        LocationRule strictest = CFR_SOURCE;
        for (LocationRule rule : values()) {
            boolean stricter = rule.limit().base() < strictest.limit().base();
            strictest = stricter && !rule.isFromMemory() ? rule : strictest;
        }
        return strictest;
    }
}
