package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.sheet.Extent;

/** How a circuit spreads over the paper: its parts one below the other, each branch one column further to the right. */
final class Branching {
    private final int[] feeding;
    private final int[] column;
    private final List<List<Integer>> fed = new ArrayList<>();
    private final List<Integer> order = new ArrayList<>();

    private Branching(Circuit circuit, Extent extent) {
        this.feeding = circuit.feeding();
        this.column = new int[feeding.length];
        for (int i = 0; i < feeding.length; i++) {
            fed.add(new ArrayList<>());
            if (feeding[i] >= 0 && extent.has(circuit.parts().get(i).id())) {
                fed.get(feeding[i]).add(i);
            }
        }
        place();
    }

    static Branching of(Circuit circuit, Extent extent) {
        return new Branching(circuit, extent);
    }

    /** Down each branch to its end, then the next. */
    private void place() {
        List<Integer> waiting = new ArrayList<>();
        waiting.add(0);
        while (!waiting.isEmpty()) {
            int part = waiting.remove(waiting.size() - 1);
            order.add(part);
            List<Integer> next = fed.get(part);
            for (int i = next.size() - 1; i >= 0; i--) {
                column[next.get(i)] = column[part] + (next.size() > 1 ? 1 : 0);
                waiting.add(next.get(i));
            }
        }
    }

    /** The places of the parts, from top to bottom. */
    List<Integer> order() {
        return order;
    }

    int column(int part) {
        return column[part];
    }

    int deepest() {
        int deepest = 0;
        for (int each : column) {
            deepest = Math.max(deepest, each);
        }
        return deepest;
    }

    boolean feedsAny(int part) {
        return !fed.get(part).isEmpty();
    }

    /** Whether a part begins a branch of its own. */
    boolean isBranch(int part) {
        return feeding[part] >= 0 && fed.get(feeding[part]).size() > 1;
    }

    /** Whether more branches of the same trunk follow below a part. */
    boolean hasBranchBelow(int part) {
        List<Integer> siblings = fed.get(feeding[part]);
        return siblings.indexOf(part) < siblings.size() - 1;
    }

    int feeding(int part) {
        return feeding[part];
    }
}
