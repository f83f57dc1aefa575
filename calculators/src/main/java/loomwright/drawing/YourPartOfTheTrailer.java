package loomwright.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;

/** The parts of a trailer and its towing vehicle, sorted into three kinds of work. */
final class YourPartOfTheTrailer implements Drawing {
    private static final double HEIGHT = 48;
    private static final double WIDTH = 100;
    private static final double PITCH = 110;

    @Override
    public String name() {
        return "your-part-of-the-trailer";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Canvas canvas = new Canvas();
        heading(canvas, 0, "Yours, step by step");
        row(canvas, 26, Style.BOX, List.of(List.of("fuse panel,", "spare way"), List.of("switch,", "12 V cable"), List.of("12 V outlet,", "lamp, fan")));
        canvas.line(Style.INK, WIDTH, 26 + HEIGHT / 2, PITCH, 26 + HEIGHT / 2);
        canvas.line(Style.INK, PITCH + WIDTH, 26 + HEIGHT / 2, 2 * PITCH, 26 + HEIGHT / 2);
        rule(canvas, 88);
        heading(canvas, 94, "Only with the maker's papers");
        row(canvas, 120, Style.SYMBOL, List.of(List.of("battery", "terminals"), List.of("solar panel,", "controller"), List.of("towing plug,", "12 V charger")));
        rule(canvas, 182);
        heading(canvas, 188, "Stop and call");
        row(canvas, 214, Style.HATCH, List.of(List.of("mains:", "230 or 120 V"), List.of("gas, petrol", "and fuel"), List.of("inside a", "battery")));
        row(canvas, 214 + HEIGHT + 10, Style.HATCH, List.of(List.of("airbags,", "belts"), List.of("brakes and", "road lights"), List.of("engine,", "alternator")));
        return new Picture(
                "Which parts are yours",
                "Three groups of boxes. Yours, step by step: fuse panel with a spare way, switch and 12 V cable, 12 V outlet, lamp and fan, joined"
                        + " by a line. Only with the maker's papers: battery terminals, solar panel and its controller, towing plug and 12 V charger."
                        + " Stop and call, in broken outlines: mains; gas, petrol and fuel; the inside of a battery; airbags and belts; brakes and"
                        + " road lights; engine and alternator.",
                canvas,
                Picture.WIDTH,
                214 + 2 * HEIGHT + 16);
    }

    private static void heading(Canvas canvas, double top, String words) {
        canvas.text(0, top + 18, Anchor.START, Lettering.SMALL_STRONG, words);
    }

    private static void rule(Canvas canvas, double y) {
        canvas.path(Style.FAINT, new Outline().move(0, y).line(Picture.WIDTH, y));
    }

    private static void row(Canvas canvas, double top, Style style, List<List<String>> boxes) {
        for (int i = 0; i < boxes.size(); i++) {
            canvas.rectangle(style, i * PITCH, top, WIDTH, HEIGHT);
            canvas.text(i * PITCH + WIDTH / 2, top + 20, Anchor.MIDDLE, Lettering.SMALL, boxes.get(i));
        }
    }
}
