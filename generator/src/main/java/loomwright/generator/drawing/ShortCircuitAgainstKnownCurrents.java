package loomwright.generator.drawing;

import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Bars;
import loomwright.picture.Bars.Bar;
import loomwright.picture.Bars.Part;
import loomwright.picture.Picture;
import loomwright.picture.Style;
import loomwright.quantity.NumberText;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;

/** What a battery drives through a short circuit, beside an outlet and two welding currents, on one scale. */
final class ShortCircuitAgainstKnownCurrents implements Drawing {
    @Override
    public String name() {
        return "short-circuit-against-known-currents";
    }

    @Override
    public List<String> takes() {
        return List.of("outlet", "stick-welding", "arc-gouging", "battery-voltage");
    }

    @Override
    public Picture draw(Given given) {
        given.rising(Units.AMPERE, "outlet", "stick-welding", "arc-gouging");
        Quantity lowest = shortCircuit(given, "lowest-current");
        Quantity highest = shortCircuit(given, "highest-current");
        List<Bar> bars = List.of(
                known(given, "12 V outlet", "outlet"),
                known(given, "welding with a stick", "stick-welding"),
                known(given, "cutting metal with an arc", "arc-gouging"),
                computed("battery, short circuit: lowest", lowest),
                computed("battery, short circuit: highest", highest));
        return new Bars("Where it flows", Axis.fromZero("Current (A)", highest.value()), bars)
                .picture(
                        "A short circuit beside other currents",
                        "Five bars of amperes on one scale. A 12 V outlet with " + given.text("outlet") + " is hardly to be seen, welding with "
                                + given.text("stick-welding") + " and cutting with " + given.text("arc-gouging")
                                + " are short. A short circuit of a 100 Ah lead-acid battery reaches from " + figure(lowest) + " to "
                                + figure(highest) + ".");
    }

    private static Quantity shortCircuit(Given given, String result) {
        given.number("battery-voltage", Units.VOLT);
        return Computed.by("fault-current")
                .with("battery", "lead-acid-100-ah")
                .with("highest-voltage", given.text("battery-voltage"))
                .with("lowest-voltage", given.text("battery-voltage"))
                .result(result, Units.AMPERE);
    }

    private static Bar known(Given given, String name, String key) {
        return new Bar(name, given.label(key), List.of(new Part("", given.number(key, Units.AMPERE), Style.SOLID)));
    }

    private static Bar computed(String name, Quantity current) {
        return new Bar(name, figure(current), List.of(new Part("", current.value(), Style.SOLID_ACCENT)));
    }

    private static String figure(Quantity current) {
        return NumberText.fixed(current.value(), 0) + "\u00a0A";
    }
}
