package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Finds room for labels among lines and other labels. */
final class LabelPlacer {
    private static final double AIR = 2;
    private static final int TEXT_COST = 100;

    private final Canvas canvas;
    private final Box room;
    private final List<Segment> lines = new ArrayList<>();

    /** Labels are kept inside {@code room}. */
    LabelPlacer(Canvas canvas, Box room) {
        this.canvas = canvas;
        this.room = room;
    }

    /** A line that labels should not lie over. */
    void avoid(Segment line) {
        lines.add(line);
    }

    /** Writes the label at the best of its possible places, the first of them if several are as good. */
    void place(List<Label> candidates) {
        Label best = null;
        int bestCost = Integer.MAX_VALUE;
        for (Label candidate : candidates) {
            int cost = cost(candidate.box().grown(AIR));
            if (cost < bestCost) {
                best = candidate;
                bestCost = cost;
            }
        }
        Box box = best.box();
        canvas.rectangle(Style.PAPER, box.left() - AIR, box.top(), box.width() + 2 * AIR, box.height());
        canvas.text(best);
    }

    private int cost(Box box) {
        int cost = box.inside(room) ? 0 : TEXT_COST;
        for (Box text : canvas.texts()) {
            cost += text.overlaps(box) ? TEXT_COST : 0;
        }
        for (Segment line : lines) {
            cost += line.crosses(box) ? 1 : 0;
        }
        return cost;
    }
}
