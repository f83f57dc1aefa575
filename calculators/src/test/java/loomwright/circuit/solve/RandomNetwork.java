package loomwright.circuit.solve;

import java.util.Random;

/** Networks by chance, the same ones for the same seed. */
final class RandomNetwork {
    private RandomNetwork() {}

    /** A network of 2 to 60 nodes with all three kinds of load; {@code watts} is the most of one constant-power load. */
    static RadialNetwork of(long seed, double watts) {
        Random random = new Random(seed);
        RadialNetwork network = new RadialNetwork(random.nextInt(4) == 0 ? 0 : 0.02 * random.nextDouble());
        int nodes = 2 + random.nextInt(59);
        boolean chain = random.nextInt(4) == 0;
        for (int node = 1; node < nodes; node++) {
            network.node(chain ? node - 1 : random.nextInt(node), 0.0005 + 0.02 * random.nextDouble());
            switch (random.nextInt(5)) {
                case 0 -> network.addPower(node, watts * random.nextDouble());
                case 1 -> network.addCurrent(node, 2 * random.nextDouble());
                case 2 -> network.addConductance(node, random.nextDouble() / 12);
                case 3 -> {
                    network.addPower(node, watts * random.nextDouble());
                    network.addConductance(node, random.nextDouble() / 12);
                }
                default -> {
                    // a node without load, such as a joint
                }
            }
        }
        return network;
    }

    /** A copy with every load times {@code share}. */
    static RadialNetwork loaded(RadialNetwork network, double share) {
        RadialNetwork copy = new RadialNetwork(network.ohms(0));
        for (int node = 0; node < network.size(); node++) {
            if (node > 0) {
                copy.node(network.feeding(node), network.ohms(node));
            }
            copy.addPower(node, share * network.watts(node));
            copy.addCurrent(node, share * network.amperes(node));
            copy.addConductance(node, share * network.siemens(node));
        }
        return copy;
    }
}
