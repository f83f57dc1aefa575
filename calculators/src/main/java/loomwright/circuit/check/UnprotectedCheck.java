package loomwright.circuit.check;

import loomwright.circuit.Conductor;
import loomwright.circuit.Isolator;
import loomwright.circuit.Joint;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/**
 * Nothing but a short piece of conductor may stand between the battery and the first device.
 *
 * @source 33 CFR 183.455(b), printed in inches
 */
final class UnprotectedCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.parent() == null || node.kind() == PartKind.PROTECTION || node.deviceBefore() != null) {
            return;
        }
        if (node.figures() instanceof Conductor) {
            addLength(node, findings);
        } else if (!(node.figures() instanceof Isolator) && !(node.figures() instanceof Joint)) {
            addBare(node, context, findings);
        }
    }

    private static void addLength(Node node, Findings findings) {
        double metres = 0;
        boolean covered = true;
        for (Node at = node; at != null; at = at.parent()) {
            if (at.figures() instanceof Conductor conductor) {
                metres += conductor.routeLength().base();
                covered &= conductor.sheathed();
            }
        }
        Quantity length = Quantity.of(metres, Units.METRE);
        Row open = row("33-cfr-source");
        Row sheathed = row("33-cfr-sheathed");
        // Nobody said that it lies in a sheath all the way: then it does not.
        boolean mayBeSheathed = !covered && Comparison.atMost(length, sheathed.quantity("distance"));
        findings.add(Check.UNPROTECTED_LENGTH, node, Comparison.of(
                        node.title() + " has no fuse-link or breaker before it; the distance of its far end from the battery", length)
                .atMost(
                        (covered ? sheathed : open).quantity("distance"),
                        "what 33 CFR allows " + (covered ? "in" : "outside") + " a sheath or enclosure", (covered ? sheathed : open).source())
                .exact()
                .otherwise(Verdict.STOP, (mayBeSheathed
                        ? "Lay it in a sheath or enclosure all the way, up to " + sheathed.quantity("distance").text()
                                + ", and say so in its form; or make it shorter, or put a device at the battery."
                        : "Put a device at the battery, or make it shorter.") + " Your own code may allow less."));
    }

    private static void addBare(Node node, Context context, Findings findings) {
        findings.add(Check.UNPROTECTED_LENGTH, node, new Finding(
                Verdict.STOP, node.title() + " hangs on the battery without any fuse-link or breaker: into a fault there the whole battery flows.",
                context.designCurrent(node), null, row("33-cfr-source").source(), "Put a fuse-link or breaker between the battery and " + node.title() + "."));
    }

    private static Row row(String key) {
        return PublishedTables.overcurrentLocation().row(key);
    }
}
