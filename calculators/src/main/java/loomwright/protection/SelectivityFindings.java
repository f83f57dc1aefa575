package loomwright.protection;

import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Whether the gates show which of two devices opens first. */
final class SelectivityFindings {
    private SelectivityFindings() {}

    static void add(WorkingBuilder working, TimeBracket downstream, TimeBracket upstream) {
        working.finding(of(downstream, upstream));
    }

    static Finding of(TimeBracket downstream, TimeBracket upstream) {
        if (isBefore(downstream.latest(), upstream.earliest())) {
            return inOrder(downstream, upstream);
        }
        if (isBefore(upstream.latest(), downstream.earliest())) {
            return turnedRound(downstream, upstream);
        }
        return notShown(downstream, upstream);
    }

    private static Finding inOrder(TimeBracket downstream, TimeBracket upstream) {
        return Comparison.of("Downstream first: the latest opening time of the " + downstream.name(), downstream.latestTime())
                .atMost(upstream.earliestTime(), "the earliest of the " + upstream.name(), upstream.earliest().basis())
                .restingOn(downstream.latest().basis())
                .exact()
                .settledBy(curve(downstream, upstream))
                .finding();
    }

    /** A nuisance and no fire; a time that is weak makes it a caution. */
    private static Finding turnedRound(TimeBracket downstream, TimeBracket upstream) {
        boolean weak = upstream.latest().isWeak() || downstream.earliest().isWeak();
        return Comparison.of("Upstream first: the earliest opening time of the " + downstream.name(), downstream.earliestTime())
                .atMost(upstream.latestTime(), "the latest of the " + upstream.name(), upstream.latest().basis())
                .restingOn(downstream.earliest().basis())
                .exact()
                .otherwise(weak ? Verdict.CAUTION : Verdict.STOP, "Take a smaller rating or a faster kind downstream.")
                .finding();
    }

    private static Finding notShown(TimeBracket downstream, TimeBracket upstream) {
        String latest = downstream.latest() == null
                ? "no latest time is known"
                : "it has opened by " + TimeFindings.time(downstream.latestTime());
        String earliest = upstream.earliest() == null
                ? "no earliest time is known"
                : "it does not open before " + TimeFindings.time(upstream.earliestTime());
        return Finding.notKnown(
                "Not shown which opens first. Of the " + downstream.name() + " " + latest + "; of the " + upstream.name() + " " + earliest
                        + ". At a hard short circuit both may open.",
                downstream.share(), downstream.source(), curve(downstream, upstream));
    }

    private static MissingFigure curve(TimeBracket downstream, TimeBracket upstream) {
        String names = downstream.name().equals(upstream.name()) ? downstream.name() : downstream.name() + " and of the " + upstream.name();
        return new MissingFigure("", "opening times of the " + names, "the time-current curves in their data sheets");
    }

    private static boolean isBefore(Gate latest, Gate earliest) {
        return latest != null && earliest != null && latest.longest().base() < earliest.shortest().base();
    }
}
