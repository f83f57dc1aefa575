package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.worked.Finding;
import loomwright.worked.Typing;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

/** What is said of a day, of what stands by, of the isolating switch and of the device that opens first: each held by hand. A load of held current asks no conductor. */
class DayCheckTest {
    private static Part part(String id, PartKind kind, String fedBy, String... typed) {
        return Part.read(id, kind, "", fedBy, "", "", Typing.of(typed)).partOrRefuse();
    }

    /** Lead-acid, 60 Ah at 12.8 V, half of it to be used; a load of so many amperes for four hours. */
    private static Circuit circuit(String amperes, String standing, String... battery) {
        List<String> typed = new ArrayList<>(List.of("chemistry=lead-acid", "capacity=60 Ah", "battery-voltage=12.8 V"));
        typed.addAll(List.of(battery));
        return new Circuit("", List.of(
                part("battery", PartKind.SUPPLY, "", typed.toArray(String[]::new)), part("fuse", PartKind.PROTECTION, "battery", "device=blade", "rating=10 A"),
                part("load", PartKind.LOAD, "fuse", "load-kind=constant-current", "current=" + amperes, "hours=4 h", "standing-current=" + standing)));
    }

    private static Finding about(Circuit circuit, Check check, String words) {
        return Examination.of(circuit).findings(check).stream().map(CircuitFinding::finding).filter(each -> each.words().contains(words)).findFirst().orElseThrow();
    }

    private static void assertHolds(Verdict verdict, double figure, double limit, Finding finding) {
        assertEquals(verdict, finding.verdict(), finding.words());
        assertEquals(figure, finding.figure().value(), 1e-6);
        assertEquals(limit, finding.limit().value(), 1e-9);
    }

    @Test
    void aDayIsHeldAgainstHalfOfLeadAcid() {
        assertHolds(Verdict.CAUTION, 32, 30, about(circuit("8 A", "0 A"), Check.DAY, "What a day takes of"));
        assertHolds(Verdict.PASSED, 28, 30, about(circuit("7 A", "0 A"), Check.DAY, "What a day takes of"));
    }

    /** 2 A for four hours: 8 Ah a day, 30 ÷ 8 = 3.75 days. */
    @Test
    void itLastsTheDaysThatAreWantedOrTwo() {
        assertHolds(Verdict.PASSED, 3.75, 3, about(circuit("2 A", "0 A", "days-wanted=3 d"), Check.DAY, "lasts with nothing charging it"));
        Finding four = about(circuit("2 A", "0 A", "days-wanted=4 d"), Check.DAY, "lasts with nothing charging it");
        assertHolds(Verdict.CAUTION, 3.75, 4, four);
        assertTrue(four.words().contains("the days without sun that you want"), four.words());
        Finding open = about(circuit("2 A", "0 A"), Check.DAY, "lasts with nothing charging it");
        assertEquals(Verdict.NOT_KNOWN, open.verdict(), "two days are nobody's wish, so they pass nothing");
        assertEquals("days-wanted", open.missing().key());
        assertHolds(Verdict.CAUTION, 1.875, 2, about(circuit("4 A", "0 A"), Check.DAY, "two days without sun"));
    }

    /** 8 Ah · 12.8 V = 102.4 Wh; 60 W · 3 h · 70 % = 126 Wh, 40 W give 84 Wh. */
    @Test
    void whatItTakesIsHeldAgainstWhatChargesIt() {
        Finding little = about(circuit("2 A", "0 A", "panel-power=40 W", "peak-sun-hours=3 h"), Check.DAY, "what charges the battery in a day");
        assertHolds(Verdict.CAUTION, 102.4, 84, little);
        assertNotEquals(Verdict.CAUTION, about(circuit("2 A", "0 A", "panel-power=60 W", "peak-sun-hours=3 h"), Check.DAY, "charges the battery in a day").verdict());
        assertTrue(Examination.of(circuit("2 A", "0 A")).findings(Check.DAY).stream().noneMatch(each -> each.finding().words().contains("charges the battery")));
    }

    /** 0.1 A · 24 h = 2.4 Ah: 30 ÷ 2.4 = 12.5 days; of 0.2 A 6.25, less than a week. */
    @Test
    void whatStandsByAloneLastsAWeek() {
        assertHolds(Verdict.PASSED, 12.5, 7, about(circuit("2 A", "0.1 A"), Check.STANDING_DRAW, "2.4\u00a0Ah a day"));
        assertHolds(Verdict.CAUTION, 6.25, 7, about(circuit("2 A", "0.2 A"), Check.STANDING_DRAW, "4.8\u00a0Ah a day"));
        assertEquals(List.of(), Examination.of(circuit("2 A", "0 A")).findings(Check.STANDING_DRAW));
    }

    /** Two loads behind one fuse without a switch are one finding; a breaker parts them by hand, as an isolating switch does. */
    @Test
    void everyLoadIsPartedByHand() {
        Finding one = about(circuit("2 A", "0 A"), Check.ISOLATOR, "from it by hand");
        assertEquals(Verdict.CAUTION, one.verdict());
        assertEquals(1, one.figure().value(), 1e-9);
        List<Part> parts = new ArrayList<>(circuit("2 A", "0 A").parts());
        parts.add(part("other", PartKind.LOAD, "fuse", "load-kind=constant-current", "current=1 A"));
        parts.add(part("third", PartKind.LOAD, "fuse", "load-kind=constant-current", "current=1 A"));
        Circuit three = new Circuit("", parts);
        assertEquals(3, Examination.of(three).findings(Check.ISOLATOR).stream().mapToDouble(each -> each.finding().figure().value()).sum(), 1e-9);
        Circuit parted = new Circuit("", List.of(
                part("battery", PartKind.SUPPLY, "", "capacity=60 Ah"), part("breaker", PartKind.PROTECTION, "battery", "device=marine-breaker", "rating=10 A"),
                part("load", PartKind.LOAD, "breaker", "load-kind=constant-current", "current=1 A")));
        Finding passed = about(parted, Check.ISOLATOR, "Every load can be parted from");
        assertEquals(Verdict.PASSED, passed.verdict());
    }
}
