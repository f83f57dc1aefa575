package loomwright.circuit.solve;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Load;
import loomwright.circuit.Node;

/** What is on at one moment, and what the battery gives. */
public final class Situation {
    private final double sourceVolts;
    private final double sourceOhms;
    private final boolean[] drawing;
    private final Node starting;
    private final String words;

    private Situation(double sourceVolts, double sourceOhms, boolean[] drawing, Node starting, String words) {
        this.sourceVolts = sourceVolts;
        this.sourceOhms = sourceOhms;
        this.drawing = drawing;
        this.starting = starting;
        this.words = words;
    }

    /** The heaviest situations at a voltage: all loads marked together, with each of those marked alone in turn. */
    public static List<Situation> heaviest(Circuit circuit, double sourceVolts, double sourceOhms) {
        List<Situation> situations = new ArrayList<>();
        for (Node node : circuit.nodes()) {
            if (node.figures() instanceof Load load && !load.together()) {
                boolean[] drawing = together(circuit);
                drawing[node.order()] = true;
                situations.add(new Situation(sourceVolts, sourceOhms, drawing, null, "all loads marked together and " + node.title()));
            }
        }
        if (situations.isEmpty()) {
            situations.add(new Situation(sourceVolts, sourceOhms, together(circuit), null, "all loads"));
        }
        return situations;
    }

    /** A load at the moment of its start, with all marked together on. */
    public static Situation start(Circuit circuit, Node load, double sourceVolts) {
        boolean[] drawing = together(circuit);
        drawing[load.order()] = true;
        return new Situation(sourceVolts, 0, drawing, load, load.title() + " starting while the others are on");
    }

    /** Only what draws all the time: triggers and standing currents. */
    public static Situation idle(Circuit circuit, double sourceVolts, double sourceOhms) {
        return new Situation(sourceVolts, sourceOhms, new boolean[circuit.nodes().size()], null, "no load");
    }

    /** One load alone. */
    public static Situation only(Circuit circuit, Node load, double sourceVolts, double sourceOhms) {
        boolean[] drawing = new boolean[circuit.nodes().size()];
        drawing[load.order()] = true;
        return new Situation(sourceVolts, sourceOhms, drawing, null, load.title() + " alone");
    }

    private static boolean[] together(Circuit circuit) {
        boolean[] drawing = new boolean[circuit.nodes().size()];
        for (Node node : circuit.nodes()) {
            drawing[node.order()] = node.figures() instanceof Load load && load.together();
        }
        return drawing;
    }

    /** The voltage of the battery; behind its inside resistance if there is any. */
    public double sourceVolts() {
        return sourceVolts;
    }

    /** The inside resistance of the battery; 0 where the voltage holds at its terminals. */
    public double sourceOhms() {
        return sourceOhms;
    }

    /** Whether a load draws. */
    public boolean isDrawing(Node node) {
        return drawing[node.order()];
    }

    /** Whether no load draws. */
    boolean isIdle() {
        for (boolean one : drawing) {
            if (one) {
                return false;
            }
        }
        return true;
    }

    /** The load that is just starting; null if none is. */
    public Node starting() {
        return starting;
    }

    /** What is on, for a sentence. */
    public String words() {
        return words;
    }

    @Override
    public String toString() {
        return words;
    }
}
