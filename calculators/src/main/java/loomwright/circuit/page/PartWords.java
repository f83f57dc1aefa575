package loomwright.circuit.page;

import loomwright.circuit.Part;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;

/** What a part is, in a few words for a drawing: from what was typed, so that it can be said before the circuit is understood. */
final class PartWords {
    private PartWords() {}

    static String of(Part part) {
        return switch (part.kind()) {
            case SUPPLY -> chosen(part, "chemistry") + ", " + part.text("capacity");
            case PANEL -> "for " + part.text("panel-limit") + " in all";
            case PROTECTION -> chosen(part, "device") + ", " + part.text("rating");
            case ISOLATOR -> "opened by hand, for " + part.text("continuous-current");
            case SWITCH -> chosen(part, "switching") + ", for " + part.text("continuous-current");
            case CONDUCTOR -> part.text("size") + ", route " + part.text("route-length");
            case JOINT -> part.text("joints") + " of " + part.text("joint-resistance") + " each";
            case LOAD -> load(part);
            case SOURCE -> chosen(part, "source-kind") + ", up to " + part.text("charge-current");
        };
    }

    private static String load(Part part) {
        String ports = part.text("ports-power");
        if (!ports.isEmpty()) {
            return ports + " at its USB ports";
        }
        String power = part.text("power");
        String current = part.text("current");
        String figure = !power.isEmpty() ? power : !current.isEmpty() ? current : part.text("resistance");
        return figure + " at " + part.text("rated-voltage");
    }

    /** The label of what was chosen. */
    private static String chosen(Part part, String fieldKey) {
        Field field = part.kind().fields().get(part.kind().indexOf(fieldKey));
        return field instanceof ChoiceField choice ? choice.option(part.text(fieldKey)).label() : "";
    }
}
