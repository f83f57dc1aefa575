package loomwright.circuit.check;

import loomwright.circuit.Isolator;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.Protection;
import loomwright.circuit.Supply;
import loomwright.circuit.Switching;
import loomwright.protection.Guarded;
import loomwright.protection.Holding;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Comparison;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/** The largest current through devices, switches, panel and battery, against what each may carry. */
final class CarryingCheck implements PartCheck {
    /** A load of this many hours counts as lasting: what the rule of the NEC calls continuous. */
    private static final double LASTING_HOURS = 3;
    private static final MissingFigure LIMIT = new MissingFigure("battery-limit", "current limit of the battery", "the battery or its data sheet");
    private static final String MORE = "Take a larger rating, if the conductors behind it carry it, or fewer loads behind it.";

    @Override
    public void check(Node node, Context context, Findings findings) {
        Quantity design = context.designCurrent(node);
        if (node.figures() instanceof Protection device) {
            addDevice(node, device, design, context, findings);
        } else if (node.figures() instanceof Panel panel) {
            against(
                    Guarded.PANEL.missing(), panel.limit(), node, design, findings,
                    "Give the new load its own protected feed from the battery, or take something else off the panel.");
        } else if (node.figures() instanceof Isolator isolator) {
            against(Guarded.SWITCH.missing(), isolator.continuousCurrent(), node, design, findings, "Take an isolating switch for more current.");
        } else if (node.figures() instanceof Switching switching) {
            against(Guarded.SWITCH.missing(), switching.continuousCurrent(), node, design, findings, "Take a switching device for more current.");
        } else if (node.figures() instanceof Supply battery && battery.currentLimit() != null) {
            against(LIMIT, battery.currentLimit(), node, design, findings, "Draw less at once, or choose a battery that may give more.");
        }
    }

    private static void against(MissingFigure figure, Quantity limit, Node node, Quantity design, Findings findings, String remedy) {
        findings.add(Check.CONTINUOUS_CURRENT, node, GuardCheck.assumed(node, figure.key(), Comparison.of(node.title() + ": its largest current", design))
                .atMost(limit, "what it may carry all the time", node.part().figuresFrom())
                .settledBy(figure)
                .otherwise(Verdict.STOP, remedy));
    }

    private static void addDevice(Node node, Protection device, Quantity design, Context context, Findings findings) {
        findings.add(Check.DEVICE_LOADING, node, Comparison.of(node.title() + ": its largest current", design)
                .atMost(device.rating(), "its rating", Findings.computed())
                .ifClose(MORE)
                .otherwise(Verdict.STOP, "It opens in use. " + MORE));
        Quantity lasting = lasting(node, context);
        if (lasting.value() > 0 && Comparison.atMost(design, device.rating())) {
            findings.add(Check.DEVICE_LOADING, node, Holding.check(node.title() + " that lasts for hours, " + lasting.text(3) + ",", device.device(),
                    device.rating(), lasting));
        }
    }

    /** As much of its largest current as belongs to what is on for hours: present loads of a panel, and loads of three hours and more. */
    private static Quantity lasting(Node node, Context context) {
        double all = 0;
        double lasting = 0;
        double volts = context.battery().lowest().base();
        for (Node next : node.behind()) {
            if (next.figures() instanceof Load load) {
                double amperes = load.current(volts).base();
                all += amperes;
                lasting += load.hours().in(Units.HOUR).value() >= LASTING_HOURS ? amperes : 0;
            } else if (next.figures() instanceof Panel panel) {
                all += panel.presentLoad().base();
                lasting += panel.presentLoad().base();
            }
        }
        double share = all > 0 ? lasting / all : 0;
        return Quantity.of(share * context.designCurrent(node).base(), Units.AMPERE);
    }
}
