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

    /** The kind of part that usually comes behind another. */
    static PartKind usualAfter(Part part) {
        return switch (part.kind()) {
            case SUPPLY, PANEL -> PartKind.PROTECTION;
            case PROTECTION, ISOLATOR, SWITCH -> PartKind.CONDUCTOR;
            case CONDUCTOR, JOINT, LOAD, SOURCE -> PartKind.LOAD;
        };
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
