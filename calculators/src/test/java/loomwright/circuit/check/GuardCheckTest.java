package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.worked.Typing;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A device lets pass its rating for as long as it likes, so whatever stands behind it has to carry that: rating held against rating. */
class GuardCheckTest {
    /** A device of 20 A, 1 m of 16 mm², and behind it what is asked for, with a load of 5 A if it feeds one. */
    private static Circuit behind20Amperes(PartKind kind, String... typed) {
        List<Part> parts = new ArrayList<>(List.of(
                part("battery", PartKind.SUPPLY, "", "capacity=100 Ah"), device("main", "battery", "20 A"), run("run", "main"),
                part("thing", kind, "run", typed)));
        if (kind.feeds()) {
            parts.add(load("thing"));
        }
        return new Circuit("", parts);
    }

    private static Part part(String id, PartKind kind, String fedBy, String... typed) {
        Map<String, String> texts = Typing.of(typed);
        if (kind == PartKind.LOAD) {
            texts.put("load-kind", "constant-current");
            texts.put("current", "5 A");
        }
        return Part.read(id, kind, "", fedBy, "", "", texts).partOrRefuse();
    }

    private static Part device(String id, String fedBy, String rating) {
        return part(id, PartKind.PROTECTION, fedBy, "device=class-t", "rating=" + rating, "breaking-capacity=20 kA", "rated-voltage=125 V", "holder-rating=200 A");
    }

    private static Part run(String id, String fedBy) {
        return part(id, PartKind.CONDUCTOR, fedBy, "size=16 mm²", "route-length=1 m");
    }

    private static Part load(String fedBy) {
        return part("load", PartKind.LOAD, fedBy, "outlet-rating=200 A");
    }

    /** The findings of that check on a part, each as verdict, figure and limit. */
    private static List<String> found(Circuit circuit, String id) {
        return Examination.of(circuit).findingsOn(id).stream().filter(each -> each.check() == Check.GUARDED && each.partId().equals(id)).map(CircuitFinding::finding)
                .map(each -> each.verdict() + " " + each.figure().text().replace('\u00a0', ' ') + " of " + (each.limit() == null ? "?" : each.limit().text().replace('\u00a0', ' ')))
                .toList();
    }

    private static String words(Circuit circuit, String id) {
        return Examination.of(circuit).findingsOn(id).stream().filter(each -> each.check() == Check.GUARDED).findFirst().orElseThrow().finding().words().replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @CsvSource({
        "PANEL, panel-limit", "ISOLATOR, continuous-current", "SWITCH, continuous-current", "JOINT, terminal-rating", "LOAD, outlet-rating"
    })
    void whateverStandsBehindADeviceCarriesItsRating(PartKind kind, String field) {
        assertEquals(List.of("PASSED 20 A of 20 A"), found(behind20Amperes(kind, field + "=20 A"), "thing"));
        Circuit weak = behind20Amperes(kind, field + "=19.9 A");
        assertEquals(List.of(), found(weak, "thing"), "it carries its load, so the device is out of line");
        assertEquals(List.of("STOP 20 A of 19.9 A"), found(weak, "main").stream().filter(each -> !each.contains("200")).toList());
    }

    @ParameterizedTest
    @CsvSource({"JOINT", "LOAD"})
    void whatNobodySaidIsNotKnown(PartKind kind) {
        assertEquals(List.of("NOT_KNOWN 20 A of ?"), found(behind20Amperes(kind), "thing"));
    }

    @Test
    void aHolderCarriesTheRatingOfWhatItHolds() {
        assertEquals(List.of("PASSED 30 A of 30 A"), found(behind20Amperes(PartKind.PROTECTION, "device=blade", "rating=30 A", "holder-rating=30 A"), "thing"));
        assertEquals(List.of("STOP 30 A of 29 A"), found(behind20Amperes(PartKind.PROTECTION, "device=blade", "rating=30 A", "holder-rating=29 A"), "thing"));
        assertEquals(List.of("NOT_KNOWN 30 A of ?"), found(behind20Amperes(PartKind.PROTECTION, "device=blade", "rating=30 A"), "thing"));
    }

    /** 100 A of an isolating switch stands in its form; nobody has read it from the switch. */
    @Test
    void whatNobodyChangedInAFormOpensTheSentence() {
        assertTrue(words(behind20Amperes(PartKind.ISOLATOR), "thing").startsWith("Assuming the usual 100 A: "));
        assertFalse(words(behind20Amperes(PartKind.ISOLATOR, "continuous-current=90 A"), "thing").contains("Assuming"));
        assertFalse(words(behind20Amperes(PartKind.JOINT, "terminal-rating=90 A"), "thing").contains("Assuming"));
    }

    @Test
    void beforeTheFirstDeviceNothingGuards() {
        Circuit bare = new Circuit("", List.of(
                part("battery", PartKind.SUPPLY, "", "capacity=100 Ah"), part("thing", PartKind.ISOLATOR, "battery", "continuous-current=1 A")));
        assertEquals(List.of(), found(bare, "thing"));
    }

    /** Main device, a second one behind it, and a joint of 30 A behind both, with 5 A flowing. */
    private static Circuit behindTwo(String main, String second) {
        return new Circuit("", List.of(
                part("battery", PartKind.SUPPLY, "", "capacity=100 Ah"), device("main", "battery", main), run("run", "main"),
                device("second", "run", second), part("joint", PartKind.JOINT, "second", "terminal-rating=30 A"), load("joint")));
    }

    @Test
    void ofSeveralDevicesTheSmallestGuardsAndOfTwoAlikeTheNearest() {
        assertEquals(List.of("PASSED 20 A of 30 A"), found(behindTwo("60 A", "20 A"), "joint"));
        assertTrue(words(behindTwo("20 A", "20 A"), "joint").contains("second"), words(behindTwo("20 A", "20 A"), "joint"));
        assertEquals(List.of("PASSED 25 A of 30 A"), found(behindTwo("25 A", "30 A"), "joint"));
    }

    @Test
    void aNearDeviceThatOnlyAFartherOneMakesUpForIsCautionedAgainst() {
        assertEquals(List.of("PASSED 60 A of 200 A", "CAUTION 60 A of 30 A"), sorted(found(behindTwo("25 A", "60 A"), "second")));
        assertEquals(List.of("PASSED 30 A of 200 A"), found(behindTwo("25 A", "30 A"), "second"), "30 A guard a joint of 30 A");
        assertEquals(List.of("PASSED 60 A of 200 A", "STOP 60 A of 30 A"), sorted(found(behindTwo("60 A", "60 A"), "second")), "neither does");
    }

    private static List<String> sorted(List<String> found) {
        return found.stream().sorted((one, other) -> Boolean.compare(one.endsWith(" 30 A"), other.endsWith(" 30 A"))).toList();
    }
}
