package loomwright.circuit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;
import loomwright.circuit.WorkedCircuits;
import loomwright.circuit.file.StartingCircuits;
import loomwright.worked.Verdict;
import org.junit.jupiter.api.Test;

class ExaminationTest {
    private final Circuit trailer = WorkedCircuits.trailer();
    private final Circuit punt = WorkedCircuits.punt();

    @Test
    void stopsNowhereInAStartingCircuit() {
        List<Circuit> starting = List.of(StartingCircuits.reedmereTrailer(), StartingCircuits.punt(), StartingCircuits.empty());
        for (Circuit circuit : starting) {
            assertEquals(0, Examination.of(circuit).count(Verdict.STOP));
        }
    }

    @Test
    void putsTheWorstFirst() {
        Examination bad = Examination.of(changed(trailer, "bench-run", "size", "0.75 mm²"));
        int before = -1;
        for (CircuitFinding finding : bad.findings()) {
            int rank = List.of(Verdict.STOP, Verdict.CAUTION, Verdict.NOT_KNOWN, Verdict.PASSED).indexOf(finding.finding().verdict());
            assertTrue(rank >= before);
            before = rank;
        }
        assertEquals(Verdict.STOP, bad.worst());
    }

    @Test
    void neverSaysSafeAndNeverPassesFromMemory() {
        for (CircuitFinding finding : Examination.of(trailer).findings()) {
            assertFalse(finding.finding().words().contains("safe"));
            assertTrue(finding.finding().source().standing().mayPass() || finding.finding().verdict() != Verdict.PASSED);
            assertTrue(finding.finding().verdict() == Verdict.PASSED || !finding.finding().remedy().isEmpty(), finding.toString());
        }
    }

    @Test
    void givesPartAndFieldOfWhatItCannotUnderstand() {
        Examination examination = Examination.of(changed(trailer, "bench-run", "conductor", "nec-stranded"));
        assertEquals("bench-run size", examination.faults().get(0).partId() + " " + examination.faults().get(0).fieldKey());
        assertNull(examination.solution());
    }

    @Test
    void stopsWhereTheDeviceIsAboveTheAmpacity() {
        // Table 5: 16 AWG with 105 °C insulation carries 25 A and stands in for 1.5 mm²; at 40 °C × 0.91 (1.31 ≤ 0.95 × 1.5 = 1.425 mm²)
        CircuitFinding finding = one(changed(punt, "lamp-fuse", "rating", "30 A"), Check.CONDUCTOR_PROTECTED, "lamp-fuse");
        assertEquals(Verdict.STOP, finding.finding().verdict());
        assertEquals(22.75, finding.finding().limit().value(), 1e-9);
        // 33 CFR 183.455(c)(1): 150 % of 22.75 A is 34.125 A
        Circuit more = changed(changed(punt, "lamp-fuse", "rating", "30 A"), "battery", "fuse-rule", "33-cfr-183");
        finding = one(more, Check.CONDUCTOR_PROTECTED, "lamp-run");
        assertEquals(Verdict.PASSED, finding.finding().verdict());
        assertEquals(34.125, finding.finding().limit().value(), 1e-9);
    }

    @Test
    void stopsWhereNothingProtectsAConductor() {
        CircuitFinding finding = one(CircuitEdits.without(punt, "main-fuse"), Check.UNPROTECTED_LENGTH, "lead");
        assertEquals(Verdict.STOP, finding.finding().verdict());
        // 1.2 m against the 7 in of 33 CFR 183.455(b), 0.1778 m, in the table 0.178 m: nobody said that it lies in a sheath
        assertEquals(1.2, finding.finding().figure().value(), 1e-9);
        assertEquals(0.1778, finding.finding().limit().base(), 0.0005);
        Circuit near = changed(CircuitEdits.without(punt, "main-fuse"), "lead", "route-length", "7 in");
        assertEquals(Verdict.PASSED, one(near, Check.UNPROTECTED_LENGTH, "lead").finding().verdict());
    }

    /** Without its main fuse the punt has its lead and what hangs on it bare: a run by its length, each device and load behind it by what guards it. */
    @Test
    void onlyRunsSwitchesAndJointsMayStandBeforeTheFirstDevice() {
        Circuit bare = CircuitEdits.without(punt, "main-fuse");
        for (PartKind kind : PartKind.values()) {
            if (kind == PartKind.SUPPLY || kind == PartKind.PROTECTION || kind == PartKind.CONDUCTOR) {
                continue;
            }
            Circuit with = CircuitEdits.added(bare, kind, "battery");
            String id = with.nodes().stream().filter(node -> node.kind() == kind && bare.node(node.id()) == null).findFirst().orElseThrow().id();
            boolean stops = Examination.of(with).findingsOn(id).stream()
                    .anyMatch(each -> each.check() == Check.UNPROTECTED_LENGTH && each.partId().equals(id) && each.finding().verdict() == Verdict.STOP);
            assertEquals(kind != PartKind.ISOLATOR && kind != PartKind.JOINT, stops, kind.label());
        }
        assertTrue(Examination.of(punt).findings(Check.UNPROTECTED_LENGTH).stream().noneMatch(each -> each.partId().endsWith("fuse") || each.partId().equals("battery")));
    }

    /** Two pieces of 4 in, one after the other, are 8 in from the battery: more than 7 in. One in a sheath does not cover the other. */
    @Test
    void theDistanceOfTheFirstDeviceIsThatOfAllRunsBeforeIt() {
        Circuit bare = changed(CircuitEdits.without(punt, "main-fuse"), "lead", "route-length", "4 in");
        assertEquals(Verdict.PASSED, one(bare, Check.UNPROTECTED_LENGTH, "lead").finding().verdict());
        Circuit two = CircuitEdits.insertedBefore(bare, PartKind.CONDUCTOR, "lead");
        String first = two.node("lead").parent().id();
        two = changed(two, first, "route-length", "4 in");
        CircuitFinding finding = one(two, Check.UNPROTECTED_LENGTH, "lead");
        assertEquals(Verdict.STOP, finding.finding().verdict());
        assertEquals(8 * 0.0254, finding.finding().figure().base(), 1e-9);
        assertEquals(Verdict.STOP, one(changed(two, "lead", "sheath", "yes"), Check.UNPROTECTED_LENGTH, "lead").finding().verdict());
        assertEquals(Verdict.PASSED, one(changed(changed(two, "lead", "sheath", "yes"), first, "sheath", "yes"), Check.UNPROTECTED_LENGTH, "lead").finding().verdict());
        assertTrue(one(changed(bare, "lead", "route-length", "2 m"), Check.UNPROTECTED_LENGTH, "lead").finding().remedy().startsWith("Put a device"), "no sheath helps 2 m");
    }

    /** 33 CFR 183.455(b): 40 in, 1.016 m, in a sheath or enclosure all the way. */
    @Test
    void aSheathAllTheWayLetsTheFirstDeviceStandFurtherOff() {
        Circuit bare = changed(CircuitEdits.without(punt, "main-fuse"), "lead", "route-length", "1 m");
        CircuitFinding finding = one(bare, Check.UNPROTECTED_LENGTH, "lead");
        assertEquals(Verdict.STOP, finding.finding().verdict());
        assertTrue(finding.finding().remedy().contains("sheath"), finding.finding().remedy());
        Circuit sheathed = changed(bare, "lead", "sheath", "yes");
        assertEquals(Verdict.PASSED, one(sheathed, Check.UNPROTECTED_LENGTH, "lead").finding().verdict());
        assertTrue(finding.finding().words().contains("what 33 CFR allows outside a sheath"), finding.finding().words());
        finding = one(changed(sheathed, "lead", "route-length", "1.1 m"), Check.UNPROTECTED_LENGTH, "lead");
        assertTrue(finding.finding().words().contains("what 33 CFR allows in a sheath"), finding.finding().words());
        assertEquals(Verdict.STOP, finding.finding().verdict());
        assertEquals(1.016, finding.finding().limit().base(), 1e-9);
    }

    @Test
    void holdsBreakingCapacityAgainstTheHighestCurrentAtItsPlace() {
        // 14.6 V ÷ 8 mΩ = 1825 A at the battery, within 2000 A; behind 2 × 1.2 m of 4 mm², 1/(58 × 4) Ω/m: 8 + 10.345 mΩ: 795.9 A
        assertEquals(1825, one(punt, Check.BREAKING_CAPACITY, "main-fuse").finding().figure().value(), 1e-6);
        assertEquals(795.9, one(punt, Check.BREAKING_CAPACITY, "pump-fuse").finding().figure().value(), 0.1);
        Circuit strong = changed(punt, "battery", "battery-resistance-low", "2 mΩ");
        assertEquals(Verdict.STOP, one(strong, Check.BREAKING_CAPACITY, "main-fuse").finding().verdict());
    }

    @Test
    void holdsTheLatestOpeningAgainstWhatTheConductorStands() {
        // Large blade of 40 A, gate at 600 %: opened by 1 s. 10 mm², k 100: t = (100 × 10/I)². Lowest current behind 3 m: battery 25 mΩ,
        // 10 mm² warm 1.82 × 1.078585 × 6 m = 11.778 mΩ: 10.5/0.036778 = 285.5 A, t = 12.3 s > 5 s; highest 1825 A, t = 0.300 s.
        Circuit circuit = changed(changed(punt, "main-fuse", "device", "large-blade"), "main-fuse", "rating", "40 A");
        circuit = changed(changed(circuit, "lead", "size", "10 mm²"), "lead", "route-length", "3 m");
        CircuitFinding finding = one(circuit, Check.SHORT_CIRCUIT_HEAT, "lead");
        assertEquals(Verdict.NOT_KNOWN, finding.finding().verdict());
        assertTrue(finding.finding().words().contains("stands it for 0.3\u00a0s"), finding.finding().words());
        // With 25 mm² it stands 1825 A for (100 × 25/1825)² = 1.88 s: longer than the 1 s.
        finding = one(changed(circuit, "lead", "size", "25 mm²"), Check.SHORT_CIRCUIT_HEAT, "lead");
        assertEquals(Verdict.PASSED, finding.finding().verdict());
    }

    @Test
    void stopsWhereAShortCircuitMayNotOpenTheDevice() {
        Circuit thin = changed(changed(punt, "lamp-run", "size", "0.5 mm²"), "lamp-run", "route-length", "100 m");
        // 37.1 mΩ/m × 1.078585 × 200 m = 8.003 Ω: 10.5 V drive no more than 1.31 A, below the 3 A of the fuse-link
        CircuitFinding finding = one(thin, Check.SHORT_CIRCUIT_HEAT, "lamp-run");
        assertEquals(Verdict.STOP, finding.finding().verdict());
        assertEquals(1.31, finding.finding().figure().value(), 0.01);
    }

    @Test
    void showsSelectivityWhereTheGatesDo() {
        // 200 A: miniature blade 2 A beyond 200 %, opened by 5 s; nothing shown against a large blade of 40 A at 500 %.
        Circuit circuit = changed(changed(punt, "main-fuse", "device", "large-blade"), "main-fuse", "rating", "80 A");
        circuit = changed(circuit, "lamp-fuse", "device", "miniature-blade");
        assertTrue(one(circuit, Check.SELECTIVITY, "lamp-fuse").finding().words().contains("Not shown"));
    }

    @Test
    void findsALoadThatLosesTooMuch() {
        // Stern lamp, 10 W at 12 V: 14.4 Ω; at 14.6 V through 12.7 × 1.078585 × 20 m = 273.96 mΩ alone 1 A × 0.274 V, above 0.36 V only when longer
        Circuit far = changed(punt, "lamp-run", "route-length", "20 m");
        CircuitFinding finding = one(far, Check.VOLTAGE_DROP, "stern-lamp");
        assertEquals(Verdict.CAUTION, finding.finding().verdict());
        assertEquals(0.36, finding.finding().limit().value(), 1e-12);
        Circuit lighting = changed(far, "stern-lamp", "allowance", "abyc-other");
        assertEquals(Verdict.PASSED, one(lighting, Check.VOLTAGE_DROP, "stern-lamp").finding().verdict());
    }

    @Test
    void findsATriggerThatIsMissingOrTakenBehindItself() {
        Circuit none = CircuitEdits.triggered(trailer, "outlet-switch", "");
        assertTrue(one(none, Check.TRIGGER, "outlet-switch").finding().words().contains("has no trigger"));
        Circuit circle = CircuitEdits.triggered(trailer, "outlet-switch", "bench-joints");
        CircuitFinding finding = one(circle, Check.TRIGGER, "outlet-switch");
        assertEquals(Verdict.STOP, finding.finding().verdict());
        assertTrue(finding.finding().words().contains("behind itself"), finding.finding().words());
    }

    @Test
    void findsASwitchThatGetsTooWarm() {
        // 27 mΩ more leave 0.5 V less, so the outlets draw about 18.5 A: 342 A² × 30 mΩ = 10.3 W; 40 °C + 10.3 W × 12 K/W = 163 °C
        CircuitFinding finding = one(changed(trailer, "outlet-switch", "on-resistance", "30 mΩ"), Check.SWITCH_HEAT, "outlet-switch");
        assertEquals(Verdict.STOP, finding.finding().verdict());
        // 125 °C less 163 °C
        assertEquals(-38, finding.finding().figure().value(), 2);
    }

    @Test
    void findsPanelAndBatteryOverloaded() {
        Circuit small = changed(changed(trailer, "fuse-panel", "panel-limit", "5 A"), "battery", "battery-limit", "20 A");
        assertEquals(Verdict.STOP, one(small, Check.CONTINUOUS_CURRENT, "fuse-panel").finding().verdict());
        assertEquals(Verdict.STOP, one(small, Check.CONTINUOUS_CURRENT, "battery").finding().verdict());
    }

    @Test
    void findsWhereThereIsNoOperatingPoint() {
        Circuit thin = changed(changed(trailer, "bench-run", "size", "0.5 mm²"), "bench-run", "route-length", "20 m");
        Examination examination = Examination.of(thin);
        CircuitFinding finding = examination.findings().get(0);
        assertEquals(Check.OPERATING_POINT, finding.check());
        assertEquals(Verdict.STOP, finding.finding().verdict());
        assertEquals("accessory-outlet", finding.partId());
    }

    @Test
    void examinesEveryFreshPart() {
        Circuit circuit = StartingCircuits.empty();
        for (PartKind kind : PartKind.values()) {
            circuit = kind == PartKind.SUPPLY ? circuit : CircuitEdits.added(circuit, kind, "battery");
        }
        assertEquals(List.of(), Examination.of(circuit).faults());
    }

    private static CircuitFinding one(Circuit circuit, Check check, String partId) {
        Examination examination = Examination.of(circuit);
        for (CircuitFinding finding : examination.findingsOn(partId)) {
            if (finding.check() == check) {
                return finding;
            }
        }
        throw new AssertionError("no finding " + check + " on " + partId + ": " + examination.faults() + examination.findings());
    }

    private static Circuit changed(Circuit circuit, String id, String field, String text) {
        return CircuitEdits.changed(circuit, id, field, text).circuit();
    }
}
