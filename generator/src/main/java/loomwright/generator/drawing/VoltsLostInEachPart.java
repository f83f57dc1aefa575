package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Bars;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** The millivolts that each part of the way to an outlet takes, and all of them together. */
final class VoltsLostInEachPart implements Drawing {
    private static final List<String> PARTS = List.of("breaker", "relay", "fuse-link", "joints");

    @Override
    public String name() {
        return "volts-lost-in-each-part";
    }

    @Override
    public List<String> takes() {
        return List.of("current", "conductor", "size", "route-length", "breaker", "relay", "fuse-link", "joints");
    }

    @Override
    public Picture draw(Given given) {
        given.number("current", Units.AMPERE);
        given.quantity("size", Units.SQUARE_MILLIMETRE);
        given.number("route-length", Units.METRE);
        List<String> names = new ArrayList<>();
        List<Double> losses = new ArrayList<>();
        for (String part : PARTS) {
            given.number(part, Units.MILLIOHM);
            names.add(part.equals("joints") ? "links and joints" : part);
            losses.add(Computed.by("ohm-and-power")
                    .with("current", given.text("current"))
                    .with("resistance", given.text(part))
                    .number("voltage", Units.MILLIVOLT));
        }
        double wire = oneConductor(given);
        names.add(2, "wire out");
        losses.add(2, wire);
        names.add("wire back");
        losses.add(wire);
        return bars(names, losses)
                .picture(
                        "Millivolts lost in each part of the way",
                        "Level bars of the millivolts lost at " + given.text("current") + ": " + described(names, losses) + ". The last bar, all"
                                + " together, is as long as the others end to end.");
    }

    /** With the route counted once, as if it were all the wire there is: the drop of one conductor. */
    private static double oneConductor(Given given) {
        return Computed.by("voltage-drop")
                .with("current", given.text("current"))
                .with("route-length", given.text("route-length"))
                .with("length-counts", "out-and-back")
                .with("method", "table")
                .with("conductor", given.option("conductor", "voltage-drop"))
                .with("size", given.text("size"))
                .with("temperature", "20 °C")
                .number("drop", Units.MILLIVOLT);
    }

    private static Bars bars(List<String> names, List<Double> losses) {
        List<Bars.Bar> bars = new ArrayList<>();
        List<Bars.Part> all = new ArrayList<>();
        double sum = 0;
        for (int i = 0; i < names.size(); i++) {
            Style style = names.get(i).startsWith("wire") ? Style.SOLID_ACCENT : Style.SOLID;
            bars.add(new Bars.Bar(names.get(i), millivolts(losses.get(i)), List.of(new Bars.Part("", losses.get(i), style))));
            all.add(new Bars.Part("", losses.get(i), style));
            sum += losses.get(i);
        }
        bars.add(new Bars.Bar("all together", millivolts(sum), all));
        return new Bars("Part", Axis.fromZero("Lost (mV)", sum).parts(4), bars);
    }

    private static String described(List<String> names, List<Double> losses) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            parts.add(names.get(i) + " " + millivolts(losses.get(i)));
        }
        return String.join(", ", parts);
    }

    private static String millivolts(double value) {
        return Quantity.of(value, Units.MILLIVOLT).text(3);
    }
}
