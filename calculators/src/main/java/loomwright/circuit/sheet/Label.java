package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Installation;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;

/**
 * One label to make.
 *
 * @param partId the part
 * @param where where it goes
 * @param text what stands on it
 */
public record Label(String partId, String where, String text) {

    /** The labels of a circuit: both ends of both conductors of each run, and one on each device, switch, panel and load. */
    public static List<Label> of(Installation installation) {
        Designations designations = Designations.of(installation.circuit());
        List<Label> labels = new ArrayList<>();
        for (int i = 1; i < installation.size(); i++) {
            Part part = installation.part(i);
            String text = designations.titled(part.id());
            switch (part.kind()) {
                case CONDUCTOR -> addRun(labels, installation, i, designations);
                case PROTECTION -> labels.add(new Label(part.id(), "on or beside it", text + ", " + installation.protection(i).rating().text()));
                case PANEL -> labels.add(new Label(part.id(), "on its lid", text + ", " + installation.panel(i).limit().text() + " in all"));
                case ISOLATOR, SWITCH, LOAD -> labels.add(new Label(part.id(), "on or beside it", text));
                case SUPPLY, JOINT -> {
                    // a battery carries its own, a joint is named by its conductors
                }
            }
        }
        return List.copyOf(labels);
    }

    private static void addRun(List<Label> labels, Installation installation, int i, Designations designations) {
        Part part = installation.part(i);
        String near = part.fedBy();
        String far = nextPart(installation.circuit(), part.id());
        String size = installation.conductor(i).size().text();
        for (boolean positive : new boolean[] {true, false}) {
            String pole = positive ? "+" : "\u2212";
            String text = designations.conductor(part.id(), positive) + ", " + size;
            labels.add(new Label(part.id(), pole + " conductor, end at " + designations.titled(near), text + " to " + reach(designations, far)));
            labels.add(new Label(part.id(), pole + " conductor, end at " + reachTitled(designations, far), text + " from " + designations.of(near)));
        }
    }

    private static String reach(Designations designations, String id) {
        return id.isEmpty() ? "its open end" : designations.of(id);
    }

    private static String reachTitled(Designations designations, String id) {
        return id.isEmpty() ? "its open end" : designations.titled(id);
    }

    /** The first part a run feeds; empty if it feeds none. */
    private static String nextPart(Circuit circuit, String id) {
        for (Part part : circuit.parts()) {
            if (part.fedBy().equals(id) && part.kind() != PartKind.SUPPLY) {
                return part.id();
            }
        }
        return "";
    }
}
