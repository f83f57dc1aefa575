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

    /** Places for a label round a point that takes {@code off} to each side, the best first. */
    static List<Label> around(double x, double y, double off, String text) {
        return List.of(
                label(x - off, y - off, Anchor.END, text),
                label(x + off, y + off + 10, Anchor.START, text),
                label(x + off, y - off, Anchor.START, text),
                label(x - off, y + off + 10, Anchor.END, text),
                label(x + off, y + off + 27, Anchor.START, text),
                label(x - off, y - off - 17, Anchor.END, text),
                label(x, y - off - 6, Anchor.MIDDLE, text),
                label(x, y + off + 14, Anchor.MIDDLE, text),
                label(x - off - 4, y + 5, Anchor.END, text),
                label(x + off + 4, y + 5, Anchor.START, text));
    }

    static Label label(double x, double y, Anchor anchor, String text) {
        return new Label(x, y, anchor, GraphFrame.LETTERING, text);
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
