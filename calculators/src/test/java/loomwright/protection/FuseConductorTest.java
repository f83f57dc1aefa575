package loomwright.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Conductor;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.worked.Finding;
import loomwright.worked.Trial;
import loomwright.worked.Verdict;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A fuse-link is chosen for the conductor as it lies: as warm, as bundled and as insulated as the ampacity and the circuit take it. */
class FuseConductorTest {
    private static final List<String> SIZES = List.of("0.35 mm2", "0.75 mm2", "1.5 mm2", "2.5 mm2", "6 mm2", "14 AWG", "8 AWG", "50 mm2");
    private static final List<String> INSULATIONS = List.of("t60", "t75", "t90", "t105", "t125", "t200");
    private static final List<String> RULES = List.of("33-cfr-183", "faa-11-9", "nec-free-air", "bs-7671-cord", "towing-cable");

    @ParameterizedTest(name = "{0}: {1} A")
    @CsvSource({
        // 12 AWG, 60 °C: 25 A; NEC at 40 °C × 0.82; four together × 0.60; 50 °C × 0.58; a factor of one's own 0.8
        "ambient=40 °C, 20.5", "conductors-together=4, 12.3", "ambient=50 °C, 14.5", "own-factor=0.8, 16.4", "sheet-ampacity=33 A, 33",
        "engine-space=yes, 14.5", "insulation-temperature=t105, 40.95"
    })
    void knowsThePlaceOfTheConductor(String entry, double amperes) {
        assertEquals(amperes, Trial.of("fuse-choice", "design-current=1 A", "size=12 AWG", entry).value("highest-rating"), 1e-9);
    }

    /** 25 A × 0.82 = 20.5 A: what the bare table would let through is a stop. */
    @Test
    void whoSaysNothingOfThePlaceGetsTheWarmOne() {
        Trial trial = Trial.of("fuse-choice", "design-current=19 A", "size=12 AWG");
        assertFalse(trial.answers("chosen-rating"));
        assertEquals(Verdict.STOP, trial.finding("The least rating that the load asks for").verdict());
        assertEquals(20, Trial.of("fuse-choice", "design-current=16 A", "size=12 AWG").value("chosen-rating"), 1e-12);
    }

    @Property(tries = 1500)
    void ampacityFuseLinkAndCircuitComeToTheSame(
            @ForAll @IntRange(min = 0, max = 7) int size, @ForAll @IntRange(min = 0, max = 5) int insulation, @ForAll @IntRange(min = 0, max = 4) int rule,
            @ForAll @IntRange(min = 20, max = 59) int ambient, @ForAll @IntRange(min = 2, max = 30) int together, @ForAll boolean engine) {
        Map<String, String> laid = Map.of(
                "size", SIZES.get(size), "insulation-temperature", INSULATIONS.get(insulation), "rule-set", RULES.get(rule), "ambient", ambient + " °C",
                "conductors-together", Integer.toString(together), "engine-space", engine ? "yes" : "no");
        Trial ampacity = Trial.of("ampacity", laid);
        Map<String, String> withLoad = new HashMap<>(laid);
        withLoad.put("design-current", "0.5 A");
        Trial fuse = Trial.of("fuse-choice", withLoad);
        String answer = ampacity.answers("ampacity") ? "ampacity" : "at-most";
        assertEquals(ampacity.value(answer), fuse.value(answer), 0);
        Conductor run = Conductor.of(Part.read("run", PartKind.CONDUCTOR, "Run", "battery", "", "", byArea(laid)).partOrRefuse());
        assertEquals(ampacity.value(answer), run.capacity().value().value(), 1e-9);
        assertEquals(answer.equals("ampacity"), run.capacity().isRated());
        if (answer.equals("at-most")) {
            assertFalse(fuse.answers("chosen-rating"));
            assertFalse(fuse.answers("highest-rating"));
            assertTrue(fuse.working().findings().stream().map(Finding::verdict).anyMatch(v -> v == Verdict.NOT_KNOWN || v == Verdict.STOP));
        } else if (fuse.answers("chosen-rating")) {
            assertTrue(fuse.value("chosen-rating") <= run.capacity().value().value() * (1 + 1e-9));
        }
    }

    /** A kind that has a row for every size, gauge or not. */
    private static Map<String, String> byArea(Map<String, String> laid) {
        Map<String, String> texts = new HashMap<>(laid);
        texts.put("conductor", "copper-by-area");
        texts.put("route-length", "1 m");
        return texts;
    }

    /** A wire thinner than Table 5 is rated by the table of cords, and 150 % belongs to Table 5 alone. */
    @Test
    void theRuleThatAllowsMoreAllowsItOfTableFiveOnly() {
        String rule = "fuse-rule=33-cfr-183";
        assertEquals(30.75, Trial.of("fuse-choice", "design-current=1 A", "size=12 AWG", rule).value("highest-rating"), 1e-9);
        Trial cord = Trial.of("fuse-choice", "design-current=1 A", "size=0.75 mm2", rule);
        assertEquals(cord.value("ampacity"), cord.value("highest-rating"), 1e-9);
        Trial sheet = Trial.of("fuse-choice", "design-current=1 A", "size=12 AWG", "sheet-ampacity=20 A", rule);
        assertEquals(20, sheet.value("highest-rating"), 1e-9);
    }
}
