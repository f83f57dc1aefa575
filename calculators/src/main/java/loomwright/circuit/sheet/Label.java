package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;

/**
 * One label to make.
 *
 * @param partId the part
 * @param where where it goes
 * @param text what stands on it
 */
public record Label(String partId, String where, String text) {
    /** The labels of a circuit: both ends of both conductors of each run, and one on each device, switch, panel and load. */
    public static List<Label> of(Circuit circuit) {
        Designations designations = Designations.of(circuit);
        List<Label> labels = new ArrayList<>();
        for (Node node : circuit.nodes()) {
            switch (node.kind()) {
                case CONDUCTOR -> addRun(labels, node, designations);
                case PANEL -> labels.add(onPart(node, "on its lid", designations));
                case PROTECTION, ISOLATOR, SWITCH, LOAD -> labels.add(onPart(node, "on or beside it", designations));
                case SUPPLY, JOINT -> {
                    // a battery carries its own, a joint is named by its conductors
                }
            }
        }
        return List.copyOf(labels);
    }

    private static Label onPart(Node node, String where, Designations designations) {
        String figure = node.figures().onLabel();
        return new Label(node.id(), where, designations.titled(node.id()) + (figure.isEmpty() ? "" : ", " + figure));
    }

    private static void addRun(List<Label> labels, Node run, Designations designations) {
        String size = size(run);
        addNear(labels, run, designations, true, size, run.parent(), next(run));
        addFar(labels, run, designations, true, size, run.parent(), next(run));
        Return back = new Return(designations, run);
        if (!back.goesOnBefore()) {
            addNear(labels, run, designations, false, size, back.before(), back.behind());
        }
        if (!back.goesOnBehind()) {
            addFar(labels, run, designations, false, size, back.before(), back.behind());
        }
    }

    private static String size(Node run) {
        return ((Conductor) run.figures()).size().text();
    }

    private static void addNear(
            List<Label> labels, Node run, Designations designations, boolean positive, String size, Node near, Node far) {
        labels.add(new Label(
                run.id(), pole(positive) + designations.end(near, positive, true),
                designations.conductor(run.id(), positive) + ", " + size + " to " + designations.end(far, positive, false)));
    }

    private static void addFar(
            List<Label> labels, Node run, Designations designations, boolean positive, String size, Node near, Node far) {
        labels.add(new Label(
                run.id(), pole(positive) + designations.end(far, positive, true),
                designations.conductor(run.id(), positive) + ", " + size + " from " + designations.end(near, positive, false)));
    }

    private static String pole(boolean positive) {
        return (positive ? "+" : "\u2212") + " conductor, end at ";
    }

    /** The first part a part feeds; null if it feeds none. */
    private static Node next(Node node) {
        return node.children().isEmpty() ? null : node.children().get(0);
    }

    /**
     * The negative conductor of a run. No device stands in it: it leads from the negative conductor, panel or battery before, and past the
     * devices behind. One wire may serve runs that follow each other; then it has no ends between them.
     */
    private record Return(Designations designations, Node run) {
        boolean goesOnBefore() {
            return isSameWire(past(run.parent(), true));
        }

        boolean goesOnBehind() {
            return isSameWire(past(next(run), false));
        }

        Node before() {
            Node at = past(run.parent(), true);
            while (isSameWire(at)) {
                at = past(at.parent(), true);
            }
            return at;
        }

        Node behind() {
            Node at = past(next(run), false);
            while (isSameWire(at)) {
                at = past(next(at), false);
            }
            return at;
        }

        /** From a part on, past all that stands in the positive only. */
        private Node past(Node from, boolean towardsBattery) {
            Node at = from;
            while (at != null && isInPositiveOnly(at.kind())) {
                at = towardsBattery ? at.parent() : next(at);
            }
            return at;
        }

        private static boolean isInPositiveOnly(PartKind kind) {
            return switch (kind) {
                case PROTECTION, SWITCH, ISOLATOR, JOINT -> true;
                case SUPPLY, PANEL, CONDUCTOR, LOAD, SOURCE -> false;
            };
        }

        private boolean isSameWire(Node node) {
            return node != null && node.kind() == PartKind.CONDUCTOR && number(node).equals(number(run))
                    && designations.of(run.id()).indexOf('/') > 0;
        }

        private String number(Node node) {
            return designations.conductor(node.id(), false);
        }
    }
}
