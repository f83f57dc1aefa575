package loomwright.circuit.check;

import loomwright.circuit.Isolator;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.Protection;
import loomwright.circuit.Supply;
import loomwright.circuit.Switching;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Verdict;

/** The largest current through devices, switches, panel and battery, against what each may carry. */
final class CarryingCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        Quantity design = context.designCurrent(node);
        if (node.figures() instanceof Protection device) {
            addDevice(device.rating(), node, design, findings);
        } else if (node.figures() instanceof Panel panel) {
            against(
                    panel.limit(), node, design, findings,
                    "Give the new load its own protected feed from the battery, or take something else off the panel.");
        } else if (node.figures() instanceof Isolator isolator) {
            against(isolator.continuousCurrent(), node, design, findings, "Take an isolating switch for more current.");
        } else if (node.figures() instanceof Switching switching) {
            against(switching.continuousCurrent(), node, design, findings, "Take a switching device for more current.");
        } else if (node.figures() instanceof Supply battery && battery.currentLimit() != null) {
            against(battery.currentLimit(), node, design, findings, "Draw less at once, or choose a battery that may give more.");
        }
    }

    private static void against(Quantity limit, Node node, Quantity design, Findings findings, String remedy) {
        boolean passed = Findings.within(design, limit);
        Quantity left = Quantity.of(limit.in(Units.AMPERE).value() - design.value(), Units.AMPERE);
        findings.add(
                Check.CONTINUOUS_CURRENT, node, passed, Verdict.STOP,
                node.title() + ": the largest current of " + design.text(3) + " is " + Findings.withinOrAbove(passed) + " its limit of "
                        + limit.text() + (passed ? "; " + left.text(3) + " are left." : "."),
                design, limit, Findings.entered(), remedy);
    }

    /** source: NEC 210.20(A), a mains rule that 12 V work has borrowed; the rating itself for what does not last. */
    private static void addDevice(Quantity rating, Node node, Quantity design, Findings findings) {
        Row row = PublishedTables.fuseContinuousLoading().row("nec-210-20-a");
        Quantity most = Quantity.of(row.quantity("load").base() * rating.in(Units.AMPERE).value(), Units.AMPERE);
        if (!Findings.within(design, rating)) {
            findings.add(
                    Check.DEVICE_LOADING, node, false, Verdict.STOP,
                    node.title() + ": the largest current of " + Findings.told(design, rating) + " is above its rating of " + rating.text()
                            + ": it opens in use.",
                    design, rating, Findings.computed(), "Take a larger rating, if the conductors behind it carry it, or fewer loads behind it.");
            return;
        }
        boolean passed = Findings.within(design, most);
        findings.add(
                Check.DEVICE_LOADING, node, passed, Verdict.CAUTION,
                node.title() + ": the largest current of " + Findings.told(design, most) + " is " + Findings.withinOrAbove(passed) + " the " + most.text(3)
                        + " that a rating of " + rating.text() + " may carry for three hours or more.",
                design, most, row.source(), "If it lasts for hours, take the next larger rating that the conductors behind it carry.");
    }
}
