package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** A wiring view: each part of the installation a box, below and to the right of the one that feeds it, joined by its two conductors. */
public final class Wiring {
    /**
     * A part of the installation.
     *
     * @param label what is written in its box
     * @param cable what is written beside the conductors that feed it; may be empty
     * @param feeds the parts it feeds
     */
    public record Item(String label, String cable, List<Item> feeds) {
        public static Item of(String label, String cable, Item... feeds) {
            return new Item(label, cable, List.of(feeds));
        }
    }

    private static final Lettering LETTERING = Lettering.SMALL;
    private static final double STEP = 46;
    private static final double PLUS = 22;
    private static final double MINUS = 12;
    private static final double APART = 10;
    private static final double MARGIN = 5;
    private static final double PADDING = 8;

    private final Canvas canvas = new Canvas();
    private final Schematic drawn = new Schematic(canvas);
    /** Drawn last: a conductor that runs on would hide them. */
    private final List<Point> joints = new ArrayList<>();

    private final Item root;

    public Wiring(Item root) {
        this.root = root;
    }

    public Picture picture(String title, String description) {
        double bottom = item(root, MARGIN, MARGIN);
        if (!root.feeds().isEmpty()) {
            double base = MARGIN + boxHeight(Wrap.lines(root.label(), LETTERING, Picture.WIDTH - 2 * MARGIN - 2 * PADDING)) + 17;
            drawn.sign(false, MARGIN + MINUS - 8, base).sign(true, MARGIN + PLUS + 11, base);
        }
        for (Point joint : joints) {
            drawn.junction(joint.x(), joint.y());
        }
        return new Picture(title, description, canvas, Picture.WIDTH, bottom + MARGIN);
    }

    /** Draws a box and all it feeds from {@code top} down; answers where the drawing ends. */
    private double item(Item item, double left, double top) {
        double width = Math.max(Picture.WIDTH - MARGIN - left, 60);
        List<String> words = Wrap.lines(item.label(), LETTERING, width - 2 * PADDING);
        double bottom = top + boxHeight(words);
        double wanted = LETTERING.widest(words) + 2 * PADDING;
        canvas.rectangle(Style.BOX, left, top, Math.max(wanted, STEP + PADDING), bottom - top);
        canvas.text(left + PADDING, top + PADDING + 12, Anchor.START, LETTERING, words);
        double end = bottom;
        for (int i = 0; i < item.feeds().size(); i++) {
            end = feed(item.feeds().get(i), left, bottom, end, i == item.feeds().size() - 1);
        }
        return end;
    }

    private double feed(Item item, double left, double from, double top, boolean last) {
        double childLeft = left + STEP;
        List<String> cable = Wrap.lines(item.cable(), LETTERING, Picture.WIDTH - MARGIN - childLeft);
        double cableHeight = item.cable().isEmpty() ? 0 : cable.size() * LETTERING.lineHeight();
        double boxTop = top + APART + cableHeight;
        List<String> words = Wrap.lines(item.label(), LETTERING, Picture.WIDTH - MARGIN - childLeft - 2 * PADDING);
        double middle = boxTop + boxHeight(words) / 2;
        drawn.conductor(Style.MINUS, left + MINUS, from, left + MINUS, middle + 6, childLeft, middle + 6);
        drawn.conductor(Style.PLUS, left + PLUS, from, left + PLUS, middle - 6, childLeft, middle - 6);
        if (!last) {
            joints.add(new Point(left + MINUS, middle + 6));
            joints.add(new Point(left + PLUS, middle - 6));
        }
        canvas.text(childLeft, top + APART + 11, Anchor.START, LETTERING, item.cable().isEmpty() ? List.of() : cable);
        return item(item, childLeft, boxTop);
    }

    private static double boxHeight(List<String> words) {
        return words.size() * LETTERING.lineHeight() + 2 * PADDING;
    }
}
