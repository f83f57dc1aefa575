package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.Protection;
import loomwright.circuit.Supply;
import loomwright.circuit.solve.CircuitSolution;
import loomwright.circuit.solve.FaultCurrents;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/**
 * All that a check may look at besides the part itself and its neighbours.
 *
 * @param circuit one whose parts are all understood
 * @param solution voltages and currents in its heaviest situations
 * @param currents the prospective fault current at every part
 * @param day the energy of a day
 * @param lenders the devices with figures of a data sheet, by their rating in amperes
 */
record Context(Circuit circuit, CircuitSolution solution, FaultCurrents currents, DayOfCircuit day, Map<Double, List<Protection>> lenders) {
    static Context of(Circuit circuit) {
        Map<Double, List<Protection>> lenders = new HashMap<>();
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Protection device && device.hasFiguresToLend()) {
                List<Protection> alike = lenders.get(device.rating().base());
                if (alike == null) {
                    alike = new ArrayList<>();
                    lenders.put(device.rating().base(), alike);
                }
                alike.add(device);
            }
        }
        return new Context(circuit, CircuitSolution.of(circuit), FaultCurrents.of(circuit), DayOfCircuit.of(circuit), lenders);
    }

    Supply battery() {
        return circuit.battery();
    }

    /** The most that flows through a part for longer than a moment. */
    Quantity designCurrent(Node node) {
        return Quantity.of(solution.designAmperes(node), Units.AMPERE);
    }

    /**
     * A device with what its data sheet says. What was typed for one part holds for all of the same kind and rating, so it need not be typed twice.
     */
    Protection sheet(Node device) {
        Protection sheet = (Protection) device.figures();
        List<Protection> alike = lenders.get(sheet.rating().base());
        for (int i = 0; alike != null && i < alike.size(); i++) {
            sheet = sheet.filledFrom(alike.get(i));
        }
        return sheet;
    }
}
