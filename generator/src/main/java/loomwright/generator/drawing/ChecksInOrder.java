package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The checks of one circuit in the order of the job, each with the figure it hands on. */
final class ChecksInOrder implements Drawing {
    private static final double LEFT = 6;
    private static final double WIDTH = 308;
    private static final double HEIGHT = 50;
    private static final double PITCH = 72;

    @Override
    public String name() {
        return "checks-in-order";
    }

    @Override
    public List<String> takes() {
        return List.of(
                "accessory-current", "pair-current", "panel-now", "panel-limit", "size", "cut", "warmth", "fuse", "distance", "short-circuit",
                "breaking-capacity", "battery", "test-current", "parts");
    }

    @Override
    public Picture draw(Given given) {
        for (String amperes : List.of("accessory-current", "pair-current", "panel-now", "panel-limit", "fuse", "short-circuit", "breaking-capacity", "test-current")) {
            given.number(amperes, Units.AMPERE);
        }
        given.number("size", Units.SQUARE_MILLIMETRE);
        given.number("cut", Units.METRE);
        given.number("distance", Units.METRE);
        given.number("battery", Units.VOLT);
        given.number("parts", Units.MILLIOHM);
        List<String[]> checks = List.of(
                new String[] {"What will it draw?", given.label("accessory-current") + " and " + given.label("pair-current")},
                new String[] {"Where to tap in?", panel(given)},
                new String[] {"What size?", given.label("size") + ", " + drop(given) + " lost"},
                new String[] {"Which fuse-link?", fuse(given)},
                new String[] {"How near the battery?", place(given)},
                new String[] {"Can it break a short circuit?", breaking(given)},
                new String[] {"What will the meter show?", reading(given)});
        Canvas canvas = new Canvas();
        StringBuilder words = new StringBuilder("Seven boxes from top to bottom, joined by arrows.");
        for (int i = 0; i < checks.size(); i++) {
            box(canvas, 4 + i * PITCH, checks.get(i), i < checks.size() - 1);
            words.append(' ').append(checks.get(i)[0]).append(' ').append(checks.get(i)[1].replace('\u00a0', ' ')).append('.');
        }
        return new Picture("The checks in the order of the job", words.toString(), canvas, Picture.WIDTH, 8 + checks.size() * PITCH - 18);
    }

    private static void box(Canvas canvas, double top, String[] check, boolean more) {
        canvas.rectangle(Style.BOX, LEFT, top, WIDTH, HEIGHT);
        canvas.text(LEFT + 10, top + 20, Anchor.START, Lettering.SMALL_STRONG, check[0]);
        canvas.text(LEFT + 10, top + 40, Anchor.START, Lettering.SMALL, check[1]);
        if (more) {
            canvas.line(Style.ACCENT, LEFT + WIDTH / 2, top + HEIGHT, LEFT + WIDTH / 2, top + PITCH - 10);
            canvas.arrowHead(Style.SOLID_ACCENT, LEFT + WIDTH / 2, top + PITCH, 0, 1);
        }
    }

    private static String panel(Given given) {
        Quantity both = Quantity.of(
                given.number("accessory-current", Units.AMPERE) + given.number("pair-current", Units.AMPERE), Units.AMPERE);
        Quantity after = Computed.by("panel-headroom")
                .with("way-1-current", given.text("panel-now"))
                .with("new-current", both.value(), Units.AMPERE)
                .with("panel-limit", given.text("panel-limit"))
                .result("current-after", Units.AMPERE);
        boolean fits = after.value() <= given.number("panel-limit", Units.AMPERE);
        return after.text(3) + " on " + given.label("panel-limit") + (fits ? ": it fits" : ": own feed");
    }

    private static String drop(Given given) {
        return Computed.by("voltage-drop")
                .with("current", given.text("accessory-current"))
                .with("route-length", given.text("cut"))
                .with("size", given.text("size"))
                .with("temperature", "20 °C")
                .result("drop", Units.VOLT)
                .text(3);
    }

    private static String fuse(Given given) {
        Computed choice = Computed.by("fuse-choice").with("design-current", given.text("accessory-current")).with("size", given.text("size"))
                .with("ambient", given.number("warmth", Units.CELSIUS), Units.CELSIUS);
        return given.label("fuse") + ", between " + choice.result("least-rating", Units.AMPERE).text(3) + " and "
                + choice.result("highest-rating", Units.AMPERE).text(3);
    }

    private static String place(Given given) {
        Quantity limit = Computed.by("fuse-place").with("distance", given.text("distance")).result("limit", Units.METRE);
        return given.label("distance") + ", " + limit.text(3) + " allowed";
    }

    private static String breaking(Given given) {
        return given.label("short-circuit") + " against " + given.label("breaking-capacity");
    }

    private static String reading(Given given) {
        Quantity expected = Computed.by("expected-reading")
                .with("voltage-at-supply", given.text("battery"))
                .with("current", given.text("test-current"))
                .with("size", given.text("size"))
                .with("route-length", given.text("cut"))
                .with("parts-resistance", given.text("parts"))
                .with("temperature", "20 °C")
                .result("expected", Units.VOLT);
        return expected.text(4) + " at " + given.label("test-current");
    }
}
