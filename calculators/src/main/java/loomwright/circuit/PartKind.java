package loomwright.circuit;

import java.util.List;
import loomwright.worked.Field;

/** The kinds of part a circuit is made of, each with what is asked for it. */
public enum PartKind {
    SUPPLY("supply", "Battery", SupplyEntries.FIELDS),
    PANEL("panel", "Fuse panel", PanelEntries.FIELDS),
    PROTECTION("protection", "Fuse-link or breaker", ProtectionEntries.FIELDS),
    ISOLATOR("isolator", "Isolating switch", IsolatorEntries.FIELDS),
    SWITCH("switch", "Switching device", SwitchEntries.FIELDS),
    CONDUCTOR("conductor", "Conductor run", ConductorEntries.FIELDS),
    JOINT("joint", "Joints", JointEntries.FIELDS),
    LOAD("load", "Load", LoadEntries.FIELDS);

    private final String key;
    private final String label;
    private final List<Field> fields;

    PartKind(String key, String label, List<Field> fields) {
        this.key = key;
        this.label = label;
        this.fields = fields;
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

    /** The place of a field, or −1. */
    public int indexOf(String fieldKey) {
        return Typed.indexOf(fields, fieldKey);
    }

    /** Whether other parts may be fed from it. A load is the end of its branch. */
    public boolean feeds() {
        return this != LOAD;
    }

    /** Whether it may be switched by a trigger from another part. */
    public boolean isTriggered() {
        return this == SWITCH;
    }
}
