package loomwright.circuit.page;

import loomwright.circuit.Node;
import loomwright.circuit.Part;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Outline;
import loomwright.picture.Style;
import loomwright.picture.Symbol;

/**
 * The lines and the symbol of one row of the drawing. One line stands for both conductors, out and back; two short strokes say so at every run,
 * as the conventions of IEC 60617 have it. Lines run on below the row; the style sheet cuts them off, so that a row may be as high as its words.
 */
final class PlanRow {
    static final int HEIGHT = 52;
    private static final int STEP = 26;
    private static final int FIRST = 20;
    /** More columns than this are drawn closer together. */
    private static final int WIDE_COLUMNS = 5;
    private static final int JOIN = 6;
    private static final int MIDDLE = 28;
    private static final int FAR_BELOW = 2000;

    private final Branching branching;
    private final Canvas canvas = new Canvas();
    private final double step;

    private PlanRow(Branching branching) {
        this.branching = branching;
        int deepest = branching.deepest();
        this.step = deepest <= WIDE_COLUMNS ? STEP : (double) STEP * WIDE_COLUMNS / deepest;
    }

    static String svg(Branching branching, Node node) {
        PlanRow row = new PlanRow(branching);
        row.lines(node);
        row.symbol(node.part(), row.x(node));
        int width = (int) Math.ceil(row.x(node)) + 26;
        return "<svg class=\"drawing\" aria-hidden=\"true\" focusable=\"false\" width=\"" + width + "\" height=\"" + HEIGHT + "\">"
                + row.canvas.body() + "</svg>";
    }

    private double x(Node node) {
        return FIRST + step * branching.column(node);
    }

    private void lines(Node node) {
        double x = x(node);
        if (branching.isBranch(node)) {
            double trunk = x(node.parent());
            canvas.path(Style.ACCENT, new Outline().move(trunk, JOIN).line(x, JOIN).line(x, MIDDLE));
            line(trunk, 0, branching.hasBranchBelow(node) ? FAR_BELOW : JOIN);
            canvas.circle(Style.SOLID_ACCENT, trunk, JOIN, 4);
        } else if (node.parent() != null) {
            line(x, 0, MIDDLE);
        }
        if (branching.feedsAny(node)) {
            line(x, MIDDLE, FAR_BELOW);
        }
        trunksBeside(node);
    }

    /** The trunks of branches that still follow pass by on the left. */
    private void trunksBeside(Node node) {
        Node at = branching.isBranch(node) ? node.parent() : node;
        while (at != null) {
            if (branching.isBranch(at) && branching.hasBranchBelow(at)) {
                line(x(at.parent()), 0, FAR_BELOW);
            }
            at = at.parent();
        }
    }

    private void line(double x, double from, double to) {
        canvas.line(Style.ACCENT, x, from, x, to);
    }

    private void symbol(Part part, double x) {
        switch (part.kind()) {
            case SUPPLY -> Symbol.BATTERY.draw(canvas, x, MIDDLE, Heading.SOUTH);
            case PANEL -> canvas.rectangle(Style.SOLID, x - 16, MIDDLE - 4, 32, 8);
            case PROTECTION -> device(part).draw(canvas, x, MIDDLE, Heading.SOUTH);
            case ISOLATOR -> Symbol.SWITCH_OPEN.draw(canvas, x, MIDDLE, Heading.SOUTH);
            case SWITCH -> switching(part, x);
            case CONDUCTOR -> {
                canvas.line(Style.INK, x - 8, MIDDLE + 2, x + 8, MIDDLE - 8);
                canvas.line(Style.INK, x - 8, MIDDLE + 9, x + 8, MIDDLE - 1);
            }
            case JOINT -> {
                canvas.circle(Style.SYMBOL, x, MIDDLE - 7, 4);
                canvas.circle(Style.SYMBOL, x, MIDDLE + 7, 4);
            }
            case SOURCE -> Symbol.CONVERTER.draw(canvas, x, MIDDLE, Heading.SOUTH);
            case LOAD -> load(part).draw(canvas, x, MIDDLE, Heading.SOUTH);
        }
    }

    private static Symbol device(Part part) {
        return part.text("device").equals("marine-breaker") ? Symbol.BREAKER : Symbol.FUSE_LINK;
    }

    private void switching(Part part, double x) {
        String device = part.text("switching");
        if (device.equals("solid-state")) {
            canvas.rectangle(Style.SYMBOL, x - 17, MIDDLE - 20, 34, 40);
        }
        (device.equals("manual") ? Symbol.SWITCH_OPEN : Symbol.MAKE_CONTACT).draw(canvas, x, MIDDLE, Heading.SOUTH);
        if (device.equals("relay")) {
            canvas.rectangle(Style.SYMBOL, x - 20, MIDDLE - 6, 9, 12);
        }
    }

    private static Symbol load(Part part) {
        if (!part.text("start-current").isEmpty()) {
            return Symbol.MOTOR;
        }
        return part.text("load-kind").equals("resistive") ? Symbol.RESISTOR : Symbol.CONVERTER;
    }
}
