package loomwright.circuit;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Refusal;

/** A circuit whose every part has been understood: battery, conductors, devices and loads with their figures. */
public final class Installation {
    private final Circuit circuit;
    private final int[] feeding;
    private final Understood[] understood;

    private Installation(Circuit circuit) {
        this.circuit = circuit;
        this.feeding = circuit.feeding();
        this.understood = new Understood[feeding.length];
    }

    /** Reads every part of a circuit; every fault is collected. */
    public static InstallationRead of(Circuit circuit) {
        Installation installation = new Installation(circuit);
        List<PartFault> faults = new ArrayList<>();
        for (int i = 0; i < circuit.parts().size(); i++) {
            try {
                installation.understood[i] = circuit.parts().get(i).understood();
            } catch (Refusal refusal) {
                String id = circuit.parts().get(i).id();
                faults.add(new PartFault(id, refusal.fault().fieldKey(), refusal.fault().message()));
            }
        }
        return new InstallationRead(faults.isEmpty() ? installation : null, List.copyOf(faults));
    }

    public Circuit circuit() {
        return circuit;
    }

    /** How many parts there are. */
    public int size() {
        return feeding.length;
    }

    public Part part(int i) {
        return circuit.parts().get(i);
    }

    /** The place of the part that feeds a part; −1 for the battery. */
    public int feeding(int i) {
        return feeding[i];
    }

    /** The resistance of a part, out and back, as it works. */
    public double ohms(int i) {
        return understood[i].ohms();
    }

    /** The least resistance of a part to be reckoned with in a short circuit: joints, contacts and switches perfect, copper cold. */
    public double leastOhms(int i) {
        return understood[i].leastOhms();
    }

    /** The resistance of the trigger wire of a switching device, out and back. */
    public double triggerOhms(int i) {
        return understood[i].triggerOhms();
    }

    /** The place its trigger is taken from; −1 if it takes none. */
    public int trigger(int i) {
        Switching switching = switching(i);
        return switching == null || !switching.isTriggered() ? -1 : circuit.indexOf(part(i).triggeredFrom());
    }

    public Supply supply() {
        return (Supply) understood[0].figures();
    }

    /** The panel at that place, or null. */
    public Panel panel(int i) {
        return understood[i].figures() instanceof Panel panel ? panel : null;
    }

    /** The device at that place, or null. */
    public Protection protection(int i) {
        return understood[i].figures() instanceof Protection protection ? protection : null;
    }

    /** The isolating switch at that place, or null. */
    public Isolator isolator(int i) {
        return understood[i].figures() instanceof Isolator isolator ? isolator : null;
    }

    /** The switching device at that place, or null. */
    public Switching switching(int i) {
        return understood[i].figures() instanceof Switching switching ? switching : null;
    }

    /** The conductor at that place, or null. */
    public Conductor conductor(int i) {
        return understood[i].figures() instanceof Conductor conductor ? conductor : null;
    }

    /** The joints at that place, or null. */
    public Joint joint(int i) {
        return understood[i].figures() instanceof Joint joint ? joint : null;
    }

    /** The load at that place, or null. */
    public Load load(int i) {
        return understood[i].figures() instanceof Load load ? load : null;
    }

    /** The nearest device before a part, itself not counted; −1 if there is none. */
    public int deviceBefore(int i) {
        int at = feeding[i];
        while (at >= 0 && protection(at) == null) {
            at = feeding[at];
        }
        return at;
    }

    /** Whether one part lies on the way from the battery to another, or is that other. */
    public boolean isOnTheWay(int part, int to) {
        int at = to;
        while (at > part) {
            at = feeding[at];
        }
        return at == part;
    }
}
