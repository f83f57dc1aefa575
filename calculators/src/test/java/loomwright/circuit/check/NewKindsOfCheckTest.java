package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.worked.Finding;
import loomwright.worked.Typing;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks of what charges, guards, warms and parts a circuit, each worked by hand. */
class NewKindsOfCheckTest {
    private final Circuit circuit = new Circuit("", List.of(
            part("battery", PartKind.SUPPLY, "", "chemistry=lifepo4", "capacity=100 Ah", "battery=short-circuit-current", "short-circuit-current=5 kA",
                    "battery-voltage=12.8 V", "highest-voltage=14.6 V"),
            part("main", PartKind.PROTECTION, "battery", "device=class-t", "rating=40 A", "breaking-capacity=20 kA", "rated-voltage=125 V"),
            part("isolator", PartKind.ISOLATOR, "main", "continuous-current=100 A"),
            part("run", PartKind.CONDUCTOR, "isolator", "size=10 mm²", "route-length=1 m", "insulation-temperature=t60"),
            part("joints", PartKind.JOINT, "run", "joint-resistance=0.5 mΩ", "joints=4"),
            part("load", PartKind.LOAD, "joints", "load-kind=constant-current", "current=10 A"),
            part("solar-fuse", PartKind.PROTECTION, "battery", "device=class-t", "rating=20 A", "breaking-capacity=20 kA", "rated-voltage=125 V"),
            part("solar-run", PartKind.CONDUCTOR, "solar-fuse", "size=4 mm²", "route-length=1 m", "insulation-temperature=t60"),
            part("solar", PartKind.SOURCE, "solar-run", "charge-current=10 A", "charge-voltage=14.4 V", "panel-power=120 W")));

    private static Part part(String id, PartKind kind, String fedBy, String... typed) {
        return Part.read(id, kind, "", fedBy, "", "", Typing.of(typed)).part();
    }

    @Test
    void theCircuitItselfIsRight() {
        Examination examination = Examination.of(circuit);
        assertEquals(List.of(), examination.faults());
        assertEquals(0, examination.count(Verdict.STOP), examination.findings().toString());
    }

    /** LiFePO4: four cells of 3.65 V are 14.6 V (handling guideline). */
    @ParameterizedTest
    @CsvSource({"14.6 V, PASSED", "14.7 V, STOP"})
    void aChargerKeepsToTheHighestVoltageOfTheBattery(String volts, Verdict verdict) {
        Finding finding = one(changed("solar", "charge-voltage", volts), Check.CHARGING, "solar");
        assertEquals(verdict, finding.verdict());
        assertEquals(14.6, finding.limit().value(), 1e-9);
    }

    /** 10 A × 1.25 = 12.5 A: a fuse-link of 12.5 A just holds, one of 12 A does not. */
    @ParameterizedTest
    @CsvSource({"12.5 A, PASSED", "12 A, STOP", "1 A, STOP"})
    void theDeviceOfAControllerHoldsItsCurrent(String rating, Verdict verdict) {
        Finding finding = worst(changed("solar-fuse", "rating", rating), Check.CHARGING, "solar-fuse");
        assertEquals(verdict, finding.verdict());
        assertEquals(12.5, finding.limit().value(), 1e-9);
    }

    @Test
    void whatABatteryTakesIsHeldAgainstAllSources() {
        assertEquals(Verdict.NOT_KNOWN, one(circuit, Check.CHARGING, "battery", 10).verdict());
        assertEquals(Verdict.STOP, one(changed("battery", "charge-current-most", "8 A"), Check.CHARGING, "battery", 10).verdict());
        assertEquals(Verdict.PASSED, one(changed("battery", "charge-current-most", "50 A"), Check.CHARGING, "battery", 10).verdict());
    }

    @Test
    void aSecondBatteryNeedsADeviceAtItsOwnEnd() {
        Circuit linked = changed("solar", "source-kind", "second-battery");
        assertEquals(Verdict.STOP, worst(linked, Check.CHARGING, "solar").verdict());
        Circuit both = CircuitEdits.changed(linked, "solar", "device-at-source", "20 A").circuit();
        assertEquals(Verdict.PASSED, worst(both, Check.CHARGING, "solar").verdict());
        // 4 mm² has less copper than 12 AWG (3.31 mm² stands in): 25 A with 60 °C insulation
        Circuit large = CircuitEdits.changed(linked, "solar", "device-at-source", "30 A").circuit();
        assertEquals(Verdict.STOP, worst(large, Check.CONDUCTOR_PROTECTED, "solar").verdict());
    }

    /** 10 A: 0.5 mΩ make 0.05 W; 30 mΩ make 3 W, above the 0.7 W of a plastic holder. */
    @Test
    void aBadJointBurns() {
        assertEquals(Verdict.PASSED, one(circuit, Check.JOINT_HEAT, "joints").verdict());
        Finding bad = one(changed("joints", "joint-resistance", "30 mΩ"), Check.JOINT_HEAT, "joints");
        assertEquals(Verdict.STOP, bad.verdict());
        assertEquals(3, bad.figure().value(), 1e-6);
    }

    /** What a 12 V load may meet: 10.5 V to 14.6 V (common practice). */
    @Test
    void aLoadOfAnotherVoltageSystemIsNamed() {
        Circuit high = CircuitEdits.changed(CircuitEdits.changed(circuit, "battery", "battery-voltage", "25.6 V").circuit(), "battery", "highest-voltage", "29.2 V").circuit();
        Finding finding = one(high, Check.SYSTEM_VOLTAGE, "load");
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(14.6, finding.limit().value(), 1e-9);
        Finding little = one(changed("battery", "highest-voltage", "14.8 V"), Check.SYSTEM_VOLTAGE, "load");
        assertEquals(Verdict.CAUTION, little.verdict());
        Circuit stands = CircuitEdits.changed(high, "load", "highest-working-voltage", "32 V").circuit();
        assertEquals(Verdict.PASSED, one(stands, Check.SYSTEM_VOLTAGE, "load").verdict());
    }

    @Test
    void whatOneDataSheetSaysServesAllOfItsKindAndRating() {
        Circuit alike = CircuitEdits.changed(circuit, "solar-fuse", "rating", "40 A").circuit();
        assertTrue(FigureToGet.of(Examination.of(alike)).stream().anyMatch(figure -> figure.fieldKey().equals("clearing-i2t")));
        // k 100: (100 × 4 mm²)² = 160 000 A²s is what the thinner conductor stands
        Circuit typed = CircuitEdits.changed(alike, "main", "clearing-i2t", "4000 A²s").circuit();
        assertTrue(FigureToGet.of(Examination.of(typed)).stream().noneMatch(figure -> figure.fieldKey().equals("clearing-i2t")));
        assertEquals(Verdict.PASSED, one(typed, Check.SHORT_CIRCUIT_HEAT, "solar-run").verdict());
        Circuit much = CircuitEdits.changed(alike, "main", "clearing-i2t", "400000 A²s").circuit();
        assertEquals(Verdict.STOP, one(much, Check.SHORT_CIRCUIT_HEAT, "solar-run").verdict());
    }

    @Test
    void aPointOfTheCurveSettlesTheHeatOfAShortCircuit() {
        Circuit point = CircuitEdits.changed(changed("main", "opening-current", "200 A"), "main", "opening-time", "0.01 s").circuit();
        assertEquals(Verdict.PASSED, one(point, Check.SHORT_CIRCUIT_HEAT, "run").verdict());
        // it opens sooner at more current, but nobody says by how much
        Circuit slow = CircuitEdits.changed(point, "main", "opening-time", "0.1 s").circuit();
        assertEquals(Verdict.NOT_KNOWN, one(slow, Check.SHORT_CIRCUIT_HEAT, "run").verdict());
    }

    @Test
    void withoutAnIsolatorOneFindingNamesTheBranch() {
        Circuit none = CircuitEdits.without(circuit, "isolator");
        List<CircuitFinding> found = Examination.of(none).findings(Check.ISOLATOR);
        assertEquals(1, found.size());
        assertEquals(Verdict.CAUTION, found.get(0).finding().verdict());
        assertEquals("main", found.get(0).partId());
    }

    @Test
    void theNearestDeviceIsNamedAndNotTheMainOne() {
        // 60 A behind 40 A, before 10 mm² of 55 A: the main device guards it, and the one put there does not
        Circuit inserted = CircuitEdits.insertedBefore(circuit, PartKind.PROTECTION, "joints");
        Circuit large = CircuitEdits.changed(inserted, "protection-1", "rating", "60 A").circuit();
        Circuit thin = CircuitEdits.changed(large, "joints", "terminal-rating", "30 A").circuit();
        Finding finding = one(thin, Check.GUARDED, "protection-1", 60);
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.words().contains("protection-1"), finding.words());
    }

    private Circuit changed(String id, String field, String text) {
        return CircuitEdits.changed(circuit, id, field, text).circuit();
    }

    private static Finding one(Circuit circuit, Check check, String id) {
        return Examination.of(circuit).findingsOn(id).stream().filter(each -> each.check() == check).findFirst().orElseThrow().finding();
    }

    private static Finding worst(Circuit circuit, Check check, String id) {
        return one(circuit, check, id);
    }

    /** The finding about a figure. */
    private static Finding one(Circuit circuit, Check check, String id, double figure) {
        return Examination.of(circuit).findingsOn(id).stream()
                .filter(each -> each.check() == check && Math.abs(each.finding().figure().value() - figure) < 1e-9)
                .findFirst().orElseThrow().finding();
    }
}
