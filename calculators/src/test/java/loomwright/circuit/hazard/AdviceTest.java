package loomwright.circuit.hazard;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** What the program would do about a finding, done, clears that finding and makes no other worse. Tried on every planted mistake. */
class AdviceTest {
    private final Map<String, Integer> failed = new LinkedHashMap<>();
    private final Map<String, Integer> harmed = new LinkedHashMap<>();
    private int followed;

    @Test
    void adviceFollowedClearsItsFindingAndMakesNoOtherWorse() {
        for (String name : RightCircuits.NAMES) {
            Map<String, Integer> right = Tally.counted(Bench.findings(RightCircuits.of(name)));
            for (Tally.Outcome outcome : Tally.outcomes()) {
                if (outcome.circuitName().equals(name)) {
                    follow(right, outcome);
                }
            }
        }
        System.out.println("advice followed: " + followed + ", leaves its finding: " + failed + ", makes another worse: " + harmed);
        assertTrue(followed > 0);
        Expected.hold("ADVICE_THAT_FAILS", Expected.ADVICE_THAT_FAILS, failed);
        Expected.hold("ADVICE_THAT_HARMS", Expected.ADVICE_THAT_HARMS, harmed);
    }

    private void follow(Map<String, Integer> right, Tally.Outcome outcome) {
        Circuit circuit = outcome.planted().circuit();
        List<Bench.Named> before = Bench.findings(circuit);
        for (Bench.Named finding : before) {
            boolean planted = finding.verdict().isWorseThan(Verdict.NOT_KNOWN) && !right.containsKey(Tally.key(finding));
            Circuit advised = planted ? Bench.advised(circuit, finding) : null;
            if (advised != null) {
                followed++;
                List<Bench.Named> after = Bench.findings(advised);
                List<Bench.Named> worse = after.stream().filter(found -> isWorseThanAll(found, before)).toList();
                if (after.stream().anyMatch(left -> isAsBad(left, finding))) {
                    count(failed, outcome, finding, "left as it was");
                } else if (!worse.isEmpty()) {
                    count(harmed, outcome, finding, "cleared, but worse: " + worse.get(0).verdict() + " " + worse.get(0).words());
                }
            }
        }
    }

    private static boolean isAsBad(Bench.Named left, Bench.Named finding) {
        return left.check().equals(finding.check()) && left.part().equals(finding.part()) && !finding.verdict().isWorseThan(left.verdict());
    }

    /** A caution or stop where there was none as bad, or a stop further beyond its limit than before. */
    private static boolean isWorseThanAll(Bench.Named found, List<Bench.Named> before) {
        return found.verdict().isWorseThan(Verdict.NOT_KNOWN) && before.stream().noneMatch(
                old -> old.check().equals(found.check()) && old.part().equals(found.part()) && !found.verdict().isWorseThan(old.verdict())
                        && !isFurtherOff(found, old));
    }

    /** By more than a twentieth. */
    private static boolean isFurtherOff(Bench.Named found, Bench.Named old) {
        return found.verdict() == Verdict.STOP && old.verdict() == Verdict.STOP
                && Math.abs(Math.log(found.excess())) > Math.abs(Math.log(old.excess())) + 0.05;
    }

    private static void count(Map<String, Integer> counts, Tally.Outcome outcome, Bench.Named finding, String what) {
        counts.merge(outcome.hazard().key(), 1, Integer::sum);
        System.out.println(outcome.circuitName() + ", " + outcome.hazard().key() + " at " + outcome.planted().place() + ", " + finding.check() + " "
                + finding.part() + " " + what);
    }
}
