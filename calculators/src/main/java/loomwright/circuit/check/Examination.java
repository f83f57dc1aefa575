package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.PartFault;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.worked.Verdict;

/**
 * A circuit examined: solved, and checked from the battery to every load. No finding says that a circuit is free of danger; each says
 * which check it passed, on what assumption and by which source.
 */
public final class Examination {
    private final Circuit circuit;
    private final List<PartFault> faults;
    private final Context context;
    private final List<CircuitFinding> findings;
    private final Map<String, List<CircuitFinding>> byPart = new HashMap<>();

    private Examination(Circuit circuit, List<PartFault> faults, Context context, List<CircuitFinding> findings) {
        this.circuit = circuit;
        this.faults = faults;
        this.context = context;
        this.findings = List.copyOf(findings);
        for (CircuitFinding finding : findings) {
            List<CircuitFinding> found = byPart.get(finding.partId());
            if (found == null) {
                found = new ArrayList<>();
                byPart.put(finding.partId(), found);
            }
            found.add(finding);
        }
    }

    /** Examines a circuit. */
    public static Examination of(Circuit circuit) {
        List<PartFault> faults = circuit.faults();
        if (!faults.isEmpty()) {
            return new Examination(circuit, faults, null, List.of());
        }
        Context context = Context.of(circuit);
        Findings findings = new Findings(circuit);
        for (Node node : circuit.nodes()) {
            for (PartCheck check : Checks.ALL) {
                check.check(node, context, findings);
            }
        }
        return new Examination(circuit, faults, context, findings.inOrder());
    }

    /** The same with other findings; all that was worked out stays. */
    public Examination with(List<CircuitFinding> others) {
        return new Examination(circuit, faults, context, others);
    }

    public Circuit circuit() {
        return circuit;
    }

    /** What could not be understood, with part and field; then nothing was worked out. */
    public List<PartFault> faults() {
        return faults;
    }

    /** Voltages and currents in the heaviest situations; null if there are faults. */
    public CircuitSolution solution() {
        return context == null ? null : context.solution();
    }

    /** The prospective fault current at every part; null if there are faults. */
    public FaultCurrents faultCurrents() {
        return context == null ? null : context.currents();
    }

    /** The energy of a day; null if there are faults. */
    public DayOfCircuit day() {
        return context == null ? null : context.day();
    }

    /** What was found, worst first. */
    public List<CircuitFinding> findings() {
        return findings;
    }

    /** The findings that concern one part, worst first. */
    public List<CircuitFinding> findingsOn(String partId) {
        List<CircuitFinding> found = byPart.get(partId);
        return found == null ? List.of() : List.copyOf(found);
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
