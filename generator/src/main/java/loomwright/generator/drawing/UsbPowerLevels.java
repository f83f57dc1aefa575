package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Anchor;
import loomwright.picture.Canvas;
import loomwright.picture.FigureTable;
import loomwright.picture.Lettering;
import loomwright.picture.Outline;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/** The voltages of USB Power Delivery as a staircase of watts. */
final class UsbPowerLevels implements Drawing {
    private static final double GROUND = 236;
    private static final double TALLEST = 180;
    private static final double LEFT = 4;
    private static final double TREAD = 62;

    private record Step(Quantity voltage, String current, Quantity power) {}

    @Override
    public String name() {
        return "usb-power-levels";
    }

    @Override
    public List<String> takes() {
        return List.of("usual-current", "marked-cable-current");
    }

    @Override
    public Picture draw(Given given) {
        given.rising(Units.AMPERE, "usual-current", "marked-cable-current");
        List<Step> steps = steps(given);
        double most = steps.get(steps.size() - 1).power().value();
        Canvas canvas = new Canvas();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            boolean last = i == steps.size() - 1;
            double left = LEFT + i * TREAD;
            double height = TALLEST * step.power().value() / most;
            canvas.rectangle(last ? Style.HATCH : Style.BOX, left, GROUND - height, TREAD, height);
            double middle = left + TREAD / 2;
            canvas.text(middle, GROUND - height - 8, Anchor.MIDDLE, Lettering.STRONG, step.power().text(3));
            canvas.text(middle, GROUND + 18, Anchor.MIDDLE, Lettering.SMALL, step.voltage().text());
            canvas.text(middle, GROUND + 36, Anchor.MIDDLE, Lettering.SMALL, "×\u00a0" + step.current());
            rows.add(List.of(step.voltage().text(), step.current(), step.power().text(3)));
        }
        double end = LEFT + steps.size() * TREAD;
        canvas.text(end, 20, Anchor.END, Lettering.SMALL, given.label("marked-cable-current") + "\u00a0cable");
        canvas.path(Style.INK, new Outline().move(LEFT, GROUND).line(end, GROUND));
        return new Picture(
                        "Steps of USB Power Delivery",
                        "A staircase of watts. Its steps are volts times amperes: each of the first four at " + given.text("usual-current")
                                + ", and a last one, drawn with a broken outline, at " + given.text("marked-cable-current") + ".",
                        canvas,
                        Picture.WIDTH,
                        GROUND + 46)
                .with(new FigureTable(List.of("Voltage", "Current", "Power"), rows));
    }

    private static List<Step> steps(Given given) {
        List<Step> steps = new ArrayList<>();
        for (Row row : PublishedTables.usbPdPowerRules().rows()) {
            Step usual = step(given, row, "usual-current");
            boolean enough = usual.power().value() >= row.quantity("power-to").value();
            steps.add(enough ? usual : step(given, row, "marked-cable-current"));
        }
        return steps;
    }

    private static Step step(Given given, Row row, String current) {
        Quantity voltage = row.quantity("voltage");
        Quantity power = Computed.by("ohm-and-power")
                .with("voltage", voltage.text())
                .with("current", given.text(current))
                .result("power", Units.WATT);
        return new Step(voltage, given.label(current), power);
    }
}
