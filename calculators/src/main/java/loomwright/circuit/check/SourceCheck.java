package loomwright.circuit.check;

import loomwright.circuit.ChargeSource;
import loomwright.circuit.Conductor;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Supply;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.supply.ChargeLimit;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/**
 * What charges the battery: voltage and current against the battery's limits, the device on its run against its current, and a device at its
 * own end where a battery stands behind it.
 *
 * <p>The device on the run of a source is rated at least 1.25 × the largest current, so that it holds in full sun (common practice).
 */
final class SourceCheck implements PartCheck {
    private static final double CONTINUOUS = 1.25;
    private static final MissingFigure MOST = new MissingFigure(
            "charge-current-most", "largest charging current of the battery", "the battery or its data sheet: maximum charge current");

    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.figures() instanceof ChargeSource source) {
            addVoltage(node, source, context, findings);
            addDevice(node, source, findings);
            addOwnEnd(node, source, context, findings);
        } else if (node.figures() instanceof Supply battery) {
            addCurrent(node, battery, context, findings);
            addHighest(node, battery, findings);
        }
    }

    private static void addVoltage(Node node, ChargeSource source, Context context, Findings findings) {
        ChargeLimit limit = context.battery().chargingLimit();
        if (source.voltage() == null) {
            findings.add(Check.CHARGING, node, Finding.notKnown(
                    node.title() + ": the voltage it charges with is not given.", source.current(), Findings.computed(),
                    new MissingFigure("charge-voltage", "charging voltage of " + node.title(), "its data sheet or its settings: absorption or boost voltage")));
            return;
        }
        findings.add(Check.CHARGING, node, limit.held("The charging voltage of " + node.title(), source.voltage(), node.part().figuresFrom()));
    }

    private static void addHighest(Node node, Supply battery, Findings findings) {
        findings.add(Check.CHARGING, node, battery.chargingLimit().held("The highest voltage entered for " + node.title(), battery.highest(), Findings.entered()));
    }

    private static void addDevice(Node node, ChargeSource source, Findings findings) {
        Quantity least = Quantity.of(CONTINUOUS * source.current().in(Units.AMPERE).value(), Units.AMPERE);
        for (Node device = node.deviceBefore(); device != null; device = device.deviceBefore()) {
            findings.add(Check.CHARGING, device, Comparison.of(device.title() + ", on the way of what " + node.title() + " gives: its rating",
                            GuardCheck.rating(device))
                    .atLeast(least, "1.25 times its largest current", Source.commonPractice())
                    .exact()
                    .otherwise(Verdict.STOP, "Give " + node.title() + " its own run from the battery, with a device for 1.25 times its current and a "
                            + "conductor that the device guards. One that opens in full sun leaves many controllers with a panel and no battery."));
        }
    }

    private static void addOwnEnd(Node node, ChargeSource source, Context context, Findings findings) {
        if (source.kind().limitsItself()) {
            return;
        }
        Node run = node.parent();
        if (source.ownDevice() == null) {
            findings.add(Check.CHARGING, node, new Finding(
                    Verdict.STOP, node.title() + " has a battery behind it and no device at its own end: a fault in its run is fed from there as well.",
                    source.current(), null, Source.commonPractice(),
                    "Put a fuse-link or breaker where the run leaves it, near that battery, and enter its rating."));
        } else if (run.kind() == PartKind.CONDUCTOR) {
            findings.add(Check.CONDUCTOR_PROTECTED, node, AmpacityCheck.guarded(
                    "The device at the far end, at " + node.title(), source.ownDevice(), run, (Conductor) run.figures(), context.battery().fuseRule(),
                    Sentence.of("Take a smaller rating at that end, or a thicker conductor or insulation of a higher rating.")));
        }
    }

    private static void addCurrent(Node node, Supply battery, Context context, Findings findings) {
        double amperes = 0;
        for (Node each : context.circuit().nodes()) {
            amperes += each.figures() instanceof ChargeSource source ? source.current().base() : 0;
        }
        if (amperes == 0) {
            return;
        }
        Quantity all = Quantity.of(amperes, Units.AMPERE);
        if (battery.chargeLimit() == null) {
            findings.add(Check.CHARGING, node, Finding.notKnown(
                    "What charges " + node.title() + " gives up to " + all.text(3) + " together; how much it takes is not given.", all,
                    Source.of(Document.COMPUTED, ""), MOST));
            return;
        }
        findings.add(Check.CHARGING, node, Comparison.of("What all sources give " + node.title() + " together", all)
                .atMost(battery.chargeLimit(), "its largest charging current", node.part().figuresFrom())
                .exact()
                .settledBy(MOST)
                .otherwise(Verdict.STOP, "Set the charger to less, take a smaller one, or a battery that takes more."));
    }
}
