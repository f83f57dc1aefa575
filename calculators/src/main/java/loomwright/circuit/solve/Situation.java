package loomwright.circuit.solve;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Installation;
import loomwright.circuit.Load;

/**
 * What is on at one moment, and what the battery gives.
 *
 * @param sourceVolts the voltage of the battery; behind {@code sourceOhms} if there are any
 * @param sourceOhms its inside resistance; 0 where the voltage holds at its terminals
 * @param drawing for each part, whether it is a load that draws
 * @param starting the load that is just starting; −1 if none is
 * @param words what is on, for a sentence
 */
public record Situation(double sourceVolts, double sourceOhms, boolean[] drawing, int starting, String words) {

    /**
     * The heaviest situations at a voltage: all loads marked together, with each of those marked alone in turn.
     */
    public static List<Situation> heaviest(Installation installation, double sourceVolts, double sourceOhms) {
        List<Situation> situations = new ArrayList<>();
        for (int i = 0; i < installation.size(); i++) {
            Load load = installation.load(i);
            if (load != null && !load.together()) {
                boolean[] drawing = together(installation);
                drawing[i] = true;
                situations.add(new Situation(
                        sourceVolts, sourceOhms, drawing, -1,
                        "all loads marked together and " + installation.part(i).title()));
            }
        }
        if (situations.isEmpty()) {
            situations.add(new Situation(sourceVolts, sourceOhms, together(installation), -1, "all loads"));
        }
        return situations;
    }

    /** A load at the moment of its start, with all marked together on. */
    public static Situation start(Installation installation, int load, double sourceVolts) {
        boolean[] drawing = together(installation);
        drawing[load] = true;
        return new Situation(sourceVolts, 0, drawing, load, installation.part(load).title() + " starting while the others are on");
    }

    /** Only what draws all the time: triggers and standing currents. */
    public static Situation idle(Installation installation, double sourceVolts, double sourceOhms) {
        return new Situation(sourceVolts, sourceOhms, new boolean[installation.size()], -1, "no load");
    }

    /** One load alone. */
    public static Situation only(Installation installation, int load, double sourceVolts, double sourceOhms) {
        boolean[] drawing = new boolean[installation.size()];
        drawing[load] = true;
        return new Situation(sourceVolts, sourceOhms, drawing, -1, installation.part(load).title() + " alone");
    }

    /** Not by its figures: printing a number the library's way costs the page more than all of this. */
    @Override
    public String toString() {
        return words;
    }

    private static boolean[] together(Installation installation) {
        boolean[] drawing = new boolean[installation.size()];
        for (int i = 0; i < drawing.length; i++) {
            Load load = installation.load(i);
            drawing[i] = load != null && load.together();
        }
        return drawing;
    }
}
