package loomwright.circuit.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.check.Examination;
import loomwright.circuit.solve.Situation;
import loomwright.circuit.solve.Solved;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private final Circuit trailer = WorkedCircuits.trailer();

    @Test
    void agreesWithASoundCircuit() {
        Comparison comparison = compared(readings(trailer, "breaker", "outlet-switch", "bench-joints", "outlet-pair"));
        assertEquals(0, comparison.faults().size());
        assertEquals(4, comparison.findings().size());
        for (ReadingFinding finding : comparison.findings()) {
            assertEquals(Verdict.PASSED, finding.finding().verdict(), finding.finding().words());
            assertNull(finding.hidden());
        }
    }

    @Test
    void findsABadJointOnItsStretchAndOnlyThere() {
        // Four joints of 10 mΩ instead of 0.5 mΩ: 38 mΩ too much.
        Circuit bad = CircuitEdits.changed(trailer, "bench-joints", "joint-resistance", "10 mΩ").circuit();
        Comparison comparison = compared(readings(bad, "breaker", "outlet-switch", "bench-joints", "outlet-pair"));
        ReadingFinding joint = find(comparison, "bench-joints");
        assertEquals("outlet-switch", joint.fromPartId());
        // The loads hold their power, so a little more current flows than the comparison takes: it finds up to a tenth too much.
        assertEquals(38, joint.hidden().value(), 4);
        // 17.466² A² × 38 mΩ = 11.6 W
        assertEquals(11.6, joint.heat().value(), 1.3);
        assertTrue(joint.finding().words().contains("extra resistance"), joint.finding().words());
        for (String sound : new String[] {"breaker", "outlet-switch", "outlet-pair"}) {
            assertEquals(Verdict.PASSED, find(comparison, sound).finding().verdict());
        }
    }

    @Test
    void saysThatAReadingTooHighMeansLessCurrent() {
        Map<String, String> readings = readings(trailer, "accessory-outlet");
        readings.put("accessory-outlet", "12.8 V");
        ReadingFinding finding = compared(readings).findings().get(0);
        assertEquals(Verdict.CAUTION, finding.finding().verdict());
        assertTrue(finding.finding().words().contains("less current flows"), finding.finding().words());
    }

    @Test
    void needsTheReadingAtTheBatteryAndVolts() {
        assertEquals(1, compared(Map.of("breaker", "12.7 V")).faults().size());
        Comparison comparison = compared(Map.of("battery", "12.8", "breaker", "3 A", "strip", "much", "fan", "1e9 V"));
        assertEquals(3, comparison.faults().size());
        assertEquals(0, comparison.findings().size());
    }

    /** The sound trailer with these readings. */
    private Comparison compared(Map<String, String> readings) {
        Circuit read = trailer;
        for (Map.Entry<String, String> reading : readings.entrySet()) {
            read = CircuitEdits.read(read, reading.getKey(), reading.getValue()).circuit();
        }
        return Comparison.of(Examination.of(read), Meter.USUAL);
    }

    private static ReadingFinding find(Comparison comparison, String partId) {
        return comparison.findings().stream().filter(finding -> finding.partId().equals(partId)).findFirst().orElseThrow();
    }

    /** What a meter of two decimals would read in a circuit at 12.8 V. */
    private static Map<String, String> readings(Circuit circuit, String... parts) {
        Solved solved = Solved.of(circuit, Situation.heaviest(circuit, 12.8, 0).get(0));
        Map<String, String> readings = new HashMap<>();
        readings.put("battery", "12.8 V");
        for (String part : parts) {
            readings.put(part, String.format(Locale.ROOT, "%.2f V", solved.volts(circuit.node(part))));
        }
        return readings;
    }
}
