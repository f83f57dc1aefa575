package loomwright.circuit.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loomwright.circuit.Circuit;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/**
 * What a stop or a caution tells the reader to do, done, clears it and makes no other finding worse. Tried on every finding that a planted mistake
 * brings. What is done is found by the words of the advice, so that words and deed cannot part: {@link Way}.
 */
class AdviceTest {
    private static final List<String> VOLTAGE_AT_THE_LOAD = List.of("OPERATING_POINT", "VOLTAGE_DROP", "START");

    private final Map<String, Integer> failed = new LinkedHashMap<>();
    private final Map<String, Integer> harmed = new LinkedHashMap<>();
    private final Set<String> untested = new TreeSet<>();
    private final Set<String> worked = new TreeSet<>();
    private int followed;
    private int cleared;

    @Test
    void adviceFollowedClearsItsFindingAndMakesNoOtherWorse() {
        forEachFresh(this::follow);
        int harm = harmed.values().stream().mapToInt(Integer::intValue).sum();
        System.out.println("advice followed: " + followed + ", cleared: " + cleared + ", cleared only with harm elsewhere: " + harm + " " + harmed
                + ", not cleared: " + failed);
        assertEquals(Set.of(), untested, "advice that no way is written for");
        Expected.hold("ADVICE_THAT_FAILS", Expected.ADVICE_THAT_FAILS, failed);
        Expected.hold("ADVICE_THAT_HARMS", Expected.ADVICE_THAT_HARMS, harmed);
        Set<String> idle = Way.ALL.stream().map(Way::phrase).filter(phrase -> !worked.contains(phrase)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), idle, "advice that never cleared anything");
    }

    @Test
    void theSmallestSizeThatPassesClearsWhatASizeDecides() {
        int[] tried = new int[1];
        forEachFresh((circuit, before, outcome, finding) -> {
            boolean sized = List.of("conductor", "protection").contains(Bench.kind(circuit, finding.part()))
                    && List.of("AMPACITY", "CONDUCTOR_PROTECTED", "SHORT_CIRCUIT_HEAT", "DEVICE_LOADING").contains(finding.check());
            Circuit sizedAnew = sized ? Bench.smallestThatPasses(circuit, finding.part()) : null;
            if (sizedAnew != null) {
                tried[0]++;
                List<Bench.Named> after = Bench.findings(sizedAnew);
                assertTrue(isCleared(after, finding), () -> outcome.circuitName() + ", " + outcome.hazard().key() + ": " + finding + " left");
                assertEquals(List.of(), worse(circuit, before, after), () -> outcome.circuitName() + ", " + outcome.hazard().key());
            }
        });
        System.out.println("smallest sizes taken: " + tried[0]);
        assertTrue(tried[0] > 100);
    }

    /** Something done about one finding of a circuit with a planted mistake. */
    private interface Doing {
        void on(Circuit circuit, List<Bench.Named> before, Tally.Outcome outcome, Bench.Named finding);
    }

    /** Stops and cautions that the right circuit does not have. */
    private static void forEachFresh(Doing doing) {
        for (String name : RightCircuits.NAMES) {
            Map<String, Integer> right = Tally.counted(Bench.findings(RightCircuits.of(name)));
            for (Tally.Outcome outcome : Tally.outcomes()) {
                if (outcome.circuitName().equals(name)) {
                    Circuit circuit = outcome.planted().circuit();
                    List<Bench.Named> before = Bench.findings(circuit);
                    for (Bench.Named finding : before) {
                        if (finding.verdict().isWorseThan(Verdict.NOT_KNOWN) && !right.containsKey(Tally.key(finding))) {
                            doing.on(circuit, before, outcome, finding);
                        }
                    }
                }
            }
        }
    }

    private void follow(Circuit circuit, List<Bench.Named> before, Tally.Outcome outcome, Bench.Named finding) {
        List<Way> ways = Way.in(finding.remedy());
        if (ways.isEmpty()) {
            untested.add(finding.check() + " " + finding.verdict() + ": " + finding.remedy());
            return;
        }
        followed++;
        Job job = new Job(circuit, finding);
        String harm = "";
        boolean done = false;
        for (Way way : ways) {
            if (done && worked.contains(way.phrase())) {
                continue;
            }
            boolean clean = false;
            for (Circuit advised : (Iterable<Circuit>) way.doing().done(job).filter(Objects::nonNull)::iterator) {
                List<Bench.Named> after = Bench.findings(advised);
                List<Bench.Named> worse = worse(circuit, before, after);
                boolean gone = isCleared(after, finding);
                clean = gone && worse.isEmpty();
                harm = gone && !clean ? way.phrase() + ": " + worse.get(0) : harm;
                if (clean) {
                    break;
                }
            }
            if (clean) {
                worked.add(way.phrase());
                done = true;
            }
        }
        if (done) {
            cleared++;
            return;
        }
        (harm.isEmpty() ? failed : harmed).merge(outcome.hazard().key(), 1, Integer::sum);
        System.out.println(outcome.circuitName() + ", " + outcome.hazard().key() + " at " + outcome.planted().place() + ": " + finding.verdict() + " "
                + finding.check() + " " + finding.part() + ": " + finding.words() + " | " + finding.remedy()
                + (harm.isEmpty() ? " | leaves it" : " | harm by " + harm));
    }

    private static boolean isCleared(List<Bench.Named> after, Bench.Named finding) {
        return after.stream().noneMatch(left -> isSame(left, finding) && !finding.verdict().isWorseThan(left.verdict()));
    }

    /** Cautions and stops where there was none as bad, and stops further beyond their limit than before. */
    private static List<Bench.Named> worse(Circuit circuit, List<Bench.Named> before, List<Bench.Named> after) {
        return after.stream().filter(found -> isWorseThanAll(circuit, found, before, after)).toList();
    }

    private static boolean isWorseThanAll(Circuit circuit, Bench.Named found, List<Bench.Named> before, List<Bench.Named> after) {
        if (!found.verdict().isWorseThan(Verdict.NOT_KNOWN)) {
            return false;
        }
        boolean known = before.stream().anyMatch(old -> (isSame(old, found) || isPart(old, found)) && !found.verdict().isWorseThan(old.verdict()) && !isFurtherOff(found, old));
        // What is said of a branch moves to the new part where that branch begins.
        boolean moved = circuit.part(found.part()) == null && count(after, found) <= count(before, found);
        return !known && !moved;
    }

    /** Of two parts that are held against each other the finding lies at the one that is out of line with its neighbours. */
    private static boolean isSame(Bench.Named one, Bench.Named other) {
        boolean straight = one.part().equals(other.part()) && one.other().equals(other.other());
        boolean turned = one.part().equals(other.other()) && one.other().equals(other.part());
        return one.check().equals(other.check()) && (straight || turned);
    }

    /** A load that gets too little is told first that nothing arrives, then that too little does, then that a start takes it away. */
    private static boolean isPart(Bench.Named one, Bench.Named other) {
        return one.part().equals(other.part()) && VOLTAGE_AT_THE_LOAD.contains(one.check()) && VOLTAGE_AT_THE_LOAD.contains(other.check());
    }

    private static long count(List<Bench.Named> findings, Bench.Named alike) {
        return findings.stream().filter(one -> one.check().equals(alike.check()) && !alike.verdict().isWorseThan(one.verdict())).count();
    }

    /** By more than a twentieth. */
    private static boolean isFurtherOff(Bench.Named found, Bench.Named old) {
        return found.verdict() == Verdict.STOP && old.verdict() == Verdict.STOP
                && Math.abs(Math.log(found.excess())) > Math.abs(Math.log(old.excess())) + 0.05;
    }
}
