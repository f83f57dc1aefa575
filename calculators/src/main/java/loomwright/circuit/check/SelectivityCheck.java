package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.protection.OpeningTimes;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;

/** Whether a device opens before the one nearer to the battery, at both ends of the range of fault current behind it. */
final class SelectivityCheck implements PartCheck {
    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.kind() == PartKind.PROTECTION && node.deviceBefore() != null) {
            check(node, node.deviceBefore(), context, findings);
        }
    }

    private static void check(Node downstream, Node upstream, Context context, Findings findings) {
        if (!Comparison.atLeast(GuardCheck.rating(downstream), GuardCheck.rating(upstream))) {
            addTimes(downstream, upstream, context.currents(), findings);
            return;
        }
        findings.add(Check.SELECTIVITY, downstream, new Finding(
                Verdict.CAUTION,
                downstream.title() + ", " + GuardCheck.rating(downstream).text() + ", is not rated below " + upstream.title() + ", "
                        + GuardCheck.rating(upstream).text() + ", before it: either may open first, and then more goes dead than the fault.",
                GuardCheck.rating(downstream), GuardCheck.rating(upstream), Source.commonPractice(),
                "Take a smaller rating for " + downstream.title() + ", or a larger one before it that still guards all behind it."));
    }

    private static void addTimes(Node downstream, Node upstream, FaultCurrents currents, Findings findings) {
        Quantity lowest = currents.lowestBehind(downstream);
        Quantity highest = currents.highest(downstream);
        Finding atLowest = at(lowest, downstream, upstream);
        Finding atHighest = highest == null ? atLowest : at(highest, downstream, upstream);
        boolean lowestIsWorse = !atHighest.verdict().isWorseThan(atLowest.verdict());
        Finding worse = lowestIsWorse ? atLowest : atHighest;
        Quantity current = lowestIsWorse ? lowest : highest;
        String words = downstream.title() + " before " + upstream.title() + ", at " + current.text(3) + ": " + worse.words();
        boolean shown = worse.verdict() == Verdict.PASSED && currents.source().standing().mayPass();
        findings.add(Check.SELECTIVITY, downstream, shown
                ? new Finding(Verdict.PASSED, words, worse.figure(), worse.limit(), worse.source(), "")
                : Finding.notKnown(words, worse.figure(), worse.source(), curves()));
    }

    private static Finding at(Quantity current, Node downstream, Node upstream) {
        OpeningTimes near = times(downstream, current);
        OpeningTimes far = times(upstream, current);
        if (near != null && far != null) {
            return OpeningTimes.selectivity(near, far);
        }
        Protection missing = (Protection) (near == null ? downstream : upstream).figures();
        return Finding.notKnown(
                "no opening times are published for a " + missing.words() + ", so it was not checked.", current, Findings.computed(),
                curves());
    }

    private static MissingFigure curves() {
        return new MissingFigure(
                "", "opening curve of the device and that of the one before it",
                "both data sheets: at every current the device must have opened before the one before it begins to");
    }

    private static OpeningTimes times(Node device, Quantity current) {
        Protection protection = (Protection) device.figures();
        return OpeningTimes.of(protection.device().key(), protection.rating(), current);
    }
}
