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
        boolean withinOpen = Comparison.atMost(length, open.quantity("distance"));
        boolean inSheath = !covered && !withinOpen && Comparison.atMost(length, sheathed.quantity("distance"));
        Row limit = inSheath || withinOpen ? open : sheathed;
        findings.add(Check.UNPROTECTED_LENGTH, node, Comparison.of(
                        node.title() + " has no fuse-link or breaker before it; the distance of its far end from the battery", length)
                .atMost(limit.quantity("distance"), inSheath ? "what 33 CFR allows outside a sheath or enclosure" : limit == sheathed ? "what 33 CFR allows in a sheath or enclosure" : "what 33 CFR allows", limit.source())
                .exact()
                .otherwise(inSheath ? Verdict.CAUTION : Verdict.STOP, inSheath
                        ? "Lay it in a sheath or enclosure all the way, up to " + sheathed.quantity("distance").text()
                                + ", and say so in its form, or put a device at the battery. Your own code may ask for a shorter distance."
                        : "Put a device at the battery. Your own code may ask for a shorter distance."));
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
