package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.CircuitFile;
import loomwright.circuit.file.CircuitLink;
import loomwright.circuit.sheet.Comparison;
import loomwright.circuit.sheet.Label;
import loomwright.circuit.sheet.Meter;
import loomwright.circuit.sheet.PartsAndCuts;
import loomwright.circuit.sheet.Schedule;
import loomwright.circuit.sheet.TestSheet;
import loomwright.circuit.sheet.TestStep;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What holds of any circuit. */
class CircuitLawsTest {
    @Property(tries = 500)
    void comesBackFromItsFileAndItsLink(@ForAll long seed) {
        Circuit circuit = RandomCircuit.of(seed);
        String file = CircuitFile.write(circuit);
        assertEquals(circuit, CircuitFile.read(file).circuit());
        assertEquals(file, CircuitFile.write(CircuitFile.read(file).circuit()));
        assertEquals(circuit, CircuitLink.read(CircuitLink.write(circuit)).circuit());
    }

    @Property(tries = 1000)
    void isExaminedOrRefusedWithPartAndField(@ForAll long seed) {
        Examination examination = Examination.of(RandomCircuit.of(seed));
        for (PartFault fault : examination.faults()) {
            assertNotNull(examination.circuit().node(fault.partId()));
            assertTrue(examination.circuit().part(fault.partId()).kind().indexOf(fault.fieldKey()) >= 0, fault.toString());
        }
        for (CircuitFinding finding : examination.findings()) {
            String words = finding.finding().words() + finding.finding().remedy();
            assertFalse(words.contains("not a number") || words.contains("every limit") || words.contains("null"), words);
            assertNotNull(examination.circuit().node(finding.partId()));
        }
    }

    @Property(tries = 300)
    void givesAsMuchEnergyAsLoadsAndLossesTake(@ForAll long seed) {
        for (Solved solved : all(understood(seed).solution())) {
            if (solved.exists()) {
                double given = solved.sourceWatts();
                assertEquals(given, solved.loadWatts() + solved.lostWatts(), 1e-9 * (1 + given));
            }
        }
    }

    /** A fault current never grows along the way from the battery, and the ends of its range never cross. */
    @Property(tries = 300)
    void drivesLessFaultCurrentTheFartherAway(@ForAll long seed) {
        Examination examination = understood(seed);
        for (Node node : examination.circuit().nodes()) {
            if (node.parent() == null) {
                continue;
            }
            Quantity low = examination.faultCurrents().lowest(node);
            assertTrue(low.base() <= examination.faultCurrents().lowest(node.parent()).base());
            Quantity high = examination.faultCurrents().highest(node);
            assertTrue(high == null || low.base() <= high.base() * (1 + 1e-9), node.id());
        }
    }

    @Property(tries = 300)
    void givesSheetsForWhateverIsUnderstood(@ForAll long seed) {
        Examination examination = understood(seed);
        Circuit circuit = examination.circuit();
        assertEquals(count(circuit, PartKind.PROTECTION), Schedule.of(examination).size());
        assertTrue(PartsAndCuts.of(circuit).cuts().size() >= count(circuit, PartKind.CONDUCTOR));
        assertTrue(Label.of(circuit).size() >= 4 * count(circuit, PartKind.CONDUCTOR));
        Quantity battery = circuit.battery().resting();
        Circuit read = CircuitEdits.read(circuit, circuit.supply().id(), battery.text()).circuit();
        for (TestStep step : TestSheet.of(circuit, battery)) {
            assertTrue(step.low() == null || step.low().base() <= step.high().base() * (1 + 1e-9), step.toString());
            if (step.phase() == TestStep.Phase.LOADED && step.low() != null) {
                read = CircuitEdits.read(read, step.partId(), step.low().text(9)).circuit();
            }
        }
        assertTrue(Comparison.of(Examination.of(read), Meter.USUAL).faults().size() <= circuit.parts().size());
    }

    /**
     * A thicker conductor never leaves less voltage at its far end and behind it. Before it there may be less: a heater behind it draws more.
     */
    @Property(tries = 200)
    void losesLessWithAThickerConductor(@ForAll long seed) {
        Circuit circuit = RandomCircuit.of(seed);
        Examination before = Examination.of(circuit);
        Assume.that(before.faults().isEmpty());
        for (Part part : circuit.parts()) {
            if (part.kind() == PartKind.CONDUCTOR && part.text("conductor").equals("iso-6722-1")) {
                Examination after = Examination.of(CircuitEdits.changed(circuit, part.id(), "size", "120 mm²").circuit());
                for (Node node : circuit.nodes()) {
                    double was = before.solution().leastVolts(node);
                    boolean behind = circuit.node(part.id()).isOnTheWayTo(node);
                    boolean compared = behind && !Double.isNaN(was) && existAll(all(before.solution()));
                    assertTrue(!compared || after.solution().leastVolts(after.circuit().node(node.id())) >= was - 1e-9);
                }
            }
        }
    }

    private static boolean existAll(List<Solved> all) {
        return all.stream().allMatch(Solved::exists);
    }

    private static Examination understood(long seed) {
        Examination examination = Examination.of(RandomCircuit.of(seed));
        Assume.that(examination.faults().isEmpty());
        return examination;
    }

    private static long count(Circuit circuit, PartKind kind) {
        return circuit.parts().stream().filter(part -> part.kind() == kind).count();
    }

    /** Every situation that is solved. */
    private static List<Solved> all(CircuitSolution solution) {
        List<Solved> all = new ArrayList<>(solution.lasting());
        all.addAll(solution.starts());
        return all;
    }
}
