package loomwright.circuit.solve;

import loomwright.circuit.Installation;
import loomwright.circuit.Load;
import loomwright.circuit.Panel;
import loomwright.circuit.Switching;

/** A circuit in one situation as a radial network. Node and part have the same number; the triggers follow behind. */
final class CircuitNetwork {
    private final RadialNetwork network;
    private final int[] triggerNodes;

    private CircuitNetwork(RadialNetwork network, int[] triggerNodes) {
        this.network = network;
        this.triggerNodes = triggerNodes;
    }

    /**
     * The network of a circuit.
     *
     * @param least whether every part is taken at the least resistance it may have, instead of the one it works at
     */
    static CircuitNetwork of(Installation installation, Situation situation, boolean least) {
        RadialNetwork network = new RadialNetwork(situation.sourceOhms());
        for (int i = 1; i < installation.size(); i++) {
            network.node(installation.feeding(i), least ? installation.leastOhms(i) : installation.ohms(i));
        }
        int[] triggers = new int[installation.size()];
        for (int i = 0; i < triggers.length; i++) {
            triggers[i] = trigger(network, installation, i);
            Load load = installation.load(i);
            Panel panel = installation.panel(i);
            if (load != null) {
                draw(network, i, load, situation);
            } else if (panel != null) {
                // What is on the panel already draws together with the rest; at rest nothing is known of it.
                network.addCurrent(i, isIdle(situation) ? 0 : panel.presentLoad().base());
            }
        }
        return new CircuitNetwork(network, triggers);
    }

    private static void draw(RadialNetwork network, int node, Load load, Situation situation) {
        if (situation.starting() == node && load.startCurrent() != null) {
            network.addCurrent(node, load.startCurrent().base());
        } else if (situation.drawing()[node]) {
            network.addPower(node, load.watts());
            network.addCurrent(node, load.amperes());
            network.addConductance(node, load.siemens());
        } else {
            network.addCurrent(node, load.standing().base());
        }
    }

    private static int trigger(RadialNetwork network, Installation installation, int i) {
        int from = installation.trigger(i);
        if (from < 0) {
            return -1;
        }
        Switching switching = installation.switching(i);
        int node = network.node(from, installation.triggerOhms(i));
        if (switching.coil() != null) {
            network.addConductance(node, 1 / switching.coil().base());
        } else {
            network.addCurrent(node, switching.triggerCurrent().base());
        }
        return node;
    }

    private static boolean isIdle(Situation situation) {
        for (boolean one : situation.drawing()) {
            if (one) {
                return false;
            }
        }
        return true;
    }

    RadialNetwork network() {
        return network;
    }

    /** The node at the end of the trigger wire of a switching device; −1 if it has none. */
    int triggerNode(int part) {
        return triggerNodes[part];
    }
}
