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
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.table.Table;

/** Two published tables of a lead-acid battery's voltage at rest, and one reading against them. */
final class RestingVoltageTables implements Drawing {
    @Override
    public String name() {
        return "resting-voltage-tables";
    }

    @Override
    public List<String> takes() {
        return List.of("voltage");
    }

    @Override
    public Picture draw(Given given) {
        double reading = given.number("voltage", Units.VOLT);
        Graph graph = new Graph(
                Axis.linear("State of charge (%)", 0, 100).parts(4), Axis.linear("Voltage at rest (V)", 11.4, 12.8).parts(7));
        graph.limit(given.label("voltage"), reading);
        graph.line("magazine", Style.INK, Dash.SHORT, points(PublishedTables.batteryOcvMagazine()));
        graph.line("BCI", Style.ACCENT, Dash.NONE, points(PublishedTables.batteryOcvBci()));
        return graph.picture(
                "Voltage at rest of a lead-acid battery in two tables",
                "A graph of the voltage at rest against the state of charge. Two published tables rise to about 12.65 V when full: the one credited to BCI from"
                        + " 11.89 V when empty, the magazine's from 12.15 V at a quarter. They do not lie on each other."
                        + " A level line marks a reading of " + given.text("voltage") + ".");
    }

    /** The tables run from full to empty; a line runs from left to right. */
    private static List<Point> points(Table table) {
        List<Point> points = new ArrayList<>();
        for (Row row : table.rows()) {
            points.add(0, new Point(row.quantity("charge").in(Units.PERCENT).value(), row.quantity("voltage").value()));
        }
        return points;
    }
}
