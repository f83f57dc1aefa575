package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class GraphTest {
    private static Graph graph() {
        return new Graph(Axis.linear("Length (m)", 0, 10), Axis.linear("Drop (V)", 0, 2));
    }

    private static List<Point> line(double end) {
        return List.of(new Point(0, 0), new Point(5, end / 2), new Point(10, end));
    }

    private static DrawnSvg svg(Graph graph) {
        return new DrawnSvg(graph.picture("Drop against length", "Lines.").svg("g"));
    }

    private static List<String> words(DrawnSvg svg) {
        return svg.texts().stream().map(DrawnSvg.Text::words).toList();
    }

    @Test
    void labelsAxesLinesLimitsAndMarksOnce() {
        DrawnSvg svg = svg(graph().line("thin", Style.ACCENT, Dash.NONE, line(1.5)).limit("too much", 1).upright("here", 4).dot("seen", 5, 0.75));
        for (String word : List.of("Length (m)", "Drop (V)", "thin", "too much", "here", "seen", "0.0", "2.0", "10")) {
            assertEquals(1, words(svg).stream().filter(word::equals).count(), word + " in " + words(svg));
        }
        assertEquals(List.of(), svg.textFaults());
    }

    @Test
    void aLineThatLeavesAboveIsCutOffAndLabelledThere() {
        DrawnSvg svg = svg(graph().line("steep", Style.ACCENT, Dash.NONE, line(8)));
        DrawnSvg.Text label = text(svg, "steep");
        DrawnSvg.Text highest = text(svg, "2.0");
        assertTrue(label.bottom() < highest.bottom(), "above the plot");
        List<Double> line = numbers(path(svg, "accent"));
        double left = line.get(0);
        double bottom = line.get(1);
        double endX = line.get(line.size() - 2);
        double endY = line.get(line.size() - 1);
        double rightEdge = numbers(gridLine(svg)).get(2);
        assertEquals(0.25, (endX - left) / (rightEdge - left), 1e-3, "2 V of 8 V in 10 m is reached at a quarter");
        assertTrue(endY < bottom && endY > 0, "inside the canvas");
        assertEquals(0.25, (middle(label) - left) / (rightEdge - left), 0.05, "the label stands over the end");
    }

    @Test
    void aLineThatEndsEarlyIsLabelledInsideThePlot() {
        List<Point> falling = List.of(new Point(0, 2), new Point(3, 0.5), new Point(6, 0.2));
        DrawnSvg svg = svg(graph().line("falling", Style.ACCENT, Dash.NONE, falling));
        DrawnSvg.Text label = text(svg, "falling");
        double rightEdge = numbers(gridLine(svg)).get(2);
        assertTrue(label.right() < rightEdge);
        assertEquals(0, crossings(label, numbers(path(svg, "accent"))), "the label does not lie over its own line");
    }

    @Test
    void linesDifferWithoutColour() {
        Graph graph = graph();
        for (Dash dash : Dash.values()) {
            graph.line(dash.name(), Style.INK, dash, line(1 + dash.ordinal() / 10.0));
        }
        HashSet<String> patterns = new HashSet<>();
        svg(graph).elements("path").forEach(path -> patterns.add(path.getAttribute("stroke-dasharray")));
        assertTrue(patterns.size() >= Dash.values().length, patterns.toString());
    }

    @Test
    void givesTheSameFiguresAsATable() {
        Graph graph = graph().line("thin", Style.ACCENT, Dash.NONE, line(1.5)).line("thick", Style.INK, Dash.LONG, line(0.75));
        FigureTable table = graph.picture("Drop against length", "Lines.").figures();
        assertEquals(List.of("Length (m)", "Drop (V), thin", "Drop (V), thick"), table.heads());
        assertEquals(List.of(List.of("0", "0", "0"), List.of("10", "1.5", "0.75")), table.rows());
        Graph marked = graph().line("", Style.ACCENT, Dash.NONE, line(1.5)).dot("half", 5, 0.75);
        assertEquals(List.of("5", "0.75"), marked.picture("Drop", "Lines.").figures().rows().get(1));
    }

    @Test
    void aSketchHasNoTable() {
        Graph sketch = new Graph(Axis.bare("Time", 0, 10), Axis.linear("Current (A)", 0, 2));
        assertTrue(sketch.line("", Style.ACCENT, Dash.NONE, line(1)).picture("Start", "A line.").figures().isEmpty());
    }

    @Test
    void graphsBelowEachOtherShareTheLowerAxis() {
        Picture picture = Graph.picture(
                "Two",
                "Two graphs.",
                List.of(
                        new Graph(Axis.linear("Length (m)", 0, 10), Axis.linear("Drop (mV)", 0, 2000)).line("", Style.INK, Dash.NONE, line(1500)),
                        graph().line("", Style.INK, Dash.NONE, line(1.5))));
        DrawnSvg svg = new DrawnSvg(picture.svg("g"));
        List<Element> paths = svg.elements("path").stream().filter(path -> path.getAttribute("class").equals("faint")).toList();
        assertEquals(numbers(paths.get(0)).get(0), numbers(paths.get(paths.size() - 1)).get(0), "both plots begin at one height");
        assertEquals(1, words(svg).stream().filter("Length (m)"::equals).count());
        assertEquals(List.of("10", "1500", "1.5"), picture.figures().rows().get(1));
    }

    @Property(tries = 100)
    void labelsNeverLieOverEachOther(@ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 0, max = 3) Double> ends) {
        Graph graph = graph();
        for (int i = 0; i < ends.size(); i++) {
            graph.line("2." + i + "\u00a0mm²", Style.INK, Dash.values()[i], line(ends.get(i)));
        }
        assertEquals(List.of(), svg(graph).textFaults());
    }

    private static DrawnSvg.Text text(DrawnSvg svg, String words) {
        return svg.texts().stream().filter(text -> text.words().equals(words)).findFirst().orElseThrow();
    }

    private static double middle(DrawnSvg.Text text) {
        return (text.left() + text.right()) / 2;
    }

    private static Element path(DrawnSvg svg, String classes) {
        return svg.elements("path").stream().filter(path -> path.getAttribute("class").equals(classes)).findFirst().orElseThrow();
    }

    private static Element gridLine(DrawnSvg svg) {
        return path(svg, "faint");
    }

    /** The coordinates of a path of straight pieces. */
    static List<Double> numbers(Element path) {
        List<Double> numbers = new ArrayList<>();
        for (String number : path.getAttribute("d").replaceAll("[MLZ]", " ").trim().split("\\s+")) {
            numbers.add(Double.parseDouble(number));
        }
        return numbers;
    }

    /** How many points of a finely cut line lie inside the text. */
    private static int crossings(DrawnSvg.Text text, List<Double> line) {
        int inside = 0;
        for (int i = 2; i + 1 < line.size(); i += 2) {
            for (double share = 0; share <= 1; share += 0.01) {
                double x = line.get(i - 2) + share * (line.get(i) - line.get(i - 2));
                double y = line.get(i - 1) + share * (line.get(i + 1) - line.get(i - 1));
                inside += x > text.left() && x < text.right() && y > text.top() && y < text.bottom() ? 1 : 0;
            }
        }
        return inside;
    }
}
