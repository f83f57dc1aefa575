package loomwright.protection;

import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** What a bracket of opening times says, and what it does not. */
final class TimeFindings {
    private static final String CURVE = "Where the time matters, take the curve in the data sheet of your own device.";

    private TimeFindings() {}

    static void bracket(WorkingBuilder working, TimeBracket bracket) {
        working.finding(new Finding(Verdict.CAUTION, sentence(bracket), bracket.share(), null, bracket.source(), CURVE));
        warnOfWeak(working, bracket.earliest(), bracket);
        if (bracket.latest() != bracket.earliest()) {
            warnOfWeak(working, bracket.latest(), bracket);
        }
        warnOfUnusedMemory(working, bracket);
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
        boolean shown = bracket.latest() != null && bracket.latestTime().base() <= limit.base() * (1 + 1e-9);
        boolean late = bracket.earliest() != null && bracket.earliestTime().base() > limit.base() * (1 + 1e-9);
        if (shown) {
            working.finding(new Finding(
                    bracket.latest().isWeak() ? Verdict.CAUTION : Verdict.PASSED,
                    "It has opened by " + time(bracket.latestTime()) + ", within the " + limit.text() + " wanted.", bracket.latestTime(),
                    limit,
                    bracket.latest().row().source(), bracket.latest().isWeak() ? "This time decides nothing. " + CURVE : ""));
        } else if (late) {
            working.finding(new Finding(
                    bracket.earliest().isWeak() ? Verdict.CAUTION : Verdict.STOP,
                    "It does not open before " + time(bracket.earliestTime()) + ", later than the " + limit.text() + " wanted.",
                    bracket.earliestTime(), limit, bracket.earliest().row().source(),
                    "Take a smaller rating, a faster kind, or a thicker conductor."));
        } else {
            working.finding(new Finding(
                    Verdict.CAUTION, "The gates do not show that it has opened within the " + limit.text() + " wanted.", bracket.share(),
                    limit,
                    bracket.source(), CURVE));
        }
    }

    private static void warnOfWeak(WorkingBuilder working, Gate gate, TimeBracket bracket) {
        if (gate == null || !gate.isWeak()) {
            return;
        }
        String words = gate.isFromMemory()
                ? "The gate at " + gate.share().text() + " is from memory: no one could look it up."
                : "The time at " + gate.share().text() + " is that of one breaker in a trade note, not a limit that all keep.";
        working.finding(new Finding(Verdict.CAUTION, words, bracket.share(), null, gate.row().source(), "It decides nothing. " + CURVE));
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
        working.finding(new Finding(
                Verdict.CAUTION, text.append('.').toString(), bracket.share(), null, memory.get(0).row().source(),
                "Look them up before you use them."));
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
