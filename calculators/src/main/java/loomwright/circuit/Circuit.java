package loomwright.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.worked.Refusal;

/** A whole installation: a battery, and parts each fed from one part before it. Never changes; {@link CircuitEdits} gives new ones. */
public final class Circuit {
    /** More than any trailer or boat needs, and little enough for a file and a page. */
    public static final int MOST_PARTS = 500;

    public static final int LONGEST_NAME = Names.LONGEST_NAME;

    private final String name;
    private final List<Part> parts;
    private final DrilledPanel panel;
    private final List<Node> nodes = new ArrayList<>();
    private final Map<String, Node> byId = new HashMap<>();

    /**
     * A circuit of parts.
     *
     * @param name what the reader calls it; may be empty
     * @param parts the battery first; each part after the one that feeds it
     * @param panel the panel its outlets go into, or {@link DrilledPanel#NONE}
     * @throws CircuitRefusal if the parts make no circuit; names the part and the remedy
     */
    public Circuit(String name, List<Part> parts, DrilledPanel panel) {
        this.name = name;
        this.parts = List.copyOf(parts);
        this.panel = panel;
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
        for (Part part : this.parts) {
            grow(part);
        }
        for (Node node : nodes) {
            connectTrigger(node);
        }
    }

    /** A circuit without a drilled panel. */
    public Circuit(String name, List<Part> parts) {
        this(name, parts, DrilledPanel.NONE);
    }

    private void grow(Part part) {
        if (byId.containsKey(part.id())) {
            throw new CircuitRefusal(part.id(), "Two parts have the id \u201c" + part.id() + "\u201d: give one of them another");
        }
        Node feeding = byId.get(part.fedBy());
        if (nodes.isEmpty()) {
            require(part.fedBy().isEmpty(), part, "is the battery, so nothing feeds it: leave out what feeds it");
        } else {
            require(part.kind() != PartKind.SUPPLY, part, "is a second battery: a circuit has one");
            require(feeding != null, part, "is fed by \u201c" + part.fedBy() + "\u201d, which is not among the parts before it");
            require(feeding.kind().feeds(), part, "is fed by \u201c" + part.fedBy() + "\u201d, a load: a load is the end of its branch");
        }
        Node node = new Node(part, feeding, nodes.size());
        nodes.add(node);
        byId.put(part.id(), node);
    }

    private void connectTrigger(Node node) {
        String trigger = node.part().triggeredFrom();
        if (!trigger.isEmpty()) {
            Node from = byId.get(trigger);
            require(node.kind().isTriggered(), node.part(), "is no switching device and takes no trigger: leave it out");
            require(
                    from != null && from.kind().feeds(), node.part(),
                    "takes its trigger from \u201c" + trigger + "\u201d, which is no part it can be taken from: choose another");
            node.triggerFrom(from);
        }
    }

    private static void require(boolean held, Part part, String message) {
        if (!held) {
            throw new CircuitRefusal(part.id(), part.title() + " " + message);
        }
    }

    /** The same circuit of other parts. */
    Circuit of(List<Part> otherParts) {
        return new Circuit(name, otherParts, panel);
    }

    /** The same circuit with its outlets in another panel. */
    public Circuit in(DrilledPanel otherPanel) {
        return new Circuit(name, parts, otherPanel);
    }

    /** What the reader calls it; may be empty. */
    public String name() {
        return name;
    }

    /** The battery first; each part after the one that feeds it. */
    public List<Part> parts() {
        return parts;
    }

    public DrilledPanel panel() {
        return panel;
    }

    /** The parts at their places, in the same order. */
    public List<Node> nodes() {
        return Collections.unmodifiableList(nodes);
    }

    /** The place of the battery, from which all others are fed. */
    public Node supply() {
        return nodes.get(0);
    }

    /** The place of the part of that id, or null. */
    public Node node(String id) {
        return byId.get(id);
    }

    /** The part of that id, or null. */
    public Part part(String id) {
        Node node = byId.get(id);
        return node == null ? null : node.part();
    }

    /** The figures of the battery. */
    public Supply battery() {
        return (Supply) supply().figures();
    }

    /** Why parts cannot be understood, each with its field; empty if all of them are. */
    public List<PartFault> faults() {
        List<PartFault> faults = new ArrayList<>();
        for (Part part : parts) {
            try {
                part.figures();
            } catch (Refusal refusal) {
                faults.add(new PartFault(part.id(), refusal.fault().fieldKey(), refusal.fault().message()));
            }
        }
        return List.copyOf(faults);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Circuit circuit && name.equals(circuit.name) && parts.equals(circuit.parts) && panel.equals(circuit.panel);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + parts.hashCode();
    }

    @Override
    public String toString() {
        return name + " " + parts;
    }
}
