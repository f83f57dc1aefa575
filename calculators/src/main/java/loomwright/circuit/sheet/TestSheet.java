package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Installation;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;
import loomwright.circuit.sheet.TestStep.Phase;
import loomwright.circuit.solve.Situation;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The test sheet of a circuit: dead tests first, then every point with triggers off, on, and under load. */
public final class TestSheet {
    private final Installation installation;
    private final Designations designations;
    private final double batteryVolts;
    private final List<TestStep> steps = new ArrayList<>();

    private TestSheet(Installation installation, double batteryVolts) {
        this.installation = installation;
        this.designations = Designations.of(installation.circuit());
        this.batteryVolts = batteryVolts;
    }

    /**
     * The steps, in the order they are done.
     *
     * @param battery what the meter reads at the terminals of the battery with the loads on; it decides all other voltages
     */
    public static List<TestStep> of(Installation installation, Quantity battery) {
        TestSheet sheet = new TestSheet(installation, battery.base());
        sheet.addDead();
        sheet.addTriggerOff();
        sheet.addIdle();
        sheet.addLoaded();
        sheet.addWarmth();
        return List.copyOf(sheet.steps);
    }

    private void addDead() {
        String unplugged = "no reading: the meter shows over range. A low reading means a short circuit or a load left in";
        step(Phase.DEAD, 0, "Loads unplugged: ohms between the positive and the negative lead where they meet the battery", null, null, unplugged);
        for (int i = 1; i < installation.size(); i++) {
            if (installation.conductor(i) != null) {
                Quantity low = Quantity.of(1000 * installation.leastOhms(i), Units.MILLIOHM);
                Quantity high = Quantity.of(1000 * installation.ohms(i), Units.MILLIOHM);
                step(
                        Phase.DEAD, i, "Far ends joined for the test: ohms between the near ends, out and back", low, high,
                        low.text(3) + " to " + high.text(3) + " by calculation; most meters show no more than with their leads touched");
                step(
                        Phase.DEAD, i, "Polarity: continuity from the positive near end to the positive far end, and not to the negative", null, null,
                        "a beep to its own end, none to the other");
            }
        }
    }

    private void addTriggerOff() {
        for (int i = 1; i < installation.size(); i++) {
            if (installation.switching(i) != null) {
                step(
                        Phase.TRIGGER_OFF, i, "Switched off: volts behind it, with a small load such as a lamp connected", Quantity.of(0, Units.VOLT),
                        Quantity.of(0, Units.VOLT), "0 V. Without the lamp, leakage of a solid-state switch may show some volts");
            }
        }
    }

    private void addIdle() {
        Situation idle = Situation.idle(installation, batteryVolts, 0);
        Solved worn = Solved.of(installation, idle);
        Solved sound = Solved.withLeastResistance(installation, idle);
        if (worn.exists() && sound.exists()) {
            for (int i = 1; i < installation.size(); i++) {
                if (isPoint(i)) {
                    addVolts(Phase.TRIGGER_ON, i, "Volts behind it", worn, sound);
                }
            }
        }
    }

    private void addLoaded() {
        Situation loaded = Situation.heaviest(installation, batteryVolts, 0).get(0);
        Solved worn = Solved.of(installation, loaded);
        Solved sound = Solved.withLeastResistance(installation, loaded);
        if (!worn.exists() || !sound.exists()) {
            step(Phase.LOADED, 0, "Not to be done", null, null, "the circuit has no operating point under all its loads: correct it first");
            return;
        }
        for (int i = 0; i < installation.size(); i++) {
            if (isPoint(i) || installation.part(i).kind() == PartKind.JOINT) {
                addVolts(Phase.LOADED, i, i == 0 ? "Volts at its terminals: note it first" : "Volts behind it, loads on", worn, sound);
            }
        }
    }

    private void addWarmth() {
        for (int i = 1; i < installation.size(); i++) {
            PartKind kind = installation.part(i).kind();
            if (kind == PartKind.PROTECTION || kind == PartKind.JOINT || kind == PartKind.SWITCH) {
                step(Phase.WARMTH, i, "Feel it with the back of a finger", null, null, "no more than hand-warm. Warm is a warning, hot is a stop");
            }
        }
    }

    /** Where a meter can be put: all but joints, and the end of a run that is the terminal of a load. */
    private boolean isPoint(int i) {
        return installation.part(i).kind() != PartKind.JOINT;
    }

    private void addVolts(Phase phase, int i, String what, Solved worn, Solved sound) {
        // As a rule less resistance leaves more voltage; but a heater behind better joints draws more and may take some from a point before.
        Quantity low = Quantity.of(Math.min(worn.volts(i), sound.volts(i)), Units.VOLT);
        Quantity high = Quantity.of(Math.max(worn.volts(i), sound.volts(i)), Units.VOLT);
        String range = low.text(4).equals(high.text(4)) ? low.text(4) : low.text(4) + " to " + high.text(4);
        step(phase, i, what, low, high, range);
    }

    private void step(Phase phase, int i, String what, Quantity low, Quantity high, String expected) {
        Part part = installation.part(i);
        steps.add(new TestStep(phase, part.id(), designations.of(part.id()), what, low, high, expected));
    }
}
