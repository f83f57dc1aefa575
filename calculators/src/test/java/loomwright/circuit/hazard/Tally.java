package loomwright.circuit.hazard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.worked.Verdict;

/** Plants every mistake at every place of every right circuit, once, and keeps what came of it. */
final class Tally {
    /**
     * One planted mistake.
     *
     * @param caught whether a finding names it that was not there before
     */
    record Outcome(Hazard hazard, String circuitName, Plot.Planted planted, boolean caught) {}

    private static final List<Outcome> OUTCOMES = run();

    private Tally() {}

    static List<Outcome> outcomes() {
        return OUTCOMES;
    }

    static long planted(Hazard hazard) {
        return OUTCOMES.stream().filter(outcome -> outcome.hazard() == hazard).count();
    }

    static List<Outcome> missed(Hazard hazard) {
        return OUTCOMES.stream().filter(outcome -> outcome.hazard() == hazard && !outcome.caught()).toList();
    }

    private static List<Outcome> run() {
        List<Outcome> outcomes = new ArrayList<>();
        for (String name : RightCircuits.NAMES) {
            Circuit right = RightCircuits.of(name);
            Map<String, Integer> before = counted(Bench.findings(right));
            for (Hazard hazard : Hazards.ALL) {
                Plot plot = new Plot();
                try {
                    if (hazard.isExpressible()) {
                        hazard.planting().plant(new Wiring(right), plot);
                    }
                    for (Plot.Planted planted : plot.all()) {
                        outcomes.add(new Outcome(hazard, name, planted, isCaught(before, planted, hazard.least())));
                    }
                } catch (AssertionError refused) {
                    throw new AssertionError(name + ", " + hazard.key() + " cannot be planted: " + refused.getMessage(), refused);
                }
            }
        }
        return List.copyOf(outcomes);
    }

    /** Whether there are more findings than before, of one check at one part with one verdict, that lie at a blamed part or name one. */
    static boolean isCaught(Map<String, Integer> before, Plot.Planted planted, Verdict least) {
        List<Bench.Named> after = Bench.findings(planted.circuit());
        Map<String, Integer> counts = counted(after);
        for (Bench.Named finding : after) {
            boolean fresh = counts.get(key(finding)) > before.getOrDefault(key(finding), 0);
            if (fresh && !least.isWorseThan(finding.verdict()) && names(planted, finding)) {
                return true;
            }
        }
        return false;
    }

    private static boolean names(Plot.Planted planted, Bench.Named finding) {
        return planted.blamed().stream().anyMatch(
                id -> finding.part().equals(id) || finding.words().contains(Bench.title(planted.circuit(), id)));
    }

    static Map<String, Integer> counted(List<Bench.Named> findings) {
        Map<String, Integer> counts = new HashMap<>();
        for (Bench.Named finding : findings) {
            counts.merge(key(finding), 1, Integer::sum);
        }
        return counts;
    }

    static String key(Bench.Named finding) {
        return finding.check() + " " + finding.part() + " " + finding.verdict();
    }
}
