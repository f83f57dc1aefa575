package loomwright.circuit.check;

import java.util.HashMap;
import java.util.Map;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** What a change to a circuit makes worse elsewhere. */
final class Worsened {
    private static final double HAIR = 1e-9;

    private Worsened() {}

    /** The first finding that stops or cautions now and did not before, or a stop that is further beyond its limit; null if there is none. */
    static CircuitFinding first(Examination before, Examination after) {
        Map<String, CircuitFinding> known = new HashMap<>();
        for (CircuitFinding finding : before.findings()) {
            // Worst first, so the first of a key stands for it.
            known.putIfAbsent(key(finding), finding);
        }
        for (CircuitFinding finding : after.findings()) {
            CircuitFinding was = known.get(key(finding));
            Verdict verdict = finding.finding().verdict();
            boolean matters = verdict == Verdict.STOP || verdict == Verdict.CAUTION;
            if (matters && (was == null || verdict.isWorseThan(was.finding().verdict()) || isFurtherOff(finding.finding(), was.finding()))) {
                return finding;
            }
        }
        return null;
    }

    private static boolean isFurtherOff(Finding now, Finding was) {
        boolean both = now.verdict() == Verdict.STOP && was.verdict() == Verdict.STOP && now.limit() != null && was.limit() != null;
        return both && Math.abs(Math.log(now.figure().base() / now.limit().base()))
                > Math.abs(Math.log(was.figure().base() / was.limit().base())) * (1 + HAIR) + HAIR;
    }

    private static String key(CircuitFinding finding) {
        return finding.check() + " " + finding.partId();
    }
}
