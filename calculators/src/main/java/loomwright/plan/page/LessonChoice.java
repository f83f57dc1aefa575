package loomwright.plan.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Load;
import loomwright.circuit.Node;
import loomwright.circuit.PartKind;
import loomwright.plan.Plan;

/** The four to six lessons that matter for a job. */
final class LessonChoice {
    private LessonChoice() {}

    static List<String> of(Plan plan) {
        boolean switched = false;
        boolean outlets = false;
        for (Node node : plan.circuit().nodes()) {
            switched |= node.kind() == PartKind.SWITCH;
            outlets |= node.figures() instanceof Load load && load.ports() != null || node.title().startsWith("12 V outlet");
        }
        List<String> keys = new ArrayList<>(List.of("01-what-can-hurt-you", "10-fuse-links-and-breakers"));
        if (switched) {
            keys.add("11-switching");
        }
        if (outlets) {
            keys.add("12-outlets");
        }
        keys.add("13-joints");
        keys.add("16-proving-it");
        return keys;
    }
}
