package loomwright.circuit.page;

import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Extent;

/** What a reader who draws up a circuit for the first time would do next. */
final class NextStep {
    private NextStep() {}

    /** The kind of part that usually comes behind another: battery, main fuse, its run, panel, a way's device, its run, load. */
    static PartKind usualAfter(Node node) {
        return switch (node.kind()) {
            case SUPPLY, PANEL -> PartKind.PROTECTION;
            case PROTECTION, ISOLATOR, SWITCH -> PartKind.CONDUCTOR;
            case CONDUCTOR, JOINT -> panelBefore(node) == null ? PartKind.PANEL : PartKind.LOAD;
            case LOAD, SOURCE -> PartKind.LOAD;
        };
    }

    /** The nearest panel before a part; null if there is none. */
    static Node panelBefore(Node node) {
        Node at = node.parent();
        while (at != null && at.kind() != PartKind.PANEL) {
            at = at.parent();
        }
        return at;
    }

    /** One or two sentences; empty if every branch ends at a load. */
    static String words(Circuit circuit) {
        if (circuit.parts().size() == 1) {
            return "Begin here: choose the battery, put in its figures, and add the main fuse behind it. The kind that usually comes next is chosen already.";
        }
        for (Node node : Branching.of(circuit, Extent.WHOLE).order()) {
            boolean end = node.children().isEmpty() && node.kind().feeds();
            if (end && !givesTrigger(circuit, node.part())) {
                return "Next: " + Designations.of(circuit).titled(node.id()) + " feeds nothing yet. Choose it and add what comes behind it, up to a load.";
            }
        }
        return "";
    }

    private static boolean givesTrigger(Circuit circuit, Part part) {
        for (Part other : circuit.parts()) {
            if (other.triggeredFrom().equals(part.id())) {
                return true;
            }
        }
        return false;
    }
}
