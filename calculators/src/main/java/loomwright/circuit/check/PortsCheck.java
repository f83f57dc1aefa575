package loomwright.circuit.check;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.UsbPorts;
import loomwright.worked.Comparison;
import loomwright.worked.MissingFigure;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** USB ports: what they give together against what they share, and an efficiency that no converter has. */
final class PortsCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (!(node.figures() instanceof Load load) || load.ports() == null) {
            return;
        }
        UsbPorts ports = load.ports();
        if (ports.limit() == null) {
            findings.add(Check.PORTS, node, Finding.notKnown(
                    node.title() + ": the ports give " + ports.power().text() + " together; what they share is not given.", ports.power(), Findings.computed(),
                    new MissingFigure("ports-limit", "power that the USB ports share", "the outlet or its data sheet: total output, in watts")));
        } else {
            findings.add(Check.PORTS, node, Comparison.of("The power at the ports of " + node.title(), ports.power())
                    .atMost(ports.limit(), "what they share", Findings.entered())
                    .exact()
                    .otherwise(Verdict.CAUTION, "Plan with what they share, or take an outlet that gives more: all ports busy, each gets less."));
        }
        if (!ports.assumed()) {
            findings.add(Check.PORTS, node, Comparison.of("The efficiency entered for " + node.title(), ports.efficiency())
                    .atMost(UsbPorts.best().quantity("efficiency"), "the best that a data sheet gives for such a converter", UsbPorts.best().source())
                    .exact()
                    .otherwise(Verdict.CAUTION, "Enter the figure of the data sheet, or leave it empty. Watts at the ports are not watts at 12 V."));
        }
    }
}
