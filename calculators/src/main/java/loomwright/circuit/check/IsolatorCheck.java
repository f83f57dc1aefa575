package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Protection;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/**
 * Whether every load can be parted from the battery by hand: by an isolating switch, or a breaker that can be opened. Asked at the first part
 * of each branch from the battery, so that a bilge pump that keeps its own way past the isolator is one question and no more.
 */
final class IsolatorCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.parent() != null) {
            return;
        }
        Map<Node, List<Node>> without = new LinkedHashMap<>();
        for (Node each : context.circuit().nodes()) {
            if (each.kind() == PartKind.LOAD && !hasIsolator(each)) {
                List<Node> branch = without.get(first(each));
                if (branch == null) {
                    branch = new ArrayList<>();
                    without.put(first(each), branch);
                }
                branch.add(each);
            }
        }
        for (Map.Entry<Node, List<Node>> branch : without.entrySet()) {
            add(branch.getKey(), branch.getValue(), findings);
        }
        if (without.isEmpty()) {
            findings.add(Check.ISOLATOR, node, new Finding(
                    Verdict.PASSED, "Every load can be parted from " + node.title() + " by an isolating switch or a breaker.", Quantity.number(0), null,
                    Source.commonPractice(), ""));
        }
    }

    private static void add(Node first, List<Node> loads, Findings findings) {
        String others = loads.size() == 1 ? "" : " and " + (loads.size() - 1) + " more";
        findings.add(Check.ISOLATOR, first, new Finding(
                Verdict.CAUTION, "No isolating switch or breaker behind the battery parts " + loads.get(0).title() + others + " from it by hand.",
                Quantity.number(loads.size()), null, Source.commonPractice(),
                "Put an isolating switch near the battery, within reach. A bilge pump may keep a way of its own past it, with its own device."));
    }

    /** Where the way to a load parts from the others for the first time; what hangs on the battery if it never does. */
    private static Node first(Node load) {
        Node first = load;
        for (Node at = load; at.parent() != null; at = at.parent()) {
            boolean parts = at.parent().children().size() > 1;
            first = parts || first == load || first.parent().children().size() == 1 ? at : first;
        }
        return first;
    }

    private static boolean hasIsolator(Node load) {
        for (Node at = load.parent(); at != null; at = at.parent()) {
            if (at.kind() == PartKind.ISOLATOR || at.figures() instanceof Protection device && device.device().isBreaker()) {
                return true;
            }
        }
        return false;
    }
}
