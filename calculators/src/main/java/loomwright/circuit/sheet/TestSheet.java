package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.circuit.sheet.TestStep.Phase;
import loomwright.circuit.solve.Situation;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The test sheet of a circuit: dead tests first, then every point with triggers off, on, and under load. */
public final class TestSheet {
    private final Circuit circuit;
    private final Designations designations;
    private final double batteryVolts;
    private final List<TestStep> steps = new ArrayList<>();

    private TestSheet(Circuit circuit, double batteryVolts) {
        this.circuit = circuit;
        this.designations = Designations.of(circuit);
        this.batteryVolts = batteryVolts;
    }

    /**
     * The steps, in the order they are done.
     *
     * @param battery what the meter reads at the terminals of the battery with the loads on; it decides all other voltages
     */
    public static List<TestStep> of(Circuit circuit, Quantity battery) {
        TestSheet sheet = new TestSheet(circuit, battery.base());
        sheet.addDead();
        sheet.addTriggerOff();
        sheet.addIdle();
        sheet.addLoaded();
        sheet.addWarmth();
        return List.copyOf(sheet.steps);
    }

    private void addDead() {
        String unplugged = "no reading: the meter shows over range. A low reading means a short circuit or a load left in";
        step(Phase.DEAD, circuit.supply(), "Loads unplugged: ohms between the positive and the negative lead where they meet the battery", null, null, unplugged);
        for (Node node : circuit.nodes()) {
            if (node.kind() == PartKind.CONDUCTOR) {
                Quantity low = Quantity.of(1000 * node.figures().leastOhms(), Units.MILLIOHM);
                Quantity high = Quantity.of(1000 * node.figures().ohms(), Units.MILLIOHM);
                step(
                        Phase.DEAD, node, "Far ends joined for the test: ohms between the near ends, out and back", low, high,
                        low.text(3) + " to " + high.text(3) + " by calculation; most meters show no more than with their leads touched");
                step(
                        Phase.DEAD, node, "Polarity: continuity from the positive near end to the positive far end, and not to the negative", null, null,
                        "a beep to its own end, none to the other");
            }
        }
    }

    private void addTriggerOff() {
        for (Node node : circuit.nodes()) {
            if (node.kind() == PartKind.SWITCH) {
                step(
                        Phase.TRIGGER_OFF, node, "Switched off: volts behind it, with a small load such as a lamp connected", Quantity.of(0, Units.VOLT),
                        Quantity.of(0, Units.VOLT), "0 V. Without the lamp, leakage of a solid-state switch may show some volts");
            }
        }
    }

    private void addIdle() {
        Situation idle = Situation.idle(circuit, batteryVolts, 0);
        Solved worn = Solved.of(circuit, idle);
        Solved sound = Solved.withLeastResistance(circuit, idle);
        if (worn.exists() && sound.exists()) {
            for (Node node : circuit.nodes()) {
                if (node.parent() != null && isPoint(node)) {
                    addVolts(Phase.TRIGGER_ON, node, "Volts behind it", worn, sound);
                }
            }
        }
    }

    private void addLoaded() {
        Situation loaded = Situation.heaviest(circuit, batteryVolts, 0).get(0);
        Solved worn = Solved.of(circuit, loaded);
        Solved sound = Solved.withLeastResistance(circuit, loaded);
        if (!worn.exists() || !sound.exists()) {
            step(Phase.LOADED, circuit.supply(), "Not to be done", null, null, "the circuit has no operating point under all its loads: correct it first");
            return;
        }
        for (Node node : circuit.nodes()) {
            addVolts(Phase.LOADED, node, node.parent() == null ? "Volts at its terminals: note it first" : "Volts behind it, loads on", worn, sound);
        }
    }

    private void addWarmth() {
        for (Node node : circuit.nodes()) {
            PartKind kind = node.kind();
            if (kind == PartKind.PROTECTION || kind == PartKind.JOINT || kind == PartKind.SWITCH) {
                step(Phase.WARMTH, node, "Feel it with the back of a finger", null, null, "no more than hand-warm. Warm is a warning, hot is a stop");
            }
        }
    }

    /** Where a meter can be put: all but joints, and the end of a run that is the terminal of a load. */
    private static boolean isPoint(Node node) {
        return node.kind() != PartKind.JOINT;
    }

    private void addVolts(Phase phase, Node node, String what, Solved worn, Solved sound) {
        // As a rule less resistance leaves more voltage; but a heater behind better joints draws more and may take some from a point before.
        Quantity low = Quantity.of(Math.min(worn.volts(node), sound.volts(node)), Units.VOLT);
        Quantity high = Quantity.of(Math.max(worn.volts(node), sound.volts(node)), Units.VOLT);
        String range = low.text(4).equals(high.text(4)) ? low.text(4) : low.text(4) + " to " + high.text(4);
        step(phase, node, what, low, high, range);
    }

    private void step(Phase phase, Node node, String what, Quantity low, Quantity high, String expected) {
        steps.add(new TestStep(phase, node.id(), designations.of(node.id()), what, low, high, expected));
    }
}
