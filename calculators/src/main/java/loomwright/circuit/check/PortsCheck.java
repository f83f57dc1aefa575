package loomwright.circuit.check;

import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.load.PortsLoad;
import loomwright.source.Standing;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/** USB ports: what they are asked for against what they share, and an efficiency that no converter has. */
final class PortsCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (!(node.figures() instanceof Load load) || load.ports() == null) {
            return;
        }
        PortsLoad ports = load.ports();
        MissingFigure shares = new MissingFigure("ports-limit", "power that the USB ports share", "the outlet or its data sheet: total output, in watts");
        Finding shared = ports.shared(node.title(), node.part().figuresFrom(), shares);
        findings.add(Check.PORTS, node, shared != null ? shared : Finding.notKnown(
                node.title() + ": the ports give " + ports.asked().text() + " together; what they share is not given.", ports.asked(), Findings.computed(),
                shares));
        if (ports.source().standing() == Standing.COMPUTED) {
            Row best = PublishedTables.dcDcEfficiency().row("synchronous-half-load");
            findings.add(Check.PORTS, node, Comparison.of("The efficiency entered for " + node.title(), ports.efficiency())
                    .atMost(best.quantity("efficiency"), "the best that a data sheet gives for such a converter", best.source())
                    .exact()
                    .otherwise(Verdict.CAUTION, "Enter the figure of the data sheet, or leave it empty. Watts at the ports are not watts at 12 V."));
        }
    }
}
