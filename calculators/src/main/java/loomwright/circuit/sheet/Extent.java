package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.Part;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;

/** What of a circuit a sheet is about: the whole, or one branch with its way from the battery. */
public final class Extent {
    /** All of it. */
    public static final Extent WHOLE = new Extent(null);

    private final Set<String> parts;

    private Extent(Set<String> parts) {
        this.parts = parts;
    }

    /** A part, all behind it, and the way to it from the battery. */
    public static Extent branch(Circuit circuit, String partId) {
        Set<String> parts = new HashSet<>();
        parts.add(partId);
        for (Part part : circuit.parts()) {
            if (parts.contains(part.fedBy())) {
                parts.add(part.id());
            }
        }
        for (Node node = circuit.node(partId); node != null; node = node.parent()) {
            parts.add(node.id());
        }
        return new Extent(parts);
    }

    /** All but some parts. */
    public static Extent without(Circuit circuit, List<String> partIds) {
        Set<String> parts = new HashSet<>();
        for (Part part : circuit.parts()) {
            parts.add(part.id());
        }
        parts.removeAll(partIds);
        return new Extent(parts);
    }

    public boolean has(String partId) {
        return parts == null || parts.contains(partId);
    }

    /** The examination with the findings on these parts only; all that was worked out stays. */
    public Examination of(Examination examination) {
        List<CircuitFinding> found = new ArrayList<>();
        for (CircuitFinding finding : examination.findings()) {
            if (has(finding.partId())) {
                found.add(finding);
            }
        }
        return examination.with(found);
    }
}
