package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.WorkedCircuits;
import loomwright.worked.Finding;
import loomwright.worked.Typing;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** Which of two devices opens first: by their ratings, by what is published of them, or by one point of each curve. A battery that drives 5 kA, two class T fuses. */
class SelectivityCheckTest {
    private static Part part(String id, PartKind kind, String fedBy, String... typed) {
        return Part.read(id, kind, "", fedBy, "", "", Typing.of(typed)).partOrRefuse();
    }

    private static Part classT(String id, String fedBy, String rating, List<String> sheet) {
        List<String> typed = new ArrayList<>(List.of("device=class-t", "rating=" + rating, "breaking-capacity=20 kA", "rated-voltage=125 V"));
        typed.addAll(sheet);
        return part(id, PartKind.PROTECTION, fedBy, typed.toArray(String[]::new));
    }

    private static Finding finding(String near, List<String> sheetNear, String far, List<String> sheetFar) {
        Circuit circuit = new Circuit("", List.of(
                part("battery", PartKind.SUPPLY, "", "chemistry=lifepo4", "capacity=100 Ah", "battery=short-circuit-current", "short-circuit-current=5 kA"),
                classT("far", "battery", far, sheetFar), part("feed", PartKind.CONDUCTOR, "far", "size=10 mm²", "route-length=1 m"), classT("near", "feed", near, sheetNear),
                part("run", PartKind.CONDUCTOR, "near", "size=10 mm²", "route-length=1 m"),
                part("load", PartKind.LOAD, "run", "load-kind=constant-current", "current=5 A")));
        return Examination.of(circuit).findings(Check.SELECTIVITY).get(0).finding();
    }

    @Test
    void theNearDeviceIsRatedBelowTheFarOne() {
        Finding alike = finding("40 A", List.of(), "40 A", List.of());
        assertEquals(Verdict.CAUTION, alike.verdict());
        assertTrue(alike.words().contains("\u201cnear\u201d, 40\u00a0A, is not rated below Fuse-link or breaker \u201cfar\u201d, 40\u00a0A"), alike.words());
    }

    @Test
    void whereNothingIsPublishedItIsNotKnown() {
        assertEquals(Verdict.NOT_KNOWN, finding("20 A", List.of(), "40 A", List.of()).verdict());
    }

    /** The near one has opened after 10 ms at 200 A and more; the far one holds 6 kA, more than the battery drives, for 20 ms or for 5 ms. */
    @Test
    void onePointOfEachCurveSettlesIt() {
        List<String> near = List.of("opening-current=200 A", "opening-time=0.01 s");
        Finding passed = finding("20 A", near, "40 A", List.of("holding-current=6 kA", "holding-time=0.02 s"));
        assertEquals(Verdict.PASSED, passed.verdict(), passed.words());
        assertEquals(0.01, passed.figure().value(), 1e-9);
        assertEquals(0.02, passed.limit().value(), 1e-9);
        assertEquals(Verdict.CAUTION, finding("20 A", near, "40 A", List.of("holding-current=6 kA", "holding-time=0.005 s")).verdict());
    }

    /** A point of 100 A says nothing of what the far one holds at a short circuit; half a point says nothing at all. */
    @Test
    void aPointThatDoesNotReachSoFarSettlesNothing() {
        List<String> near = List.of("opening-current=200 A", "opening-time=0.01 s");
        assertEquals(Verdict.NOT_KNOWN, finding("20 A", near, "40 A", List.of("holding-current=100 A", "holding-time=0.02 s")).verdict());
        assertEquals(Verdict.NOT_KNOWN, finding("20 A", near, "40 A", List.of("holding-current=6 kA")).verdict());
        assertEquals(Verdict.NOT_KNOWN, finding("20 A", near, "40 A", List.of("holding-time=0.02 s")).verdict());
        assertEquals(Verdict.NOT_KNOWN, finding("20 A", near, "40 A", List.of()).verdict());
        assertEquals(
                Verdict.NOT_KNOWN, finding("20 A", List.of("opening-current=10 kA", "opening-time=0.01 s"), "40 A", List.of("holding-current=6 kA", "holding-time=0.02 s")).verdict());
    }

    @Test
    void theFiguresThatMostChecksWaitForStandFirst() {
        for (Circuit circuit : List.of(WorkedCircuits.trailer(), WorkedCircuits.punt())) {
            List<Integer> waiting = FigureToGet.of(Examination.of(circuit)).stream().map(each -> each.partIds().size()).toList();
            assertTrue(waiting.size() > 2, waiting.toString());
            for (int i = 1; i < waiting.size(); i++) {
                assertTrue(waiting.get(i) <= waiting.get(i - 1), waiting.toString());
            }
        }
    }
}
