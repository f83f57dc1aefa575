package loomwright.circuit;

import java.util.List;
import loomwright.worked.Field;

/** The kinds of part a circuit is made of, each with what is asked for it. */
public enum PartKind {
    SUPPLY("supply", "Battery", SupplyEntries.FIELDS, Supply::of),
    PANEL("panel", "Fuse panel", PanelEntries.FIELDS, Panel::of),
    PROTECTION("protection", "Fuse-link or breaker", ProtectionEntries.FIELDS, Protection::of),
    ISOLATOR("isolator", "Isolating switch", IsolatorEntries.FIELDS, Isolator::of),
    SWITCH("switch", "Switching device", SwitchEntries.FIELDS, Switching::of),
    CONDUCTOR("conductor", "Conductor run", ConductorEntries.FIELDS, Conductor::of),
    JOINT("joint", "Joints", JointEntries.FIELDS, Joint::of),
    LOAD("load", "Load", LoadEntries.FIELDS, Load::of),
    SOURCE("source", "Source of charge", SourceEntries.FIELDS, ChargeSource::of);

    private final String key;
    private final String label;
    private final List<Field> fields;
    private final Understanding understanding;

    /** How a part of the kind is understood. */
    private interface Understanding {
        Figures of(Part part);
    }

    PartKind(String key, String label, List<Field> fields, Understanding understanding) {
        this.key = key;
        this.label = label;
        this.fields = fields;
        this.understanding = understanding;
    }

    /** The kind of that key, or null. */
    public static PartKind of(String key) {
        for (PartKind kind : values()) {
            if (kind.key.equals(key)) {
                return kind;
            }
        }
        return null;
    }

    /** Its name in files, such as {@code conductor}. */
    public String key() {
        return key;
    }

    /** Its name on the page. */
    public String label() {
        return label;
    }

    /** What is asked for it, in order. */
    public List<Field> fields() {
        return fields;
    }

    /**
     * What a part of this kind is understood as.
     *
     * @throws loomwright.worked.Refusal if its figures do not go together
     */
    Figures figures(Part part) {
        return understanding.of(part);
    }

    /** The place of a field, or −1. */
    public int indexOf(String fieldKey) {
        return Typed.indexOf(fields, fieldKey);
    }

    /** Whether other parts may be fed from it. A load or a source of charge is the end of its branch. */
    public boolean feeds() {
        return this != LOAD && this != SOURCE;
    }

    /** Whether it may be switched by a trigger from another part. */
    public boolean isTriggered() {
        return this == SWITCH;
    }
}
