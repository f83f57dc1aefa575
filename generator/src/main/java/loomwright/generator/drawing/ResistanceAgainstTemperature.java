package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Axis;
import loomwright.picture.Dash;
import loomwright.picture.Graph;
import loomwright.picture.Picture;
import loomwright.picture.Point;
import loomwright.picture.Style;
import loomwright.quantity.Units;

/** The resistance of copper at a temperature as a share of that at 20 °C, with the temperatures at which tables are printed. */
final class ResistanceAgainstTemperature implements Drawing {
    private static final double MOST_TABLES = 20;
    private static final double NAVY_TABLE = 25;
    private static final double NEC_TABLE = 75;

    @Override
    public String name() {
        return "resistance-against-temperature";
    }

    @Override
    public List<String> takes() {
        return List.of();
    }

    @Override
    public Picture draw(Given given) {
        Axis across = Axis.linear("Temperature of the copper (°C)", -20, 105).parts(7);
        Graph graph = new Graph(across, Axis.linear("Resistance, % of that at 20 °C", 80, 140));
        List<Point> points = new ArrayList<>();
        for (double celsius : across.samples(1, NAVY_TABLE, NEC_TABLE)) {
            points.add(new Point(celsius, percent(celsius)));
        }
        graph.line("", Style.ACCENT, Dash.NONE, points);
        graph.dot("25 °C, Navy table", NAVY_TABLE, percent(NAVY_TABLE));
        graph.dot("20 °C, most tables", MOST_TABLES, percent(MOST_TABLES));
        graph.dot("75 °C, NEC table", NEC_TABLE, percent(NEC_TABLE));
        return graph.picture(
                "Resistance of copper against its temperature",
                "A straight rising line, from minus 20 °C to 105 °C, of the resistance of copper as a share of its value at 20 °C, with dots at"
                        + " 20, 25 and 75 °C.");
    }

    private static double percent(double celsius) {
        return 100 * resistance(celsius) / resistance(MOST_TABLES);
    }

    /** The size does not matter: it falls out of the share. */
    private static double resistance(double celsius) {
        return Computed.by("conductor-resistance")
                .with("conductor", "copper-by-area")
                .with("size", "1 mm²")
                .with("length", "1 m")
                .with("temperature", celsius, Units.CELSIUS)
                .number("resistance-per-metre", Units.MILLIOHM_PER_METRE);
    }
}
