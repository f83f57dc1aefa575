package loomwright.circuit.solve;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.ChargeSource;
import loomwright.circuit.Circuit;
import loomwright.circuit.Load;
import loomwright.circuit.Node;

/**
 * A circuit solved in its heaviest situations, from the battery nearly empty to the battery being charged.
 *
 * <p>At both ends the voltage is that of the terminals, as a meter reads it there with the loads on.
 */
public final class CircuitSolution {
    private final Circuit circuit;
    private final List<Solved> lowest = new ArrayList<>();
    private final List<Solved> highest = new ArrayList<>();
    private final List<Solved> starts = new ArrayList<>();
    private final double[] designAmperes;
    private final double[] leastVolts;
    private final Solved[] worst;

    private CircuitSolution(Circuit circuit) {
        int size = circuit.nodes().size();
        this.circuit = circuit;
        this.designAmperes = new double[size];
        this.leastVolts = new double[size];
        this.worst = new Solved[size];
        double low = circuit.battery().lowest().base();
        solve(Situation.heaviest(circuit, low, 0), lowest);
        solve(Situation.heaviest(circuit, circuit.battery().highest().base(), 0), highest);
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Load load && load.startCurrent() != null) {
                starts.add(Solved.of(circuit, Situation.start(circuit, node, low)));
            }
        }
        List<Solved> lasting = lasting();
        for (Node node : circuit.nodes()) {
            leastVolts[node.order()] = Double.NaN;
            weigh(node, lasting);
        }
        addCharging();
    }

    /** What sources of charge send towards the battery flows through the same parts, the other way: the larger of both counts. */
    private void addCharging() {
        double[] charging = new double[designAmperes.length];
        for (int i = charging.length - 1; i > 0; i--) {
            Node node = circuit.nodes().get(i);
            charging[i] += node.figures() instanceof ChargeSource source ? source.current().base() : 0;
            charging[node.parent().order()] += charging[i];
            designAmperes[i] = Math.max(designAmperes[i], charging[i]);
        }
    }

    private void solve(List<Situation> situations, List<Solved> solved) {
        for (Situation situation : situations) {
            solved.add(Solved.of(circuit, situation));
        }
    }

    private void weigh(Node node, List<Solved> lasting) {
        int at = node.order();
        for (Solved solved : lasting) {
            if (solved.exists()) {
                designAmperes[at] = Math.max(designAmperes[at], solved.amperes(node));
                leastVolts[at] = solved.volts(node) >= leastVolts[at] ? leastVolts[at] : solved.volts(node);
                boolean on = solved.situation().isDrawing(node);
                worst[at] = on && (worst[at] == null || solved.drop(node) > worst[at].drop(node)) ? solved : worst[at];
            }
        }
    }

    /** @param circuit one whose parts can all be understood */
    public static CircuitSolution of(Circuit circuit) {
        return new CircuitSolution(circuit);
    }

    public Circuit circuit() {
        return circuit;
    }

    /** The heaviest situations with the battery nearly empty. */
    public List<Solved> lowest() {
        return List.copyOf(lowest);
    }

    /** The heaviest situations while the battery is charged. */
    public List<Solved> highest() {
        return List.copyOf(highest);
    }

    /** The starts of loads that have a starting current, the battery nearly empty. */
    public List<Solved> starts() {
        return List.copyOf(starts);
    }

    /** Every situation that lasts. */
    public List<Solved> lasting() {
        List<Solved> lasting = new ArrayList<>(lowest);
        lasting.addAll(highest);
        return lasting;
    }

    /** The design current of a part: the most that flows through it for longer than a moment. 0 if no situation can be solved. */
    public double designAmperes(Node node) {
        return designAmperes[node.order()];
    }

    /** The least voltage behind a part in any lasting situation; not a number if none can be solved. */
    public double leastVolts(Node node) {
        return leastVolts[node.order()];
    }

    /** The situation with the largest drop between the battery and a load while that load draws; null if none can be solved. */
    public Solved worstFor(Node load) {
        return worst[load.order()];
    }
}
