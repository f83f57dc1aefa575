package loomwright.protection;

import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Whether the gates show which of two devices opens first. */
final class SelectivityFindings {
    private static final String WEAK = "A time from memory, or of one breaker, decides nothing: take the curves of both data sheets.";

    private SelectivityFindings() {}

    static void add(WorkingBuilder working, TimeBracket downstream, TimeBracket upstream) {
        working.finding(of(downstream, upstream));
    }

    static Finding of(TimeBracket downstream, TimeBracket upstream) {
        if (isBefore(downstream.latest(), upstream.earliest())) {
            boolean weak = downstream.latest().isWeak() || upstream.earliest().isWeak();
            return new Finding(
                    weak ? Verdict.CAUTION : Verdict.PASSED,
                    "Downstream first: the " + downstream.name() + " has opened by " + TimeFindings.time(downstream.latestTime()) + ", the "
                            + upstream.name() + " does not open before " + TimeFindings.time(upstream.earliestTime()) + ".",
                    downstream.latestTime(), upstream.earliestTime(), weakest(downstream.latest(), upstream.earliest()).row().source(),
                    weak ? WEAK : "");
        }
        if (isBefore(upstream.latest(), downstream.earliest())) {
            boolean weak = upstream.latest().isWeak() || downstream.earliest().isWeak();
            return new Finding(
                    weak ? Verdict.CAUTION : Verdict.STOP,
                    "Upstream first: the " + upstream.name() + " has opened by " + TimeFindings.time(upstream.latestTime()) + ", the "
                            + downstream.name() + " does not open before " + TimeFindings.time(downstream.earliestTime()) + ".",
                    upstream.latestTime(), downstream.earliestTime(), weakest(upstream.latest(), downstream.earliest()).row().source(),
                    weak ? WEAK : "Take a smaller rating or a faster kind downstream.");
        }
        return notShown(downstream, upstream);
    }

    private static Finding notShown(TimeBracket downstream, TimeBracket upstream) {
        String latest = downstream.latest() == null
                ? "no latest time is known"
                : "it has opened by " + TimeFindings.time(downstream.latestTime());
        String earliest = upstream.earliest() == null
                ? "no earliest time is known"
                : "it does not open before " + TimeFindings.time(upstream.earliestTime());
        return new Finding(
                Verdict.CAUTION,
                "Not shown which opens first. Of the " + downstream.name() + " " + latest + "; of the " + upstream.name() + " " + earliest
                        + ".",
                downstream.share(), null, downstream.source(),
                "Take the curves of both data sheets, or ratings further apart. At a hard short circuit both may open.");
    }

    private static boolean isBefore(Gate latest, Gate earliest) {
        return latest != null && earliest != null && latest.longest().base() < earliest.shortest().base();
    }

    private static Gate weakest(Gate first, Gate second) {
        return second.isFromMemory() || !first.isWeak() ? second : first;
    }
}
