package loomwright.circuit.solve;

/**
 * A radial network: every node but the first is fed from one node before it, through a resistance out and back.
 *
 * <p>Node 0 is the terminals of the source. Each node may carry three loads at once: one that holds its power, one that holds its current,
 * one of fixed resistance (as a conductance). The figures lie in flat arrays, in base units, so that a large network is solved fast in the
 * browser too.
 */
public final class RadialNetwork {
    private static final int FIRST_ROOM = 64;

    private int count;
    private int[] feeding = new int[FIRST_ROOM];
    private double[] ohms = new double[FIRST_ROOM];
    private double[] watts = new double[FIRST_ROOM];
    private double[] amperes = new double[FIRST_ROOM];
    private double[] siemens = new double[FIRST_ROOM];

    /**
     * A network with its source only.
     *
     * @param sourceOhms resistance inside the source; 0 or more
     */
    public RadialNetwork(double sourceOhms) {
        require(sourceOhms >= 0 && sourceOhms < Double.POSITIVE_INFINITY, "resistance must be 0 or more");
        ohms[0] = sourceOhms;
        feeding[0] = -1;
        count = 1;
    }

    /**
     * Adds a node.
     *
     * @param fedFrom the node it is fed from; must be there already
     * @param resistanceOhms resistance out and back between the two; 0 or more
     * @return the number of the new node
     */
    public int node(int fedFrom, double resistanceOhms) {
        require(fedFrom >= 0 && fedFrom < count, "a node must be fed from one that is there");
        require(resistanceOhms >= 0 && resistanceOhms < Double.POSITIVE_INFINITY, "resistance must be 0 or more");
        makeRoom();
        feeding[count] = fedFrom;
        ohms[count] = resistanceOhms;
        return count++;
    }

    /** Adds a load that holds its power, 0 W or more. */
    public void addPower(int node, double powerWatts) {
        requireLoad(node, powerWatts);
        watts[node] += powerWatts;
    }

    /** Adds a load that holds its current, 0 A or more. */
    public void addCurrent(int node, double currentAmperes) {
        requireLoad(node, currentAmperes);
        amperes[node] += currentAmperes;
    }

    /** Adds a load of fixed resistance, given by its conductance, 0 S or more. */
    public void addConductance(int node, double conductanceSiemens) {
        requireLoad(node, conductanceSiemens);
        siemens[node] += conductanceSiemens;
    }

    /** How many nodes there are, the source among them. */
    public int size() {
        return count;
    }

    /** The node that feeds a node; −1 for the source. */
    public int feeding(int node) {
        return feeding[node];
    }

    /** The resistance through which a node is fed; of the source, the resistance inside it. */
    public double ohms(int node) {
        return ohms[node];
    }

    public double watts(int node) {
        return watts[node];
    }

    public double amperes(int node) {
        return amperes[node];
    }

    public double siemens(int node) {
        return siemens[node];
    }

    private void makeRoom() {
        if (count < feeding.length) {
            return;
        }
        int room = 2 * count;
        int[] more = new int[room];
        System.arraycopy(feeding, 0, more, 0, count);
        feeding = more;
        ohms = grown(ohms, room);
        watts = grown(watts, room);
        amperes = grown(amperes, room);
        siemens = grown(siemens, room);
    }

    private static double[] grown(double[] figures, int room) {
        double[] more = new double[room];
        System.arraycopy(figures, 0, more, 0, figures.length);
        return more;
    }

    private void requireLoad(int node, double figure) {
        require(node >= 0 && node < count, "there is no such node");
        require(figure >= 0 && figure < Double.POSITIVE_INFINITY, "a load must be 0 or more");
    }

    private static void require(boolean held, String rule) {
        if (!held) {
            throw new IllegalArgumentException(rule);
        }
    }
}
