package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Installation;
import loomwright.circuit.InstallationRead;
import loomwright.circuit.PartFault;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.circuit.solve.Solved;
import loomwright.circuit.solve.Starvation;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Verdict;

/**
 * A circuit examined: solved, and checked from the battery to every load. No finding says that a circuit is free of danger; each says
 * which check it passed, on what assumption and by which source.
 *
 * @param circuit the circuit
 * @param faults what could not be understood, with part and field; then all that follows is null or empty
 * @param solution voltages and currents in its heaviest situations, or null
 * @param faultCurrents the prospective fault current at every part, or null
 * @param day the energy of a day, or null
 * @param findings what was found, worst first
 */
public record Examination(
        Circuit circuit, List<PartFault> faults, CircuitSolution solution, FaultCurrents faultCurrents, DayOfCircuit day,
        List<CircuitFinding> findings) {

    /** Examines a circuit. */
    public static Examination of(Circuit circuit) {
        InstallationRead read = Installation.of(circuit);
        if (read.installation() == null) {
            return new Examination(circuit, read.faults(), null, null, null, List.of());
        }
        Installation installation = read.installation();
        CircuitSolution solution = CircuitSolution.of(installation);
        FaultCurrents currents = FaultCurrents.of(installation);
        DayOfCircuit day = DayOfCircuit.of(installation);
        Findings findings = new Findings(installation);
        addOperatingPoints(installation, solution, findings);
        addParts(installation, solution, currents, findings);
        DayCheck.add(installation, day, findings);
        return new Examination(circuit, List.of(), solution, currents, day, findings.inOrder());
    }

    private static void addOperatingPoints(Installation installation, CircuitSolution solution, Findings findings) {
        boolean all = true;
        for (Solved solved : solution.all()) {
            boolean lasting = solved.situation().starting() < 0;
            Starvation starvation = lasting ? Starvation.of(installation, solved) : null;
            if (starvation != null) {
                all = false;
                findings.add(
                        Check.OPERATING_POINT, starvation.part(), false, Verdict.STOP, starvation.words(), starvation.asked(), starvation.most(),
                        Findings.computed(), "Take thicker conductors or shorter routes on the way to it, or a load that asks for less.");
            }
        }
        if (all) {
            Quantity largest = Quantity.of(solution.designAmperes(0), Units.AMPERE);
            findings.add(
                    Check.OPERATING_POINT, 0, true, Verdict.STOP,
                    "From " + installation.supply().lowest().text() + " to " + installation.supply().highest().text()
                            + " at the battery there is an operating point in every situation; at most " + largest.text(3) + " flow from it.",
                    largest, null, Findings.computed(), "");
        }
    }

    private static void addParts(Installation installation, CircuitSolution solution, FaultCurrents currents, Findings findings) {
        AmpacityCheck ampacity = new AmpacityCheck(installation, findings);
        HeatCheck heat = new HeatCheck(installation, currents, findings);
        SelectivityCheck selectivity = new SelectivityCheck(installation, currents, findings);
        SwitchCheck switches = new SwitchCheck(installation, solution, findings);
        StartCheck starts = new StartCheck(installation, findings);
        for (int i = 0; i < installation.size(); i++) {
            Quantity design = Quantity.of(solution.designAmperes(i), Units.AMPERE);
            CarryingCheck.add(installation, i, design, findings);
            if (installation.conductor(i) != null) {
                ampacity.add(i, design);
                heat.add(i);
            } else if (installation.protection(i) != null) {
                BreakingCheck.add(installation, currents, i, findings);
                selectivity.add(i);
            } else if (installation.switching(i) != null) {
                switches.add(i, design);
            } else if (installation.load(i) != null) {
                LoadCheck.add(installation, solution, i, findings);
            }
        }
        for (Solved start : solution.starts()) {
            starts.add(start);
        }
    }

    /** The findings that concern one part, worst first. */
    public List<CircuitFinding> findingsOn(String partId) {
        List<CircuitFinding> found = new ArrayList<>();
        for (CircuitFinding finding : findings) {
            if (finding.partId().equals(partId)) {
                found.add(finding);
            }
        }
        return List.copyOf(found);
    }

    /** The findings of one check, worst first. */
    public List<CircuitFinding> findings(Check check) {
        List<CircuitFinding> found = new ArrayList<>();
        for (CircuitFinding finding : findings) {
            if (finding.check() == check) {
                found.add(finding);
            }
        }
        return List.copyOf(found);
    }

    /** The worst verdict; null if nothing could be checked. */
    public Verdict worst() {
        return findings.isEmpty() ? null : findings.get(0).finding().verdict();
    }

    /** How many findings have a verdict. */
    public int count(Verdict verdict) {
        int count = 0;
        for (CircuitFinding finding : findings) {
            count += finding.finding().verdict() == verdict ? 1 : 0;
        }
        return count;
    }
}
