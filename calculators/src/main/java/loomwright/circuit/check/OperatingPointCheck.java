package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.circuit.solve.Solved;
import loomwright.circuit.solve.Starvation;
import loomwright.quantity.Quantity;
import loomwright.worked.Finding;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/** Whether the circuit has an operating point in every situation that lasts. Asked once, at the battery. */
final class OperatingPointCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.parent() != null) {
            return;
        }
        boolean all = true;
        for (Solved solved : context.solution().lasting()) {
            Starvation starvation = Starvation.of(context.circuit(), solved);
            if (starvation != null) {
                all = false;
                findings.add(Check.OPERATING_POINT, starvation.part(), new Finding(
                        Verdict.STOP, Sentence.of(starvation.words()), starvation.asked(), starvation.most(), Findings.computed(),
                        Loss.remedy(starvation.part(), null, ", or take a load that asks for less")));
            }
        }
        if (all) {
            Quantity largest = context.designCurrent(node);
            findings.add(Check.OPERATING_POINT, node, new Finding(
                    Verdict.PASSED,
                    "From " + context.battery().lowest().text() + " to " + context.battery().highest().text()
                            + " at the battery there is an operating point in every situation; at most " + largest.text(3) + " flow from it.",
                    largest, null, Findings.computed(), ""));
        }
    }
}
