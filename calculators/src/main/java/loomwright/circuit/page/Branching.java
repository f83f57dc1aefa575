package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.sheet.Extent;

/** How a circuit spreads over the paper: its parts one below the other, each branch one column further to the right. */
final class Branching {
    private final Extent extent;
    private final List<Node> order = new ArrayList<>();
    private final Map<Node, Row> rows = new HashMap<>();
    private int deepest;

    /** Where a part is drawn. */
    private record Row(int column, List<Node> fed, boolean isBranch, boolean hasBranchBelow) {}

    private Branching(Circuit circuit, Extent extent) {
        this.extent = extent;
        rows.put(circuit.supply(), new Row(0, fed(circuit.supply()), false, false));
        place(circuit.supply());
    }

    static Branching of(Circuit circuit, Extent extent) {
        return new Branching(circuit, extent);
    }

    private List<Node> fed(Node node) {
        List<Node> fed = new ArrayList<>();
        for (Node child : node.children()) {
            if (extent.has(child.id())) {
                fed.add(child);
            }
        }
        return fed;
    }

    /** Down each branch to its end, then the next. */
    private void place(Node battery) {
        List<Node> waiting = new ArrayList<>();
        waiting.add(battery);
        while (!waiting.isEmpty()) {
            Node node = waiting.remove(waiting.size() - 1);
            order.add(node);
            Row row = rows.get(node);
            deepest = Math.max(deepest, row.column());
            boolean branches = row.fed().size() > 1;
            for (int i = row.fed().size() - 1; i >= 0; i--) {
                Node child = row.fed().get(i);
                rows.put(child, new Row(row.column() + (branches ? 1 : 0), fed(child), branches, i < row.fed().size() - 1));
                waiting.add(child);
            }
        }
    }

    /** The parts, from top to bottom. */
    List<Node> order() {
        return order;
    }

    int column(Node node) {
        return rows.get(node).column();
    }

    int deepest() {
        return deepest;
    }

    boolean feedsAny(Node node) {
        return !rows.get(node).fed().isEmpty();
    }

    /** Whether a part begins a branch of its own. */
    boolean isBranch(Node node) {
        return rows.get(node).isBranch();
    }

    /** Whether more branches of the same trunk follow below a part. */
    boolean hasBranchBelow(Node node) {
        return rows.get(node).hasBranchBelow();
    }
}
