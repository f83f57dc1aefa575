package loomwright.circuit.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** A right circuit draws no stop and few cautions; what is not known counts as neither. */
class RightCircuitsTest {
    @Test
    void rightCircuitsStayQuiet() {
        Map<String, Integer> stops = new LinkedHashMap<>();
        Map<String, Integer> cautions = new LinkedHashMap<>();
        for (String name : RightCircuits.NAMES) {
            Circuit circuit = RightCircuits.of(name);
            List<Bench.Named> findings = Bench.findings(circuit);
            int cautioned = count(findings, Verdict.CAUTION);
            stops.put(name, count(findings, Verdict.STOP));
            cautions.put(name, cautioned <= Expected.MOST_CAUTIONS ? 0 : cautioned);
            System.out.println(name + ": stops " + stops.get(name) + ", cautions " + cautioned + ", not known " + count(findings, Verdict.NOT_KNOWN)
                    + ", passed " + count(findings, Verdict.PASSED));
            findings.stream().filter(finding -> finding.verdict().isWorseThan(Verdict.NOT_KNOWN)).forEach(
                    finding -> System.out.println("    " + finding.verdict() + " " + finding.check() + " " + finding.part() + ": " + finding.words()));
        }
        Expected.hold("STOPS", Expected.STOPS, stops);
        Expected.hold("CAUTIONS", Expected.CAUTIONS, cautions);
    }

    @Test
    void rightCircuitsKeepAwayFromTheirLimits() {
        for (String name : RightCircuits.NAMES) {
            for (Bench.Named finding : Bench.findings(RightCircuits.of(name))) {
                boolean asMeant = List.of("CHARGING", "SYSTEM_VOLTAGE").contains(finding.check());
                boolean close = !asMeant && finding.verdict() == Verdict.PASSED && finding.excess() > 0.95 && finding.excess() < 1.05;
                assertFalse(close, name + ": " + finding);
            }
        }
    }

    /** A finding names a part by its title, so no title may be a piece of another. */
    @Test
    void noTitleIsAPieceOfAnother() {
        for (String name : RightCircuits.NAMES) {
            Circuit circuit = RightCircuits.of(name);
            for (String id : Bench.ids(circuit)) {
                long holders = Bench.ids(circuit).stream().filter(other -> Bench.title(circuit, other).contains(Bench.title(circuit, id))).count();
                assertEquals(1, holders, name + ": " + id);
            }
        }
    }

    private static int count(List<Bench.Named> findings, Verdict verdict) {
        return (int) findings.stream().filter(finding -> finding.verdict() == verdict).count();
    }
}
