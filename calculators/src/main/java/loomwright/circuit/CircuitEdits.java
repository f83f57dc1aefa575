package loomwright.circuit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Changes to a circuit. Each gives a new circuit and leaves the old one as it was, so that a list of circuits is the way back. */
public final class CircuitEdits {
    private CircuitEdits() {}

    /** The circuit under another name. */
    public static Circuit renamed(Circuit circuit, String name) {
        return new Circuit(name, circuit.parts(), circuit.panel());
    }

    /** The circuit with another text in one field of one part, or the faults of that text. */
    public static Edit changed(Circuit circuit, String id, String fieldKey, String text) {
        return replaced(circuit, part(circuit, id).with(fieldKey, text));
    }

    /** The circuit with one part under another name. */
    public static Edit named(Circuit circuit, String id, String name) {
        return replaced(circuit, part(circuit, id).named(name));
    }

    /** The circuit with what a meter read behind one part, or why that text cannot be kept. */
    public static Edit read(Circuit circuit, String id, String reading) {
        return replaced(circuit, part(circuit, id).withReading(reading.strip()));
    }

    /** The circuit with one part in the place of the part of the same id. */
    public static Circuit replaced(Circuit circuit, Part part) {
        List<Part> parts = new ArrayList<>(circuit.parts());
        parts.set(place(circuit, part.id()), part);
        return circuit.of(parts);
    }

    private static Edit replaced(Circuit circuit, PartRead read) {
        return read.part() == null ? new Edit(null, read.faults()) : new Edit(replaced(circuit, read.part()), List.of());
    }

    /** The circuit with a new part at the end of what {@code fedBy} feeds. The new part is the one not there before. */
    public static Circuit added(Circuit circuit, PartKind kind, String fedBy) {
        List<Part> parts = new ArrayList<>(circuit.parts());
        parts.add(fresh(circuit, kind, part(circuit, fedBy).id()));
        return circuit.of(TreeOrder.of(parts));
    }

    /** The circuit with a new branch at the end of what {@code fedBy} feeds: a fuse-link, a run and a load. */
    public static Circuit branched(Circuit circuit, String fedBy) {
        Circuit grown = circuit;
        String end = fedBy;
        for (PartKind kind : List.of(PartKind.PROTECTION, PartKind.CONDUCTOR, PartKind.LOAD)) {
            String next = fresh(grown, kind, end).id();
            grown = added(grown, kind, end);
            end = next;
        }
        return grown;
    }

    /** The circuit with a new part between a part and what feeds it. */
    public static Circuit insertedBefore(Circuit circuit, PartKind kind, String id) {
        Part behind = part(circuit, id);
        Part inserted = fresh(circuit, kind, behind.fedBy());
        List<Part> parts = new ArrayList<>(circuit.parts());
        int at = place(circuit, id);
        parts.set(at, behind.fedFrom(inserted.id()));
        parts.add(at, inserted);
        return circuit.of(TreeOrder.of(parts));
    }

    /** The circuit without one part; what it fed is fed by what fed it. */
    public static Circuit without(Circuit circuit, String id) {
        Part gone = part(circuit, id);
        if (gone.kind() == PartKind.SUPPLY) {
            throw new CircuitRefusal(id, "The battery cannot be taken out: begin a new circuit instead");
        }
        List<Part> parts = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (part != gone) {
                Part kept = part.fedBy().equals(id) ? part.fedFrom(gone.fedBy()) : part;
                parts.add(kept.triggeredFrom().equals(id) ? kept.triggeredBy(gone.fedBy()) : kept);
            }
        }
        return circuit.of(parts);
    }

    /** The circuit without one part and all behind it. A trigger taken from there is taken from nowhere then. */
    public static Circuit withoutBranch(Circuit circuit, String id) {
        part(circuit, id);
        Set<String> gone = new HashSet<>();
        gone.add(id);
        List<Part> parts = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (part.id().equals(id) || gone.contains(part.fedBy())) {
                gone.add(part.id());
            } else {
                parts.add(part);
            }
        }
        parts.replaceAll(part -> gone.contains(part.triggeredFrom()) ? part.triggeredBy("") : part);
        return circuit.of(parts);
    }

    /**
     * The circuit with a part, and all behind it, fed from another place.
     *
     * @throws CircuitRefusal if that place lies behind the part itself
     */
    public static Circuit moved(Circuit circuit, String id, String fedBy) {
        Part moving = part(circuit, id);
        part(circuit, fedBy);
        if (circuit.node(id).isOnTheWayTo(circuit.node(fedBy))) {
            throw new CircuitRefusal(id, moving.title() + " cannot be fed from behind itself: choose a part nearer to the battery");
        }
        List<Part> parts = new ArrayList<>(circuit.parts());
        parts.set(place(circuit, id), moving.fedFrom(fedBy));
        return circuit.of(TreeOrder.of(parts));
    }

    /** The circuit with the trigger of a switching device taken from another part; empty for none. */
    public static Circuit triggered(Circuit circuit, String id, String triggeredFrom) {
        return replaced(circuit, part(circuit, id).triggeredBy(triggeredFrom));
    }

    private static Part fresh(Circuit circuit, PartKind kind, String fedBy) {
        int number = 1;
        while (circuit.node(kind.key() + "-" + number) != null) {
            number++;
        }
        String id = kind.key() + "-" + number;
        return kind == PartKind.LOAD ? Part.of(id, kind, "", fedBy, "power=10 W") : Part.of(id, kind, "", fedBy);
    }

    private static int place(Circuit circuit, String id) {
        part(circuit, id);
        return circuit.node(id).order();
    }

    private static Part part(Circuit circuit, String id) {
        Part part = circuit.part(id);
        if (part == null) {
            throw new CircuitRefusal(id, "There is no part \u201c" + id + "\u201d in this circuit");
        }
        return part;
    }
}
