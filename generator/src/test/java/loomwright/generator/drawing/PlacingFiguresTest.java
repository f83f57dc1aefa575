package loomwright.generator.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.picture.Picture;
import org.junit.jupiter.api.Test;

/** The figures in the drawings of panels, worked by hand beside each. */
class PlacingFiguresTest {
    private static final Map<String, String> BENCH_END = Map.of(
            "panel-width", "150 mm", "panel-height", "90 mm", "count", "2", "hole-diameter", "29 mm", "centre-distance", "50 mm",
            "first-centre", "60 mm", "row-height", "45 mm");

    private static Map<String, String> benchEnd(String... more) {
        Map<String, String> values = new HashMap<>(BENCH_END);
        for (int i = 0; i < more.length; i += 2) {
            values.put(more[i], more[i + 1]);
        }
        return values;
    }

    private static List<Double> numbers(DrawnSvg svg, String element, String attribute) {
        return svg.elements(element).stream().map(each -> Double.parseDouble(each.attribute(attribute))).toList();
    }

    /** At two units a millimetre: holes of 29 units radius, centres 100 units apart and 120 from the edge, panel 300 by 180, bar 200. */
    @Test
    void drillingSheetIsAtFullSize() {
        Picture picture = Drawn.ALL.draw("drilling-sheet", BENCH_END);
        assertTrue(picture.fullSize());
        DrawnSvg svg = new DrawnSvg(picture.svg("k"));
        assertEquals("drawing full-size", svg.attribute("class"));
        assertEquals(List.of(29.0, 29.0), numbers(svg, "circle", "r"));
        List<Double> centres = numbers(svg, "circle", "cx");
        assertEquals(100, centres.get(1) - centres.get(0), 0.01);
        SvgElement panel = svg.elements("rect").get(0);
        assertEquals(120, centres.get(0) - Double.parseDouble(panel.attribute("x")), 0.01);
        assertEquals("300", panel.attribute("width"));
        assertEquals("180", panel.attribute("height"));
        assertTrue(svg.elements("path").stream().anyMatch(path -> path.attribute("d").matches("M60 ([0-9.]+)L260 \\1")));
    }

    @Test
    void otherDrawingsAreNotAtFullSize() {
        assertFalse(Drawn.ALL.draw("hole-from-mark-to-grommet", Map.of()).fullSize());
    }

    @Test
    void aPanelThatNoSheetHoldsIsRefused() {
        String message = assertThrows(
                        IllegalArgumentException.class, () -> Drawn.ALL.draw("drilling-sheet", benchEnd("panel-width", "300 mm")))
                .getMessage();
        assertTrue(message.contains("panel-width \u201c300 mm\u201d must be no more than 152 mm"), message);
    }

    /** The frame ends at 40 mm and half the room behind is 20 mm: the first centre moves from 50 mm to 60 mm. */
    @Test
    void theRowMovesClearOfTheFrame() {
        Map<String, String> values =
                benchEnd("first-centre", "50 mm", "room-behind", "40 mm", "frame-1-from", "20 mm", "frame-1-to", "40 mm");
        DrawnSvg svg = new DrawnSvg(Drawn.ALL.draw("cut-outs-and-frame", values).svg("k"));
        List<String> labels = svg.texts().stream().map(text -> text.replace('\u00a0', ' ')).toList();
        assertTrue(labels.contains("fits: first centre 60 mm"), labels.toString());
        List<Double> centres = numbers(svg, "circle", "cx");
        assertEquals(10 * 310 / 150.0, centres.get(4) - centres.get(0), 0.02);
    }

    /** 196 units stand for the 75 mm that are clear; 60 mm are four fifths of that, from the panel's back at 74. */
    @Test
    void depthsAreInProportion() {
        Picture picture = Drawn.ALL.draw("panel-cut-through", Map.of("depth-needed", "60 mm", "clear-depth", "75 mm"));
        assertTrue(picture.body().contains("M74 214L230.8 214"), picture.body());
        assertTrue(picture.body().contains("M74 254L270 254"), picture.body());
        assertThrows(
                IllegalArgumentException.class,
                () -> Drawn.ALL.draw("panel-cut-through", Map.of("depth-needed", "80 mm", "clear-depth", "75 mm")));
    }
}
