package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.Protection;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.protection.OpeningTimes;
import loomwright.protection.RatingOrder;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/** Whether a device opens before the one nearer to the battery, at both ends of the range of fault current behind it. */
final class SelectivityCheck implements PartCheck {
    private static final MissingFigure CURVES = new MissingFigure(
            "opening-time", "opening curve of the device and that of the one before it",
            "both data sheets: at every current the device must have opened while the one before it still holds");

    @Override
    public void check(Node node, Context context, Findings findings) {
        if (node.kind() == PartKind.PROTECTION && node.deviceBefore() != null) {
            check(node, node.deviceBefore(), context, findings);
        }
    }

    private static void check(Node downstream, Node upstream, Context context, Findings findings) {
        Finding wrong = RatingOrder.wrong(downstream.title(), GuardCheck.rating(downstream), upstream.title(), GuardCheck.rating(upstream));
        if (wrong == null) {
            addTimes(downstream, upstream, context, findings);
        } else {
            findings.add(Check.SELECTIVITY, downstream, upstream, wrong);
        }
    }

    private static void addTimes(Node downstream, Node upstream, Context context, Findings findings) {
        FaultCurrents currents = context.currents();
        Quantity lowest = currents.lowestBehind(downstream);
        Quantity highest = currents.highest(downstream);
        Finding atLowest = at(lowest, downstream, upstream, context);
        Finding atHighest = highest == null ? atLowest : at(highest, downstream, upstream, context);
        boolean lowestIsWorse = !atHighest.verdict().isWorseThan(atLowest.verdict());
        Finding worse = lowestIsWorse ? atLowest : atHighest;
        Quantity current = lowestIsWorse ? lowest : highest;
        Sentence words = Sentence.later(() -> downstream.title() + " before " + upstream.title() + ", at " + current.text(3) + ": " + worse.words());
        boolean shown = worse.verdict() == Verdict.PASSED && currents.source().standing().mayPass();
        boolean turned = worse.verdict().isWorseThan(Verdict.NOT_KNOWN);
        findings.add(Check.SELECTIVITY, downstream, upstream, shown || turned
                ? new Finding(shown ? Verdict.PASSED : Verdict.CAUTION, words, worse.figure(), worse.limit(), worse.source(), worse.advice())
                : Finding.notKnown(words, worse.figure(), worse.source(), CURVES));
    }

    private static Finding at(Quantity current, Node downstream, Node upstream, Context context) {
        OpeningTimes near = times(downstream, current);
        OpeningTimes far = times(upstream, current);
        Finding byGates = near == null || far == null ? null : OpeningTimes.selectivity(near, far);
        if (byGates != null && byGates.verdict() != Verdict.NOT_KNOWN) {
            return byGates;
        }
        Comparison bySheets = bySheets(current, context.sheet(downstream), context.sheet(upstream));
        if (bySheets != null) {
            return bySheets.finding();
        }
        if (byGates != null) {
            return byGates;
        }
        Protection missing = (Protection) (near == null ? downstream : upstream).figures();
        return Finding.notKnown(
                "no opening times are published for a " + missing.words() + ", so it was not checked.", current, Findings.computed(),
                CURVES);
    }

    /** By one point of each curve; null if they do not reach so far. */
    private static Comparison bySheets(Quantity current, Protection near, Protection far) {
        Quantity opened = near.openedBy(current);
        boolean held = far.holdingCurrent() != null && far.holdingTime() != null && Comparison.atMost(current, far.holdingCurrent());
        return opened == null || !held
                ? null
                : Comparison.of("Downstream first: the time by which the " + near.words() + " has opened", opened)
                        .atMost(far.holdingTime(), "the time for which the " + far.words() + " holds that current", far.figuresFrom())
                        .restingOn(near.figuresFrom())
                        .exact()
                        .settledBy(CURVES)
                        .otherwise(Verdict.CAUTION, "Take a smaller rating or a faster kind downstream.");
    }

    private static OpeningTimes times(Node device, Quantity current) {
        Protection protection = (Protection) device.figures();
        return OpeningTimes.of(protection.device().key(), protection.rating(), current);
    }
}
