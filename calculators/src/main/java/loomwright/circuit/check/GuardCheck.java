package loomwright.circuit.check;

import loomwright.circuit.Isolator;
import loomwright.circuit.Joint;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.Protection;
import loomwright.circuit.Switching;
import loomwright.protection.DeviceRule;
import loomwright.protection.Guarded;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/**
 * A device guards everything behind it up to the next device. What stands behind several is guarded by the smallest of them; if even that
 * lets too much pass, the finding lies at the one that is out of line: at the device if a smaller one would still carry the loads, else at
 * what it guards.
 */
final class GuardCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof Panel panel) {
            guard(Guarded.PANEL, "panel-limit", node, panel.limit(), context, findings);
        } else if (node.figures() instanceof Isolator isolator) {
            guard(Guarded.SWITCH, "continuous-current", node, isolator.continuousCurrent(), context, findings);
        } else if (node.figures() instanceof Switching switching) {
            guard(Guarded.SWITCH, "continuous-current", node, switching.continuousCurrent(), context, findings);
        } else if (node.figures() instanceof Joint joint) {
            guard(Guarded.JOINT, "terminal-rating", node, joint.rating(), context, findings);
        } else if (node.figures() instanceof Load load) {
            guard(Guarded.OUTLET, "outlet-rating", node, load.outletRating(), context, findings);
        } else if (node.figures() instanceof Protection device) {
            holder(node, device, findings);
        }
    }

    private static void guard(Guarded kind, String key, Node node, Quantity mayCarry, Context context, Findings findings) {
        Node smallest = smallestBefore(node);
        if (smallest == null) {
            return;
        }
        if (mayCarry == null) {
            findings.add(Check.GUARDED, node, rule(smallest).unknown(kind, node.title(), key, Findings.computed()));
            return;
        }
        boolean holds = Comparison.atMost(rating(smallest), mayCarry);
        Node device = holds ? smallest : node.deviceBefore();
        Comparison held = rule(device).guards(kind, node.title(), mayCarry, node.part().figuresFrom());
        add(Check.GUARDED, node, device, mayCarry, assumed(node, key, held).finding(), context, findings);
        addNearest(node, smallest, mayCarry, node.part().figuresFrom(), findings);
    }

    /** What stands in a form because nobody said otherwise opens the sentence of what rests on it. */
    static Comparison assumed(Node node, String key, Comparison comparison) {
        String text = node.part().text(key);
        return text.isEmpty() || !node.part().isAsUsual(key) ? comparison : comparison.assuming("the usual " + text);
    }

    /** A device held against what it guards: where both are in line the finding lies at what is guarded. */
    static void add(Check check, Node node, Node device, Quantity mayCarry, Finding finding, Context context, Findings findings) {
        boolean stops = finding.verdict() == Verdict.STOP;
        boolean carriesItsLoad = Comparison.atMost(context.designCurrent(node), mayCarry);
        boolean deviceServesMore = !Comparison.atMost(context.designCurrent(device), mayCarry);
        if (stops && carriesItsLoad && !deviceServesMore) {
            findings.add(check, device, node, finding);
        } else {
            findings.add(check, node, device, finding);
        }
    }

    /** The nearest device is there to guard it; that one farther away happens to be small enough is no plan. */
    static void addNearest(Node node, Node smallest, Quantity mayCarry, Source source, Findings findings) {
        Node nearest = node.deviceBefore();
        if (nearest == smallest || Comparison.atMost(rating(nearest), mayCarry) || !Comparison.atMost(rating(smallest), mayCarry)) {
            return;
        }
        findings.add(Check.GUARDED, nearest, node, Comparison.of(nearest.title() + ", only " + smallest.title() + " guards " + node.title() + ": its rating", rating(nearest))
                .atMost(mayCarry, "what " + node.title() + " may carry", source)
                .exact()
                .otherwise(Verdict.CAUTION, "Take a rating for " + nearest.title() + " that guards what is behind it.")
                .finding());
    }

    private static void holder(Node node, Protection device, Findings findings) {
        if (device.holderRating() == null) {
            findings.add(Check.GUARDED, node, rule(node).unknown(Guarded.HOLDER, "its holder", "holder-rating", Findings.computed()));
        } else {
            findings.add(Check.GUARDED, node, rule(node).guards(Guarded.HOLDER, "its holder", device.holderRating(), node.part().figuresFrom()));
        }
    }

    static DeviceRule rule(Node device) {
        return DeviceRule.of(device.title(), rating(device));
    }

    /** The device of the smallest rating on the way to a part, the nearest of them if several are alike; null if there is none. */
    static Node smallestBefore(Node node) {
        Node smallest = null;
        for (Node at = node.deviceBefore(); at != null; at = at.deviceBefore()) {
            smallest = smallest == null || rating(at).base() < rating(smallest).base() ? at : smallest;
        }
        return smallest;
    }

    static Quantity rating(Node device) {
        return ((Protection) device.figures()).rating();
    }
}
