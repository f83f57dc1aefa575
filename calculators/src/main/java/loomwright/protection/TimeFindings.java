package loomwright.protection;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What a bracket of opening times says, and what it does not. */
final class TimeFindings {
    private TimeFindings() {}

    static void bracket(WorkingBuilder working, TimeBracket bracket) {
        working.finding(Finding.notKnown(sentence(bracket), bracket.share(), bracket.source(), curve(bracket)));
        warnOfWeak(working, bracket.earliest(), bracket);
        if (bracket.latest() != bracket.earliest()) {
            warnOfWeak(working, bracket.latest(), bracket);
        }
        warnOfUnusedMemory(working, bracket);
    }

    /** Where in its bracket the reader's own device opens. */
    private static MissingFigure curve(TimeBracket bracket) {
        return new MissingFigure("", "opening time of the " + bracket.name() + " at this current", "the time-current curve in its data sheet");
    }

    private static String sentence(TimeBracket bracket) {
        StringBuilder text = new StringBuilder("At " + bracket.share().text(4) + " of its rating a " + bracket.name());
        if (bracket.earliest() == null) {
            text.append(" may open at once, for no gate lies at or above this current");
        } else {
            text.append(" does not open before ").append(time(bracket.earliestTime())).append(" (gate at ")
                    .append(bracket.earliest().share().text())
                    .append(")");
        }
        if (bracket.latest() == null) {
            return text.append(", and nothing says that it opens at all: no gate lies at or below this current.").toString();
        }
        return text.append(" and has opened by ").append(time(bracket.latestTime())).append(" (gate at ")
                .append(bracket.latest().share().text())
                .append("). Nothing is read between gates.").toString();
    }

    static void limit(WorkingBuilder working, TimeBracket bracket, Quantity limit) {
        boolean late = bracket.earliest() != null && !Comparison.atMost(bracket.earliestTime(), limit);
        boolean shown = bracket.latest() != null && Comparison.atMost(bracket.latestTime(), limit);
        if (late || shown) {
            Gate gate = late ? bracket.earliest() : bracket.latest();
            working.finding(Comparison.of(
                            late ? "The earliest time at which it opens" : "The latest time at which it has opened",
                            late ? bracket.earliestTime() : bracket.latestTime())
                    .atMost(limit, "the time wanted", gate.basis())
                    .exact()
                    .settledBy(curve(bracket))
                    .otherwise(Verdict.STOP, "Take a smaller rating, a faster kind, or a thicker conductor.")
                    .finding());
        } else {
            working.finding(Finding.notKnown(
                    "The gates do not show that it has opened within the " + limit.text() + " wanted.", bracket.share(), bracket.source(),
                    curve(bracket)));
        }
    }

    private static void warnOfWeak(WorkingBuilder working, Gate gate, TimeBracket bracket) {
        if (gate == null || !gate.isWeak()) {
            return;
        }
        String words = gate.isFromMemory()
                ? "The gate at " + gate.share().text() + " is from memory: no one could look it up."
                : "The time at " + gate.share().text() + " is that of one breaker in a trade note, not a limit that all keep.";
        working.finding(Finding.notKnown(words, bracket.share(), gate.row().source(), curve(bracket)));
    }

    /** Gates from memory that the bracket leaves aside, since print says something. */
    private static void warnOfUnusedMemory(WorkingBuilder working, TimeBracket bracket) {
        List<Gate> memory = bracket.gates().fromMemory();
        boolean used = isMemory(bracket.earliest()) || isMemory(bracket.latest());
        if (memory.isEmpty() || used) {
            return;
        }
        StringBuilder text = new StringBuilder("Left aside, because from memory:");
        for (Gate gate : memory) {
            text.append(gate == memory.get(0) ? " " : "; ").append(gate.share().text()).append(' ').append(window(gate));
        }
        working.finding(Finding.notKnown(text.append('.').toString(), bracket.share(), memory.get(0).row().source(), curve(bracket)));
    }

    private static String window(Gate gate) {
        String longest = gate.hasLongest() ? " to " + time(gate.longest()) : " and more";
        return (gate.hasShortest() ? time(gate.shortest()) : "0 s") + longest;
    }

    private static boolean isMemory(Gate gate) {
        return gate != null && gate.isFromMemory();
    }

    /** Long times in hours. */
    static String time(Quantity time) {
        return time.base() >= 36_000 ? time.in(Units.HOUR).text() : time.text();
    }
}
