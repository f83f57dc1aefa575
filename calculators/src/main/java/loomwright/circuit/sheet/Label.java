package loomwright.circuit.sheet;

import java.util.ArrayList;
import java.util.List;
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
    static final int NONE = -1;

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
        Part run = installation.part(i);
        String size = installation.conductor(i).size().text();
        addNear(labels, run, designations, true, size, installation.feeding(i), next(installation, i));
        addFar(labels, run, designations, true, size, installation.feeding(i), next(installation, i));
        Return back = new Return(installation, designations, i);
        if (!back.goesOnBefore()) {
            addNear(labels, run, designations, false, size, back.before(), back.behind());
        }
        if (!back.goesOnBehind()) {
            addFar(labels, run, designations, false, size, back.before(), back.behind());
        }
    }

    private static void addNear(List<Label> labels, Part run, Designations designations, boolean positive, String size, int near, int far) {
        labels.add(new Label(
                run.id(), pole(positive) + designations.end(near, positive, true),
                designations.conductor(run.id(), positive) + ", " + size + " to " + designations.end(far, positive, false)));
    }

    private static void addFar(List<Label> labels, Part run, Designations designations, boolean positive, String size, int near, int far) {
        labels.add(new Label(
                run.id(), pole(positive) + designations.end(far, positive, true),
                designations.conductor(run.id(), positive) + ", " + size + " from " + designations.end(near, positive, false)));
    }

    private static String pole(boolean positive) {
        return (positive ? "+" : "\u2212") + " conductor, end at ";
    }

    /** The first part a part feeds; −1 if it feeds none. */
    private static int next(Installation installation, int part) {
        for (int i = part + 1; i < installation.size(); i++) {
            if (installation.feeding(i) == part) {
                return i;
            }
        }
        return NONE;
    }

    /**
     * The negative conductor of a run. No device stands in it: it leads from the negative conductor, panel or battery before, and past the
     * devices behind. One wire may serve runs that follow each other; then it has no ends between them.
     */
    private record Return(Installation installation, Designations designations, int run) {
        boolean goesOnBefore() {
            return isSameWire(past(installation.feeding(run), true));
        }

        boolean goesOnBehind() {
            return isSameWire(past(next(installation, run), false));
        }

        int before() {
            int at = past(installation.feeding(run), true);
            while (isSameWire(at)) {
                at = past(installation.feeding(at), true);
            }
            return at;
        }

        int behind() {
            int at = past(next(installation, run), false);
            while (isSameWire(at)) {
                at = past(next(installation, at), false);
            }
            return at;
        }

        /** From a part on, past all that stands in the positive only. */
        private int past(int from, boolean towardsBattery) {
            int at = from;
            while (at >= 0 && isInPositiveOnly(installation.part(at).kind())) {
                at = towardsBattery ? installation.feeding(at) : next(installation, at);
            }
            return at;
        }

        private static boolean isInPositiveOnly(PartKind kind) {
            return kind == PartKind.PROTECTION || kind == PartKind.SWITCH || kind == PartKind.ISOLATOR || kind == PartKind.JOINT;
        }

        private boolean isSameWire(int part) {
            return part >= 0 && installation.conductor(part) != null && number(part).equals(number(run))
                    && designations.of(installation.part(run).id()).indexOf('/') > 0;
        }

        private String number(int part) {
            return designations.conductor(installation.part(part).id(), false);
        }
    }
}
