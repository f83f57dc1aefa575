package loomwright.circuit.solve;

import loomwright.circuit.Circuit;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.Panel;
import loomwright.circuit.Switching;

/** A circuit in one situation as a radial network. The parts come in their order; the ends of the trigger wires follow behind. */
final class CircuitNetwork {
    private static final int NONE = -1;

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
    static CircuitNetwork of(Circuit circuit, Situation situation, boolean least) {
        RadialNetwork network = new RadialNetwork(situation.sourceOhms());
        for (Node node : circuit.nodes()) {
            if (node.parent() != null) {
                network.node(node.parent().order(), least ? node.figures().leastOhms() : node.figures().ohms());
            }
        }
        int[] triggers = new int[circuit.nodes().size()];
        for (Node node : circuit.nodes()) {
            triggers[node.order()] = trigger(network, node);
            if (node.figures() instanceof Load load) {
                draw(network, node, load, situation);
            } else if (node.figures() instanceof Panel panel) {
                // What is on the panel already draws together with the rest; at rest nothing is known of it.
                network.addCurrent(node.order(), situation.isIdle() ? 0 : panel.presentLoad().base());
            }
        }
        return new CircuitNetwork(network, triggers);
    }

    private static void draw(RadialNetwork network, Node node, Load load, Situation situation) {
        if (situation.starting() == node && load.startCurrent() != null) {
            network.addCurrent(node.order(), load.startCurrent().base());
        } else if (situation.isDrawing(node)) {
            network.addPower(node.order(), load.watts());
            network.addCurrent(node.order(), load.amperes());
            network.addConductance(node.order(), load.siemens());
        } else {
            network.addCurrent(node.order(), load.standing().base());
        }
    }

    private static int trigger(RadialNetwork network, Node node) {
        if (node.trigger() == null || !(node.figures() instanceof Switching switching)) {
            return NONE;
        }
        int end = network.node(node.trigger().order(), switching.triggerOhms());
        if (switching.coil() != null) {
            network.addConductance(end, 1 / switching.coil().base());
        } else {
            network.addCurrent(end, switching.triggerCurrent().base());
        }
        return end;
    }

    RadialNetwork network() {
        return network;
    }

    /** The end of the trigger wire of a switching device; −1 if it has none. */
    int triggerEnd(Node node) {
        return triggerNodes[node.order()];
    }
}
