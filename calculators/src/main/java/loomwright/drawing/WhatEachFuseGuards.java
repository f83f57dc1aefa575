package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Heading;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Schematic;
import loomwright.picture.Style;
import loomwright.picture.Symbol;
import loomwright.quantity.Units;

/** One line from the battery to a charger: which piece of conductor a breaker or fuse-link guards, and which none does. */
final class WhatEachFuseGuards implements Drawing {
    private static final double LINE = 40;
    private static final double BRACKET = 76;
    private static final double WORDS = 88;
    private static final double BATTERY = 38;
    private static final double MAIN = 118;
    private static final double BRANCH = 218;
    private static final double PLUG = 318;
    private static final double CHARGER = 398;

    @Override
    public String name() {
        return "what-each-fuse-guards";
    }

    @Override
    public List<String> takes() {
        return List.of("main-rating", "feed-size", "branch-rating", "branch-size");
    }

    @Override
    public Picture draw(Given given) {
        given.number("main-rating", Units.AMPERE);
        given.number("branch-rating", Units.AMPERE);
        given.quantity("feed-size", Units.SQUARE_MILLIMETRE);
        given.quantity("branch-size", Units.SQUARE_MILLIMETRE);
        Canvas canvas = new Canvas();
        Schematic drawn = new Schematic(canvas);
        canvas.line(Style.WARN, LINE, BATTERY, LINE, MAIN);
        drawn.conductor(Style.PLUS, LINE, MAIN, LINE, CHARGER);
        drawn.symbol(Symbol.BATTERY, LINE, BATTERY, Heading.SOUTH);
        drawn.sign(true, LINE - 22, BATTERY + 28);
        drawn.symbol(Symbol.BREAKER, LINE, MAIN, Heading.SOUTH);
        for (double fuse : new double[] {BRANCH, PLUG}) {
            drawn.symbol(Symbol.FUSE_LINK, LINE, fuse, Heading.SOUTH);
        }
        drawn.symbol(Symbol.CONVERTER, LINE, CHARGER, Heading.SOUTH);
        strong(canvas, BATTERY, "battery");
        strong(canvas, MAIN, "breaker Q1: " + given.label("main-rating"));
        strong(canvas, BRANCH, "fuse-link F1: " + given.label("branch-rating"));
        strong(canvas, PLUG, "fuse-link in the plug, if any");
        strong(canvas, CHARGER, "charger");
        piece(canvas, BATTERY + 14, MAIN - 18, "nothing guards this piece:", "keep it as short as can be");
        piece(canvas, MAIN + 18, BRANCH - 18, "Q1 guards the short links,", given.label("feed-size"));
        piece(canvas, BRANCH + 18, PLUG - 18, "F1 guards the run to", "the bench, " + given.label("branch-size"));
        piece(canvas, PLUG + 18, CHARGER - 18, "the plug guards its", "own thin lead");
        return new Picture(
                "Which piece each fuse-link guards",
                "One line down from the battery. A short piece without protection, then breaker Q1, " + given.text("main-rating")
                        + ", which guards the links of " + given.text("feed-size") + ". Then fuse-link F1, " + given.text("branch-rating")
                        + ", which guards the run of " + given.text("branch-size")
                        + ". Then a fuse-link in the plug, which guards the thin lead of the charger.",
                canvas,
                Picture.WIDTH,
                424);
    }

    private static void strong(Canvas canvas, double y, String words) {
        canvas.text(LINE + 24, y + 5, Anchor.START, Lettering.SMALL_STRONG, words);
    }

    private static void piece(Canvas canvas, double from, double to, String first, String second) {
        canvas.path(
                Style.FAINT,
                new Outline().move(BRACKET - 8, from).line(BRACKET, from).line(BRACKET, to).line(BRACKET - 8, to));
        double middle = (from + to) / 2;
        canvas.text(WORDS, middle - 3, Anchor.START, Lettering.SMALL, first);
        canvas.text(WORDS, middle + 14, Anchor.START, Lettering.SMALL, second);
    }
}
