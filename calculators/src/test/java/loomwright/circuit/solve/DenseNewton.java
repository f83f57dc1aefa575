package loomwright.circuit.solve;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The same network by another way: the full nodal equations, Newton's method, and the LU decomposition of a reference library. Nothing of it
 * uses that the network is a tree. Every resistance must be above 0, but for that of the source.
 */
final class DenseNewton {
    private DenseNewton() {}

    static double[] volts(RadialNetwork network, double sourceVolts) {
        int held = network.ohms(0) == 0 ? 1 : 0;
        int unknown = network.size() - held;
        RealVector volts = new ArrayRealVector(unknown, sourceVolts);
        for (int step = 0; step < 200; step++) {
            RealMatrix jacobian = new Array2DRowRealMatrix(unknown, unknown);
            RealVector surplus = new ArrayRealVector(unknown);
            for (int node = held; node < network.size(); node++) {
                int row = node - held;
                double here = volts.getEntry(row);
                double load = network.watts(node) / here + network.amperes(node) + network.siemens(node) * here;
                surplus.addToEntry(row, load);
                jacobian.addToEntry(row, row, network.siemens(node) - network.watts(node) / (here * here));
                if (node == 0) {
                    surplus.addToEntry(0, (here - sourceVolts) / network.ohms(0));
                    jacobian.addToEntry(0, 0, 1 / network.ohms(0));
                    continue;
                }
                double siemens = 1 / network.ohms(node);
                int feeding = network.feeding(node) - held;
                double before = feeding < 0 ? sourceVolts : volts.getEntry(feeding);
                surplus.addToEntry(row, (here - before) * siemens);
                jacobian.addToEntry(row, row, siemens);
                if (feeding >= 0) {
                    surplus.addToEntry(feeding, (before - here) * siemens);
                    jacobian.addToEntry(feeding, feeding, siemens);
                    jacobian.addToEntry(row, feeding, -siemens);
                    jacobian.addToEntry(feeding, row, -siemens);
                }
            }
            RealVector change = new LUDecomposition(jacobian).getSolver().solve(surplus);
            volts = volts.subtract(change);
            if (change.getLInfNorm() < 1e-13 * sourceVolts) {
                break;
            }
        }
        double[] all = new double[network.size()];
        all[0] = sourceVolts;
        System.arraycopy(volts.toArray(), 0, all, held, unknown);
        return all;
    }
}
