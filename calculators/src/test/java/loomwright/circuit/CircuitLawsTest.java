package loomwright.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
            assertTrue(examination.circuit().indexOf(fault.partId()) >= 0);
            assertTrue(examination.circuit().part(fault.partId()).kind().indexOf(fault.fieldKey()) >= 0, fault.toString());
        }
        for (CircuitFinding finding : examination.findings()) {
            String words = finding.finding().words() + finding.finding().remedy();
            assertFalse(words.contains("not a number") || words.contains("every limit") || words.contains("null"), words);
            assertTrue(examination.circuit().indexOf(finding.partId()) >= 0);
        }
    }

    @Property(tries = 300)
    void givesAsMuchEnergyAsLoadsAndLossesTake(@ForAll long seed) {
        for (Solved solved : understood(seed).solution().all()) {
            if (solved.exists()) {
                double given = solved.point().sourceWatts();
                assertEquals(given, solved.point().loadWatts() + solved.point().lostWatts(), 1e-9 * (1 + given));
            }
        }
    }

    /** A fault current never grows along the way from the battery, and the ends of its range never cross. */
    @Property(tries = 300)
    void drivesLessFaultCurrentTheFartherAway(@ForAll long seed) {
        Examination examination = understood(seed);
        Installation installation = examination.solution().installation();
        for (int i = 1; i < installation.size(); i++) {
            Quantity low = examination.faultCurrents().lowest(i);
            assertTrue(low.base() <= examination.faultCurrents().lowest(installation.feeding(i)).base());
            Quantity high = examination.faultCurrents().highest(i);
            assertTrue(high == null || low.base() <= high.base() * (1 + 1e-9), "part " + i);
        }
    }

    @Property(tries = 300)
    void givesSheetsForWhateverIsUnderstood(@ForAll long seed) {
        Examination examination = understood(seed);
        Installation installation = examination.solution().installation();
        assertEquals(count(installation, PartKind.PROTECTION), Schedule.of(examination).size());
        assertTrue(PartsAndCuts.of(installation).cuts().size() >= count(installation, PartKind.CONDUCTOR));
        assertTrue(Label.of(installation).size() >= 4 * count(installation, PartKind.CONDUCTOR));
        Quantity battery = installation.supply().resting();
        Circuit read = CircuitEdits.read(installation.circuit(), installation.part(0).id(), battery.text()).circuit();
        for (TestStep step : TestSheet.of(installation, battery)) {
            assertTrue(step.low() == null || step.low().base() <= step.high().base() * (1 + 1e-9), step.toString());
            if (step.phase() == TestStep.Phase.LOADED && step.low() != null) {
                read = CircuitEdits.read(read, step.partId(), step.low().text(9)).circuit();
            }
        }
        assertTrue(Comparison.of(Examination.of(read), Meter.USUAL).faults().size() <= installation.size());
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
                int thickened = circuit.indexOf(part.id());
                for (int i = thickened; i < circuit.parts().size(); i++) {
                    double was = before.solution().leastVolts(i);
                    boolean behind = before.solution().installation().isOnTheWay(thickened, i);
                    boolean compared = behind && !Double.isNaN(was) && existAll(before.solution().all());
                    assertTrue(!compared || after.solution().leastVolts(i) >= was - 1e-9);
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

    private static long count(Installation installation, PartKind kind) {
        return installation.circuit().parts().stream().filter(part -> part.kind() == kind).count();
    }
}
