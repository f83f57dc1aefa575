package loomwright.circuit.check;

import loomwright.circuit.Conductor;
import loomwright.circuit.Installation;
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
final class AmpacityCheck {
    private final Installation installation;
    private final Findings findings;

    AmpacityCheck(Installation installation, Findings findings) {
        this.installation = installation;
        this.findings = findings;
    }

    void add(int i, Quantity design) {
        Conductor conductor = installation.conductor(i);
        RatedCurrent rated = rated(i, conductor, design);
        int device = smallestDeviceBefore(i);
        if (device < 0) {
            addUnprotected(i);
        }
        if (rated == null) {
            return;
        }
        Quantity ampacity = rated.value();
        boolean passed = Findings.within(design, ampacity);
        findings.add(
                Check.AMPACITY, i, passed, Verdict.STOP,
                findings.title(i) + ", " + conductor.size().text() + ": its largest current of " + Findings.told(design, ampacity) + " is "
                        + Findings.withinOrAbove(passed) + " the " + ampacity.text(3) + " it may carry. " + conductor.rules().conditions(),
                design, ampacity, rated.row().source(), "Take a thicker conductor, insulation of a higher rating, or less load on it.");
        if (device >= 0) {
            addDevice(i, device, ampacity, rated.row().source());
        }
    }

    private RatedCurrent rated(int i, Conductor conductor, Quantity design) {
        try {
            RatedCurrent rated = conductor.ampacity();
            if (rated == null) {
                findings.caution(
                        Check.AMPACITY, i,
                        findings.title(i) + ": the rule set \u201c" + conductor.rules().label() + "\u201d lists no ampacity for "
                                + conductor.size().text() + ", so none was checked.",
                        design, PublishedTables.overcurrentRating().source(), "Choose a rule set that lists this size, or another size.");
            }
            return rated;
        } catch (Refusal refusal) {
            findings.caution(
                    Check.AMPACITY, i, findings.title(i) + ": no ampacity was checked. " + refusal.getMessage() + ".", design,
                    Findings.computed(), "Change the conductor as the sentence says.");
            return null;
        }
    }

    private void addDevice(int i, int device, Quantity ampacity, Source table) {
        RuleSet rule = installation.supply().fuseRule();
        // 150 % belongs to Table 5 of 33 CFR; with another rule set on ampacity the device may have no more than that.
        boolean more = rule == RuleSet.US_33_CFR && installation.conductor(i).rules() == AmpacityRuleSet.BOAT;
        Quantity share = more ? rule.share() : Quantity.of(100, Units.PERCENT);
        Quantity most = Quantity.of(share.base() * ampacity.base(), Units.AMPERE);
        Quantity rating = installation.protection(device).rating();
        boolean passed = Findings.within(rating, most);
        findings.add(
                Check.CONDUCTOR_PROTECTED, i, passed, Verdict.STOP,
                findings.title(device) + ", " + rating.text() + ", protects " + findings.title(i) + ": it is "
                        + Findings.withinOrAbove(passed) + " " + (more ? share.text() + " of its ampacity, " : "its ampacity of ") + most.text(3)
                        + ".",
                rating, most, more ? rule.source() : table, "Take a smaller rating there, put a device before this run, or take a thicker conductor.");
    }

    /** A stretch with nothing before it. source: 33 CFR 183.455(b), printed in inches. */
    private void addUnprotected(int i) {
        double metres = 0;
        for (int at = i; at >= 0; at = installation.feeding(at)) {
            metres += installation.conductor(at) == null ? 0 : installation.conductor(at).routeLength().base();
        }
        Quantity length = Quantity.of(metres, Units.METRE);
        Row open = PublishedTables.overcurrentLocation().find("case", "33-cfr-source");
        Row sheathed = PublishedTables.overcurrentLocation().find("case", "33-cfr-sheathed");
        boolean near = Findings.within(length, open.quantity("distance"));
        boolean inSheath = Findings.within(length, sheathed.quantity("distance"));
        Row row = near ? open : sheathed;
        findings.add(
                Check.UNPROTECTED_LENGTH, i, near, inSheath ? Verdict.CAUTION : Verdict.STOP,
                findings.title(i) + " has no fuse-link or breaker before it; its far end is " + length.text(3) + " from the battery. 33 CFR allows "
                        + open.quantity("distance").text() + ", and " + sheathed.quantity("distance").text()
                        + " in a sheath or enclosure all the way.",
                length, row.quantity("distance"), row.source(), "Put a device at the battery. Your own code may ask for a shorter distance.");
    }

    /** The device of the smallest rating on the way to a part; −1 if there is none. */
    private int smallestDeviceBefore(int i) {
        int smallest = -1;
        for (int at = installation.deviceBefore(i); at >= 0; at = installation.deviceBefore(at)) {
            boolean smaller = smallest < 0
                    || installation.protection(at).rating().base() < installation.protection(smallest).rating().base();
            smallest = smaller ? at : smallest;
        }
        return smallest;
    }
}
