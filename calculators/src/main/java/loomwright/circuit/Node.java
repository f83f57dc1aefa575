package loomwright.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A part at its place in a circuit: what feeds it, and what it feeds. */
public final class Node {
    private final Part part;
    private final Node parent;
    private final int order;
    private final List<Node> children = new ArrayList<>();
    private Node triggeredFrom;

    Node(Part part, Node parent, int order) {
        this.part = part;
        this.parent = parent;
        this.order = order;
        if (parent != null) {
            parent.children.add(this);
        }
    }

    void triggerFrom(Node from) {
        triggeredFrom = from;
    }

    public Part part() {
        return part;
    }

    public String id() {
        return part.id();
    }

    /** What to call it in a sentence. */
    public String title() {
        return part.title();
    }

    public PartKind kind() {
        return part.kind();
    }

    /**
     * What its part was understood as.
     *
     * @throws loomwright.worked.Refusal if its figures do not go together; never in a circuit without {@link Circuit#faults()}
     */
    public Figures figures() {
        return part.figures();
    }

    /** What feeds it; null for the battery. */
    public Node parent() {
        return parent;
    }

    /** What it feeds, in the order of the circuit. */
    public List<Node> children() {
        return Collections.unmodifiableList(children);
    }

    /** How many stand before it in {@link Circuit#nodes()}, for figures that lie in an array. What feeds a node stands before it. */
    public int order() {
        return order;
    }

    /** Where its trigger wire begins; null if nowhere. It may have one that its way of switching does not need. */
    public Node triggeredFrom() {
        return triggeredFrom;
    }

    /** Where its trigger is taken from; null if it takes none, or needs none as it is switched. */
    public Node trigger() {
        return triggeredFrom != null && figures() instanceof Switching switching && switching.isTriggered() ? triggeredFrom : null;
    }

    /** The nearest device before it, itself not counted; null if there is none. */
    public Node deviceBefore() {
        Node at = parent;
        while (at != null && at.kind() != PartKind.PROTECTION) {
            at = at.parent;
        }
        return at;
    }

    /** What a device protects: all behind it, up to the next devices. */
    public List<Node> protectedBehind() {
        List<Node> found = new ArrayList<>();
        addProtected(found);
        return found;
    }

    private void addProtected(List<Node> found) {
        List<Node> waiting = new ArrayList<>(children);
        Collections.reverse(waiting);
        while (!waiting.isEmpty()) {
            Node next = waiting.remove(waiting.size() - 1);
            if (next.kind() != PartKind.PROTECTION) {
                found.add(next);
                for (int i = next.children.size() - 1; i >= 0; i--) {
                    waiting.add(next.children.get(i));
                }
            }
        }
    }

    /** All that is fed from it, near or far. */
    public List<Node> behind() {
        List<Node> behind = new ArrayList<>(children);
        for (int i = 0; i < behind.size(); i++) {
            behind.addAll(behind.get(i).children);
        }
        return behind;
    }

    /** Whether it lies on the way from the battery to another, or is that other. */
    public boolean isOnTheWayTo(Node other) {
        Node at = other;
        while (at != null && at.order > order) {
            at = at.parent;
        }
        return at == this;
    }

    @Override
    public String toString() {
        return part.toString();
    }
}
