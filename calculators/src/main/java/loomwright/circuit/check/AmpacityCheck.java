package loomwright.circuit.check;

import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.conductor.AmpacityRuleSet;
import loomwright.conductor.RatedCurrent;
import loomwright.protection.RuleSet;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;

/** What each conductor may carry, against its current and against the devices before it. */
final class AmpacityCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof Conductor conductor) {
            check(node, conductor, context, findings);
        }
    }

    private static void check(Node node, Conductor conductor, Context context, Findings findings) {
        Quantity design = context.designCurrent(node);
        RatedCurrent rated = rated(node, conductor, design, findings);
        Node device = smallestDeviceBefore(node);
        if (device == null) {
            addUnprotected(node, findings);
        }
        if (rated == null) {
            return;
        }
        Quantity ampacity = rated.value();
        boolean passed = Findings.within(design, ampacity);
        findings.add(
                Check.AMPACITY, node, passed, Verdict.STOP,
                node.title() + ", " + conductor.size().text() + ": its largest current of " + Findings.told(design, ampacity) + " is "
                        + Findings.withinOrAbove(passed) + " the " + ampacity.text(3) + " it may carry. " + conductor.rules().conditions(),
                design, ampacity, rated.row().source(), "Take a thicker conductor, insulation of a higher rating, or less load on it.");
        if (device != null) {
            addDevice(node, conductor, device, ampacity, rated.row().source(), context.battery().fuseRule(), findings);
        }
    }

    private static RatedCurrent rated(Node node, Conductor conductor, Quantity design, Findings findings) {
        try {
            RatedCurrent rated = conductor.ampacity();
            if (rated == null) {
                findings.caution(
                        Check.AMPACITY, node,
                        node.title() + ": the rule set \u201c" + conductor.rules().label() + "\u201d lists no ampacity for "
                                + conductor.size().text() + ", so none was checked.",
                        design, PublishedTables.overcurrentRating().source(), "Choose a rule set that lists this size, or another size.");
            }
            return rated;
        } catch (Refusal refusal) {
            findings.caution(
                    Check.AMPACITY, node, node.title() + ": no ampacity was checked. " + refusal.getMessage() + ".", design,
                    Findings.computed(), "Change the conductor as the sentence says.");
            return null;
        }
    }

    private static void addDevice(
            Node node, Conductor conductor, Node device, Quantity ampacity, Source table, RuleSet rule, Findings findings) {
        // 150 % belongs to Table 5 of 33 CFR; with another rule set on ampacity the device may have no more than that.
        boolean more = rule == RuleSet.US_33_CFR && conductor.rules() == AmpacityRuleSet.BOAT;
        Quantity share = more ? rule.share() : Quantity.of(100, Units.PERCENT);
        Quantity most = Quantity.of(share.base() * ampacity.base(), Units.AMPERE);
        Quantity rating = rating(device);
        boolean passed = Findings.within(rating, most);
        findings.add(
                Check.CONDUCTOR_PROTECTED, node, passed, Verdict.STOP,
                device.title() + ", " + rating.text() + ", protects " + node.title() + ": it is "
                        + Findings.withinOrAbove(passed) + " " + (more ? share.text() + " of its ampacity, " : "its ampacity of ") + most.text(3)
                        + ".",
                rating, most, more ? rule.source() : table, "Take a smaller rating there, put a device before this run, or take a thicker conductor.");
    }

    /** A stretch with nothing before it. source: 33 CFR 183.455(b), printed in inches. */
    private static void addUnprotected(Node node, Findings findings) {
        double metres = 0;
        for (Node at = node; at != null; at = at.parent()) {
            metres += at.figures() instanceof Conductor conductor ? conductor.routeLength().base() : 0;
        }
        Quantity length = Quantity.of(metres, Units.METRE);
        Row open = PublishedTables.overcurrentLocation().row("33-cfr-source");
        Row sheathed = PublishedTables.overcurrentLocation().row("33-cfr-sheathed");
        boolean near = Findings.within(length, open.quantity("distance"));
        boolean inSheath = Findings.within(length, sheathed.quantity("distance"));
        Row row = near ? open : sheathed;
        findings.add(
                Check.UNPROTECTED_LENGTH, node, near, inSheath ? Verdict.CAUTION : Verdict.STOP,
                node.title() + " has no fuse-link or breaker before it; its far end is " + length.text(3) + " from the battery. 33 CFR allows "
                        + open.quantity("distance").text() + ", and " + sheathed.quantity("distance").text()
                        + " in a sheath or enclosure all the way.",
                length, row.quantity("distance"), row.source(), "Put a device at the battery. Your own code may ask for a shorter distance.");
    }

    /** The device of the smallest rating on the way to a part; null if there is none. */
    private static Node smallestDeviceBefore(Node node) {
        Node smallest = null;
        for (Node at = node.deviceBefore(); at != null; at = at.deviceBefore()) {
            smallest = smallest == null || rating(at).base() < rating(smallest).base() ? at : smallest;
        }
        return smallest;
    }

    private static Quantity rating(Node device) {
        return ((Protection) device.figures()).rating();
    }
}
