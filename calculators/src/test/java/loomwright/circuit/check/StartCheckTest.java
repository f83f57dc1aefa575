package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Node;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.solve.Solved;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A start of 60 A behind a blade fuse-link. The gates at 350 % (0.5 s) and 600 % (0.1 s) are from memory: such a figure may stop, and never pass. */
class StartCheckTest {
    private static Finding start(String rating, String lasts) {
        Circuit circuit = WorkedCircuits.trailer();
        String[][] changes = {{"way-3", "rating", rating}, {"pump", "start-current", "60 A"}, {"pump", "start-time", lasts}, {"pump-run", "size", "10 mm²"}};
        for (String[] change : changes) {
            circuit = CircuitEdits.changed(circuit, change[0], change[1], change[2]).circuit();
        }
        return Examination.of(circuit).findingsOn("pump").stream()
                .filter(each -> each.check() == Check.START && each.otherId().equals("way-3")).findFirst().orElseThrow().finding();
    }

    /** 10 A is printed with 5 s at 200 %, and that is no reason to think it slower at 600 % than one of 7.5 A or 15 A. */
    @ParameterizedTest
    @CsvSource({"7.5 A, 0.1", "10 A, 0.1", "15 A, 0.5"})
    void aFuseThatHasOpenedByThenStopsIt(String rating, double opened) {
        Finding finding = start(rating, "0.5 s");
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(opened, finding.limit().base(), 1e-12);
        assertEquals(Verdict.NOT_KNOWN, start(rating, opened == 0.5 ? "0.49 s" : "0.09 s").verdict());
    }

    /** 300 % of 20 A: no gate says that it has opened within half a second. 200 % of 30 A likewise. */
    @ParameterizedTest
    @CsvSource({"20 A", "30 A"})
    void whatNoGateSaysIsNotKnown(String rating) {
        assertEquals(Verdict.NOT_KNOWN, start(rating, "0.5 s").verdict());
    }

    @Test
    void aLargerRatingIsNeverStoppedWhereASmallerOneIsNot() {
        for (String lasts : new String[] {"0.05 s", "0.1 s", "0.3 s", "0.5 s", "5 s"}) {
            boolean before = true;
            for (String rating : new String[] {"1 A", "2 A", "3 A", "4 A", "5 A", "7.5 A", "10 A", "15 A", "20 A", "25 A", "30 A", "35 A", "40 A"}) {
                boolean stops = start(rating, lasts).verdict() == Verdict.STOP;
                assertTrue(before || !stops, rating + " for " + lasts);
                before = stops;
            }
        }
    }

    private static Circuit starting(String startCurrent, String lowest) {
        Circuit circuit = CircuitEdits.changed(WorkedCircuits.trailer(), "pump", "start-current", startCurrent).circuit();
        return lowest.isEmpty() ? circuit : CircuitEdits.changed(circuit, "strip", "lowest-working-voltage", lowest).circuit();
    }

    private static String volts(double volts) {
        return Math.round(1000 * volts) / 1000.0 + " V";
    }

    private static List<Finding> on(Circuit circuit, String id) {
        return Examination.of(circuit).findingsOn(id).stream().filter(each -> each.check() == Check.START && each.partId().equals(id)).map(CircuitFinding::finding).toList();
    }

    /** Only a start that takes a load below what it works at, and that alone, is a caution: not one that leaves enough, and not one where there is too little anyhow. */
    @Test
    void aStartThatTakesTheVoltageOfAnotherIsCautionedAgainst() {
        Examination examination = Examination.of(starting("60 A", ""));
        Node strip = examination.circuit().node("strip");
        Solved start = examination.solution().starts().stream().filter(each -> each.situation().starting().id().equals("pump")).findFirst().orElseThrow();
        double left = start.volts(strip);
        double without = examination.solution().leastVolts(strip);
        assertTrue(left < without - 0.2, left + " of " + without);
        assertEquals(List.of(), on(starting("60 A", ""), "strip"), "nobody said what it works at");
        assertEquals(List.of(), on(starting("60 A", volts(left - 0.1)), "strip"));
        assertEquals(List.of(), on(starting("60 A", volts(without + 0.1)), "strip"));
        Finding dip = on(starting("60 A", volts((left + without) / 2)), "strip").get(0);
        assertEquals(Verdict.CAUTION, dip.verdict());
        assertEquals(left, dip.figure().base(), 1e-3);
        assertTrue(dip.words().contains("while Water pump starts"), dip.words());
        assertTrue(dip.remedy().contains("by runs of their own"), dip.remedy());
    }

    /** From 10.5 V 2000 A would need less than 5.25 mΩ in all; the run to the pump alone has 3.5 m out and back of 2.5 mm², more than 48 mΩ. */
    @Test
    void aStartThatAsksForMoreThanTheRunsLetThroughIsAStop() {
        Finding starved = on(starting("2000 A", ""), "pump").get(0);
        assertEquals(Verdict.STOP, starved.verdict());
        assertTrue(starved.words().contains("is starved"), starved.words());
        Circuit anyhow = CircuitEdits.changed(CircuitEdits.changed(starting("2000 A", ""), "bench-run", "size", "0.5 mm²").circuit(), "bench-run", "route-length", "20 m").circuit();
        assertEquals(List.of(), on(anyhow, "pump"), "what is starved without a start is found by another check");
    }

    /** Up to its rating nothing opens it: 60 A and 60 A. */
    @Test
    void whatStaysWithinTheRatingPasses() {
        assertEquals(Verdict.PASSED, start("60 A", "0.5 s").verdict());
    }
}
