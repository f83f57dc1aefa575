package loomwright.circuit.check;

import loomwright.circuit.Node;
import loomwright.circuit.solve.Solved;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Sentence;

/** Where on the way to a part most is lost, and what to do there. */
final class Loss {
    private Loss() {}

    /**
     * What to do so that more arrives at a part, as a sentence.
     *
     * @param solved a situation that can be solved, or null: then the largest resistance counts
     * @param or what else would do, such as {@code , or less load at once}
     */
    static Sentence remedy(Node part, Solved solved, String or) {
        return Sentence.later(() -> words(part, solved, or));
    }

    private static String words(Node part, Solved solved, String or) {
        Node most = null;
        double least = 0;
        for (Node at = part; at.parent() != null; at = at.parent()) {
            double lost = at.figures().ohms() * (solved == null ? 1 : solved.amperes(at));
            if (lost > least) {
                most = at;
                least = lost;
            }
        }
        if (most == null) {
            return "Draw less at once.";
        }
        Quantity lost = Quantity.of(least, solved == null ? Units.OHM : Units.VOLT);
        return "Most on the way, " + (solved == null ? lost.in(Units.MILLIOHM) : lost).text(3) + ", is lost in " + most.title() + ": "
                + switch (most.kind()) {
                    case CONDUCTOR -> "take a thicker conductor or a shorter route";
                    case JOINT -> "make the joint anew";
                    default -> "measure its resistance, or take one of less";
                } + " there" + or + ".";
    }
}
