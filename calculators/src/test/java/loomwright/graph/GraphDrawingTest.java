package loomwright.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.picture.Picture;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Where axes, numbers, lines and the marked point stand. The spans are worked by hand; coordinates are written to a hundredth. */
class GraphDrawingTest {
    private static final double WRITTEN = 0.011;
    private static final Map<String, String> BENCH = Map.of(
            "current", "10 A", "route-length", "4.2 m", "length-counts", "one-way", "conductor", "iso-6722-1", "size", "2.5 mm²", "temperature", "20 °C");
    private static final Map<String, String> BATTERY = Map.of("chemistry", "lifepo4", "capacity", "100 Ah", "load-current", "5 A", "usable-depth", "80 %");
    private static final Map<String, String> SWITCH = Map.of(
            "current", "10 A", "voltage-drop", "1.2 V", "junction-to-case", "1.3", "case-to-sink", "0.1", "sink-to-air", "1.0", "junction-limit", "150 °C");

    /** A plot: the corner of its axes, and where they end. */
    private record Plot(Element svg, double left, double top, double right, double bottom) {
        static Plot of(Picture picture) {
            Element svg = Jsoup.parseBodyFragment(picture.svg("g")).body().selectFirst("svg");
            for (Element path : svg.select("path.ink:not([stroke-dasharray])")) {
                double[] d = numbers(path);
                if (d.length == 6) {
                    return new Plot(svg, d[0], d[1], d[4], d[3]);
                }
            }
            throw new AssertionError(picture.body());
        }

        double x(double share) {
            return left + share * (right - left);
        }

        double y(double share) {
            return bottom - share * (bottom - top);
        }

        /** The texts under the lower axis, numbers and title, from left to right. */
        List<String> below() {
            return svg.select("text").stream().filter(text -> number(text, "y") > bottom + 10).map(Element::text).toList();
        }

        /** The numbers beside the upright axis, from below. */
        List<String> beside() {
            return svg.select("text[text-anchor=end]").stream().filter(text -> number(text, "x") < left).map(Element::text).toList();
        }

        void dot(double across, double up) {
            Element circle = svg.select("circle").last();
            assertEquals(x(across), number(circle, "cx"), WRITTEN);
            assertEquals(y(up), number(circle, "cy"), WRITTEN);
        }

        void upright(double across) {
            Element dotted = svg.select("path.ink[stroke-dasharray]").stream().filter(path -> numbers(path).length == 4 && numbers(path)[0] == numbers(path)[2]).findFirst().orElseThrow();
            assertEquals(x(across), numbers(dotted)[0], WRITTEN);
            assertEquals(bottom, numbers(dotted)[1], WRITTEN);
            assertEquals(top, numbers(dotted)[3], WRITTEN);
        }

        void level(int at, double up) {
            double[] d = numbers(svg.select("path.warn").get(at));
            assertEquals(y(up), d[1], WRITTEN);
            assertEquals(y(up), d[3], WRITTEN);
            assertEquals(List.of(left, right), List.of(d[0], d[2]));
        }

        /** Each number stands under its tick. */
        void numberAt(String text, double share) {
            Element number = svg.select("text[text-anchor=middle]").stream().filter(each -> each.text().equals(text)).findFirst().orElseThrow();
            assertEquals(x(share), number(number, "x"), WRITTEN);
            assertTrue(svg.select("path.ink").stream().map(Plot::numbers).anyMatch(d -> d.length == 4 && Math.abs(d[0] - x(share)) < WRITTEN && d[1] == bottom && d[3] == bottom + 6), text);
        }

        /** The coordinates of every piece of the lines in the accent colour. */
        double[] accent() {
            return svg.select("path.accent").stream().flatMapToDouble(path -> java.util.Arrays.stream(numbers(path))).toArray();
        }

        static double[] numbers(Element path) {
            return java.util.Arrays.stream(path.attr("d").split("[MLZ ]+")).filter(part -> !part.isEmpty()).mapToDouble(Double::parseDouble).toArray();
        }

        static double number(Element element, String name) {
            return Double.parseDouble(element.attr(name));
        }
    }

    /** 4.2 m × 1.6 = 6.72 m: axis to 8 m by 2. 0.6384 V × 1.4 = 0.894 V: axis to 1 V by 0.2. 3 % of 12 V is 0.36 V; 10 %, 1.2 V, lies above. */
    @Test
    void aDropStandsOnItsLineAtItsLength() {
        Plot plot = Plot.of(draw("voltage-drop", BENCH));
        assertEquals(List.of("0", "2", "4", "6", "8", "Length as entered (m)"), plot.below());
        assertEquals(List.of("0.0", "0.2", "0.4", "0.6", "0.8", "1.0"), plot.beside());
        plot.numberAt("2", 0.25);
        plot.numberAt("6", 0.75);
        plot.dot(4.2 / 8, 0.6384);
        plot.upright(4.2 / 8);
        plot.level(0, 0.36);
        assertEquals(1, plot.svg().select("path.warn").size());
        double[] line = plot.accent();
        assertEquals(plot.left(), line[0], WRITTEN);
        assertEquals(plot.bottom(), line[1], WRITTEN);
        // 7.6 mΩ/m × 2 × 10 A is 0.152 V for each metre: 1 V at 6.579 m, where the line leaves the plot
        assertEquals(plot.x(1 / 0.152 / 8), line[line.length - 2], WRITTEN);
        assertEquals(plot.top(), line[line.length - 1], WRITTEN);
        // three neighbours, each with a dash of its own
        assertEquals(3, plot.svg().select("path.ink[stroke-dasharray]").stream().map(path -> path.attr("stroke-dasharray")).distinct().count() - 1);
        assertEquals(List.of("Voltage drop against length"), plot.svg().select("title").eachText());
        assertTrue(plot.svg().selectFirst("desc").text().contains("At 4.2 m it loses 0.6384 V."), plot.svg().selectFirst("desc").text());
    }

    /** Neighbours of 2.5 mm² are 1.5, 4 and 6 mm²; of the thinnest the next three; a given resistance has none. */
    @Test
    void neighboursAreTheNextSizesSold() {
        assertEquals(List.of("1.5 mm²", "4 mm²", "6 mm²", "2.5 mm²"), sizes(BENCH));
        assertEquals(List.of("0.75 mm²", "1 mm²", "1.5 mm²", "0.5 mm²"), sizes(with(BENCH, "size", "0.5 mm²")));
        Map<String, String> given = new HashMap<>(Map.of("current", "10 A", "route-length", "4.2 m", "method", "given-resistance", "resistance-per-length", "7.6 mΩ/m"));
        assertEquals(List.of("as entered"), sizes(given));
        given.put("size", "2.5 mm²");
        assertEquals(List.of("as entered"), sizes(given));
        assertEquals(List.of("2.6 mm²"), sizes(Map.of("current", "10 A", "route-length", "4.2 m", "size", "2.6 mm²", "method", "copper-56")));
    }

    private static List<String> sizes(Map<String, String> entries) {
        List<String> heads = draw("voltage-drop", entries).figures().heads();
        return heads.subList(1, heads.size()).stream().map(head -> head.substring(head.indexOf(", ") + 2).replace('\u00a0', ' ')).toList();
    }

    /** 0.4 × 5 A to 2.5 × 5 A: 2 to 12.5 A by 2. 80 Ah ÷ 2 A = 40 h by 10. 16 h at 5 A. */
    @Test
    void aRunTimeStandsOnItsCurve() {
        Plot plot = Plot.of(draw("run-time", BATTERY));
        assertEquals(List.of("2", "4", "6", "8", "10", "12", "Current drawn (A)"), plot.below());
        assertEquals(List.of("0", "10", "20", "30", "40"), plot.beside());
        plot.numberAt("12", 10 / 10.5);
        plot.dot(3 / 10.5, 16 / 40.0);
        plot.upright(3 / 10.5);
        double[] line = plot.accent();
        assertEquals(plot.left(), line[0], WRITTEN);
        assertEquals(plot.top(), line[1], WRITTEN);
        assertEquals(plot.right(), line[line.length - 2], WRITTEN);
        // 80 Ah ÷ 12.5 A = 6.4 h
        assertEquals(plot.y(6.4 / 40), line[line.length - 1], WRITTEN);
        // 2 and 2.5 A: of each span between numbers a quarter is drawn
        assertTrue(contains(line, plot.x(0.5 / 10.5), plot.y(32 / 40.0)), "80 Ah ÷ 2.5 A = 32 h");
    }

    /** 2 to 16 A; 0 to 150 × 1.1 = 165 °C; 68.8 °C at 10 A; the limit 150 °C. With a drop that stays, 2 A give 40 + 2.4 × 2.4 = 45.76 °C. */
    @Test
    void aJunctionStandsBelowItsLimit() {
        Plot plot = Plot.of(draw("junction-temperature", SWITCH));
        assertEquals("Current switched (A)", plot.below().get(plot.below().size() - 1));
        plot.dot(8 / 14.0, 68.8 / 165);
        plot.upright(8 / 14.0);
        plot.level(0, 150 / 165.0);
        double[] line = plot.accent();
        assertEquals(plot.y(45.76 / 165), line[1], WRITTEN);
        // 16 A × 1.2 V × 2.4 K/W + 40 °C = 86.08 °C
        assertEquals(plot.y(86.08 / 165), line[line.length - 1], WRITTEN);
        assertTrue(plot.svg().text().contains("limit 150 °C") && plot.svg().text().contains("68.8 °C"), plot.svg().text());
        // below freezing the axis begins at the air; a junction above the limit stretches it: −10 + 28.8 °C is below, 200 °C + 28.8 above
        Plot cold = Plot.of(draw("junction-temperature", with(SWITCH, "ambient", "-10 °C")));
        cold.dot(8 / 14.0, (18.8 + 10) / (165 + 10));
        Plot hot = Plot.of(draw("junction-temperature", with(SWITCH, "junction-limit", "60 °C")));
        hot.dot(8 / 14.0, 1 / 1.1);
        hot.level(0, 60 / (68.8 * 1.1));
    }

    /** 8 to 100 A, both axes logarithmic: 20 A stands at ln(20 ÷ 8) ÷ ln(100 ÷ 8). */
    @Test
    void anOpeningWindowHasLogarithmicAxes() {
        Map<String, String> fuse = Map.of("fuse-type", "miniature-blade", "rating", "10 A", "current", "20 A");
        Plot plot = Plot.of(draw("time-current", fuse));
        plot.upright(Math.log(2.5) / Math.log(12.5));
        plot.numberAt("10", Math.log(1.25) / Math.log(12.5));
        plot.numberAt("100", 1);
        assertEquals(List.of("10", "20", "50", "100", "Current (A)"), plot.below());
        assertEquals(0, plot.svg().select("path.warn").size());
        assertTrue(plot.svg().text().contains("not before") && plot.svg().text().contains("open by"), plot.svg().text());
        // 150 A stretch the lower axis to 180 A, 5 A open it at 5 ÷ 1.2 A
        Plot.of(draw("time-current", with(fuse, "current", "150 A"))).upright(Math.log(150 / 8.0) / Math.log(180 / 8.0));
        Plot.of(draw("time-current", with(fuse, "current", "5 A"))).upright(Math.log(1.2) / Math.log(100 * 1.2 / 5));
    }

    /** 48 Wh and 2.88 Wh: axis to 50 Wh, numbers every 20. */
    @Test
    void barsAreAsLongAsTheirEnergy() {
        Picture picture = draw("day-energy", Map.of("load-1-power", "12 W", "load-1-hours", "4 h", "standing-current", "10 mA", "system-voltage", "12 V"));
        Element svg = Jsoup.parseBodyFragment(picture.svg("g")).body().selectFirst("svg");
        List<Element> bars = svg.select("rect.accent");
        double unit = (Plot.number(text(svg, "20"), "x") - Plot.number(text(svg, "0"), "x")) / 20;
        assertEquals(2.88 * unit, Plot.number(bars.get(0), "width"), 3 * WRITTEN);
        assertEquals(48 * unit, Plot.number(bars.get(1), "width"), 3 * WRITTEN);
        assertEquals(Plot.number(text(svg, "0"), "x"), Plot.number(bars.get(0), "x"), WRITTEN);
        assertEquals(List.of("Standing draw, 10 mA", "Load 1: 12 W, 4 h"), picture.figures().rows().stream().map(row -> row.get(0).replace('\u00a0', ' ')).toList());
        assertEquals(List.of("Load", "Energy of a day (Wh)"), picture.figures().heads());
        assertTrue(svg.selectFirst("desc").text().contains("50.88 Wh"), svg.selectFirst("desc").text());
        assertEquals("Load 1: 2 A, 3 h", draw("day-energy", Map.of("load-1-current", "2 A", "load-1-hours", "3 h")).figures().rows().get(0).get(0).replace('\u00a0', ' '));
    }

    private static Element text(Element svg, String words) {
        return svg.select("text").stream().filter(text -> text.text().equals(words)).findFirst().orElseThrow();
    }

    private static boolean contains(double[] line, double x, double y) {
        for (int i = 0; i + 1 < line.length; i += 2) {
            if (Math.abs(line[i] - x) < WRITTEN && Math.abs(line[i + 1] - y) < WRITTEN) {
                return true;
            }
        }
        return false;
    }

    private static Map<String, String> with(Map<String, String> entries, String field, String text) {
        Map<String, String> changed = new HashMap<>(entries);
        changed.put(field, text);
        return changed;
    }

    private static Picture draw(String key, Map<String, String> entries) {
        Calculator calculator = Catalogue.find(key);
        Outcome outcome = Outcome.of(calculator, entries);
        if (outcome.working() == null) {
            throw new AssertionError(outcome.faults().toString());
        }
        return Graphs.draw(calculator, entries, outcome.working());
    }
}
