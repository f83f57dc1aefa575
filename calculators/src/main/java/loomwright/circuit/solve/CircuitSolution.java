package loomwright.circuit.solve;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Installation;

/**
 * A circuit solved in its heaviest situations, from the battery nearly empty to the battery being charged.
 *
 * <p>At both ends the voltage is that of the terminals, as a meter reads it there with the loads on.
 */
public final class CircuitSolution {
    private final Installation installation;
    private final List<Solved> lowest = new ArrayList<>();
    private final List<Solved> highest = new ArrayList<>();
    private final List<Solved> starts = new ArrayList<>();

    private CircuitSolution(Installation installation) {
        this.installation = installation;
    }

    public static CircuitSolution of(Installation installation) {
        CircuitSolution solution = new CircuitSolution(installation);
        double low = installation.supply().lowest().base();
        double high = installation.supply().highest().base();
        for (Situation situation : Situation.heaviest(installation, low, 0)) {
            solution.lowest.add(Solved.of(installation, situation));
        }
        for (Situation situation : Situation.heaviest(installation, high, 0)) {
            solution.highest.add(Solved.of(installation, situation));
        }
        for (int i = 0; i < installation.size(); i++) {
            if (installation.load(i) != null && installation.load(i).startCurrent() != null) {
                solution.starts.add(Solved.of(installation, Situation.start(installation, i, low)));
            }
        }
        return solution;
    }

    public Installation installation() {
        return installation;
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

    /** Every situation. */
    public List<Solved> all() {
        List<Solved> all = new ArrayList<>(lowest);
        all.addAll(highest);
        all.addAll(starts);
        return all;
    }

    /** The design current of a part: the most that flows through it for longer than a moment. 0 if no situation can be solved. */
    public double designAmperes(int part) {
        double most = 0;
        for (Solved solved : lasting()) {
            most = solved.exists() ? Math.max(most, solved.amperes(part)) : most;
        }
        return most;
    }

    /** The least voltage behind a part in any lasting situation; not a number if none can be solved. */
    public double leastVolts(int part) {
        double least = Double.NaN;
        for (Solved solved : lasting()) {
            boolean lower = solved.exists() && !(solved.volts(part) >= least);
            least = lower ? solved.volts(part) : least;
        }
        return least;
    }

    /** The situation with the largest drop between the battery and a load while that load draws; null if none can be solved. */
    public Solved worstFor(int load) {
        Solved worst = null;
        for (Solved solved : lasting()) {
            boolean on = solved.exists() && solved.situation().drawing()[load];
            worst = on && (worst == null || solved.drop(load) > worst.drop(load)) ? solved : worst;
        }
        return worst;
    }

    private List<Solved> lasting() {
        List<Solved> lasting = new ArrayList<>(lowest);
        lasting.addAll(highest);
        return lasting;
    }
}
