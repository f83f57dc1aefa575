package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** Battery, converter and device in a row: watts and amperes on both sides of the converter, read from the device backward. */
final class LabelToAmperesChain implements Drawing {
    private static final double LINE = 100;
    private static final double BATTERY_END = 52;
    private static final double CONVERTER_START = 128;
    private static final double CONVERTER_END = 200;
    private static final double DEVICE_START = 286;

    @Override
    public String name() {
        return "label-to-amperes-chain";
    }

    @Override
    public List<String> takes() {
        return List.of("device-voltage", "device-current", "efficiency", "supply-voltage");
    }

    @Override
    public Picture draw(Given given) {
        given.number("device-voltage", Units.VOLT);
        given.number("device-current", Units.AMPERE);
        given.number("efficiency", Units.PERCENT);
        given.number("supply-voltage", Units.VOLT);
        Quantity devicePower = result(given, "device-power");
        Quantity inputPower = result(given, "input-power");
        Quantity current = result(given, "current");
        Quantity heat = Quantity.of(inputPower.value() - devicePower.value(), Units.WATT);
        Canvas canvas = new Canvas();
        boxes(canvas, given);
        flow(canvas, BATTERY_END, CONVERTER_START, current.text(3), inputPower.text(3));
        flow(canvas, CONVERTER_END, DEVICE_START, given.label("device-voltage") + "\u00a0×\u00a0" + given.label("device-current"), devicePower.text(3));
        heat(canvas, heat.text(2));
        readingOrder(canvas);
        return new Picture(
                "From the label of a device to the amperes in the cable",
                "A chain of battery, converter and device. Between device and converter stand " + given.text("device-voltage") + " times "
                        + given.text("device-current") + ", " + devicePower.text(3) + ". The converter loses " + heat.text(2)
                        + " as heat. Between converter and battery stand " + inputPower.text(3) + " and " + current.text(3)
                        + ". An arrow says to read from the device to the battery.",
                canvas,
                Picture.WIDTH,
                248);
    }

    private static Quantity result(Given given, String key) {
        return Computed.by("device-current")
                .with("device-voltage", given.text("device-voltage"))
                .with("device-current", given.text("device-current"))
                .with("efficiency", given.text("efficiency"))
                .with("supply-voltage", given.text("supply-voltage"))
                .result(key, key.equals("current") ? Units.AMPERE : Units.WATT);
    }

    private static void boxes(Canvas canvas, Given given) {
        canvas.rectangle(Style.BOX, 4, LINE - 24, BATTERY_END - 4, 48);
        canvas.rectangle(Style.SOLID, 10, LINE - 30, 10, 6);
        canvas.rectangle(Style.SOLID, BATTERY_END - 16, LINE - 30, 10, 6);
        canvas.text(15, LINE - 8, Anchor.MIDDLE, Lettering.STRONG, "−");
        canvas.text(BATTERY_END - 11, LINE - 8, Anchor.MIDDLE, Lettering.STRONG, "+");
        words(canvas, BATTERY_END / 2 + 2, "battery", given.label("supply-voltage"));
        canvas.rectangle(Style.BOX, CONVERTER_START, LINE - 34, CONVERTER_END - CONVERTER_START, 68);
        canvas.line(Style.INK, CONVERTER_START, LINE + 34, CONVERTER_END, LINE - 34);
        words(canvas, (CONVERTER_START + CONVERTER_END) / 2, "converter", given.label("efficiency"));
        canvas.rectangle(Style.BOX, DEVICE_START, LINE - 28, 30, 56);
        canvas.rectangle(Style.SYMBOL, DEVICE_START + 5, LINE - 21, 20, 36);
        canvas.text(Picture.WIDTH, LINE + 54, Anchor.END, Lettering.SMALL, "device");
    }

    private static void words(Canvas canvas, double x, String name, String figure) {
        canvas.text(x, LINE + 54, Anchor.MIDDLE, Lettering.SMALL, name);
        canvas.text(x, LINE + 71, Anchor.MIDDLE, Lettering.SMALL, figure);
    }

    private static void flow(Canvas canvas, double from, double to, String above, String below) {
        canvas.line(Style.ACCENT, from, LINE, to - 9, LINE);
        canvas.arrowHead(Style.SOLID_ACCENT, to - 4, LINE, 1, 0);
        double middle = (from + to) / 2;
        canvas.text(middle, LINE - 9, Anchor.MIDDLE, Lettering.SMALL, above);
        canvas.text(middle, LINE + 22, Anchor.MIDDLE, Lettering.SMALL_STRONG, below);
    }

    private static void heat(Canvas canvas, String watts) {
        double x = (CONVERTER_START + CONVERTER_END) / 2;
        canvas.line(Style.INK, x, LINE - 36, x, 34);
        canvas.arrowHead(Style.SOLID, x, 24, 0, -1);
        canvas.text(x, 15, Anchor.MIDDLE, Lettering.SMALL, "heat " + watts);
    }

    private static void readingOrder(Canvas canvas) {
        double y = 204;
        canvas.path(Style.INK, new Outline().move(DEVICE_START, y).line(40, y));
        canvas.arrowHead(Style.SOLID, 34, y, -1, 0);
        double[] places = {(CONVERTER_END + DEVICE_START) / 2, (CONVERTER_START + CONVERTER_END) / 2, (BATTERY_END + CONVERTER_START) / 2};
        for (int i = 0; i < places.length; i++) {
            canvas.circle(Style.SYMBOL, places[i], y, 13);
            canvas.text(places[i], y + 6, Anchor.MIDDLE, Lettering.STRONG, Integer.toString(i + 1));
        }
        canvas.text(places[1], y + 36, Anchor.MIDDLE, Lettering.SMALL, "read this way");
    }
}
