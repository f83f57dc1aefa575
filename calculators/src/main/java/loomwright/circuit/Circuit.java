package loomwright.circuit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A whole installation: a battery, and parts each fed from one part before it. Never changes; {@link CircuitEdits} gives new ones.
 *
 * @param name what the reader calls it; may be empty
 * @param parts the battery first; each part after the one that feeds it
 * @param panel the panel its outlets go into, or {@link DrilledPanel#NONE}
 */
public record Circuit(String name, List<Part> parts, DrilledPanel panel) {
    /** More than any trailer or boat needs, and little enough for a file and a page. */
    public static final int MOST_PARTS = 500;

    public static final int LONGEST_NAME = Names.LONGEST_NAME;

    /**
     * @throws CircuitRefusal if the parts make no circuit; names the part and the remedy
     */
    public Circuit {
        String fault = Names.nameFault(name);
        if (fault != null) {
            throw new CircuitRefusal("", "The name of the circuit " + fault);
        }
        if (parts.isEmpty() || parts.get(0).kind() != PartKind.SUPPLY) {
            throw new CircuitRefusal("", "A circuit begins with its battery: put a part of the kind \u201csupply\u201d first");
        }
        if (parts.size() > MOST_PARTS) {
            throw new CircuitRefusal("", "A circuit may have " + MOST_PARTS + " parts, this one has more: make two of it");
        }
        parts = List.copyOf(parts);
        checkTree(parts);
    }

    /** A circuit without a drilled panel. */
    public Circuit(String name, List<Part> parts) {
        this(name, parts, DrilledPanel.NONE);
    }

    /** The same circuit of other parts. */
    Circuit of(List<Part> otherParts) {
        return new Circuit(name, otherParts, panel);
    }

    /** The same circuit with its outlets in another panel. */
    public Circuit in(DrilledPanel otherPanel) {
        return new Circuit(name, parts, otherPanel);
    }

    private static void checkTree(List<Part> parts) {
        Map<String, Part> before = new HashMap<>();
        for (Part part : parts) {
            if (before.containsKey(part.id())) {
                throw new CircuitRefusal(part.id(), "Two parts have the id \u201c" + part.id() + "\u201d: give one of them another");
            }
            if (before.isEmpty()) {
                require(part.fedBy().isEmpty(), part, "is the battery, so nothing feeds it: leave out what feeds it");
            } else {
                checkFeeding(part, before);
            }
            before.put(part.id(), part);
        }
        for (Part part : parts) {
            String trigger = part.triggeredFrom();
            require(trigger.isEmpty() || part.kind().isTriggered(), part, "is no switching device and takes no trigger: leave it out");
            require(
                    trigger.isEmpty() || before.containsKey(trigger) && before.get(trigger).kind().feeds(), part,
                    "takes its trigger from \u201c" + trigger + "\u201d, which is no part it can be taken from: choose another");
        }
    }

    private static void checkFeeding(Part part, Map<String, Part> before) {
        require(part.kind() != PartKind.SUPPLY, part, "is a second battery: a circuit has one");
        Part feeding = before.get(part.fedBy());
        require(feeding != null, part, "is fed by \u201c" + part.fedBy() + "\u201d, which is not among the parts before it");
        require(feeding.kind().feeds(), part, "is fed by \u201c" + part.fedBy() + "\u201d, a load: a load is the end of its branch");
    }

    private static void require(boolean held, Part part, String message) {
        if (!held) {
            throw new CircuitRefusal(part.id(), part.title() + " " + message);
        }
    }

    /** The battery. */
    public Part supply() {
        return parts.get(0);
    }

    /** The place of a part, or −1. */
    public int indexOf(String id) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** The part of that id, or null. */
    public Part part(String id) {
        int at = indexOf(id);
        return at < 0 ? null : parts.get(at);
    }

    /** For each part the place of the one that feeds it; −1 for the battery. */
    public int[] feeding() {
        Map<String, Integer> places = new HashMap<>();
        int[] feeding = new int[parts.size()];
        for (int i = 0; i < feeding.length; i++) {
            feeding[i] = i == 0 ? -1 : places.get(parts.get(i).fedBy());
            places.put(parts.get(i).id(), i);
        }
        return feeding;
    }
}
