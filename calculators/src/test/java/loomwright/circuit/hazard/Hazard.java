package loomwright.circuit.hazard;

import java.util.List;
import loomwright.worked.Verdict;

/**
 * A kind of mistake.
 *
 * @param key its name in lists
 * @param words what a reader would call it
 * @param least the mildest verdict that counts as naming it
 * @param planting plants it at every place of a circuit where it is a mistake
 * @param needs the fields it is made with, as {@code kind.field}; one that has to be left empty, as {@code kind.field?}
 */
record Hazard(String key, String words, Verdict least, Planting planting, List<String> needs) {
    /** Plants a mistake wherever it is one. */
    interface Planting {
        void plant(Wiring wiring, Plot plot);
    }

    static Hazard stop(String key, String words, Planting planting, String... needs) {
        return new Hazard(key, words, Verdict.STOP, planting, List.of(needs));
    }

    static Hazard caution(String key, String words, Planting planting, String... needs) {
        return new Hazard(key, words, Verdict.CAUTION, planting, List.of(needs));
    }

    /** Whether the program has the fields in which the mistake can be made. */
    boolean isExpressible() {
        for (String need : needs) {
            String kind = need.substring(0, need.indexOf('.'));
            String field = need.substring(kind.length() + 1);
            boolean empty = field.endsWith("?");
            if (empty ? !Bench.mayBeEmpty(kind, field.substring(0, field.length() - 1)) : !Bench.has(kind, field)) {
                return false;
            }
        }
        return true;
    }
}
