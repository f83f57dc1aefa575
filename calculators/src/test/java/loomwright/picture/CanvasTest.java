package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class CanvasTest {
    private static Element first(Canvas canvas) {
        return Jsoup.parse(canvas.body(), "", Parser.xmlParser()).child(0);
    }

    @Test
    void shapesStandWhereTheyWereAskedFor() {
        Element box = first(new Canvas().rectangle(Style.BOX, 1, 2, 30, 40));
        assertEquals(List.of("rect", "ink shade", "1", "2", "30", "40"), List.of(
                box.tagName(), box.attr("class"), box.attr("x"), box.attr("y"), box.attr("width"), box.attr("height")));
        Element disc = first(new Canvas().circle(Style.SOLID, 5, 6, 7));
        assertEquals(List.of("circle", "5", "6", "7"), List.of(disc.tagName(), disc.attr("cx"), disc.attr("cy"), disc.attr("r")));
        Element line = first(new Canvas().line(Style.INK, 1, 2, 3, 4));
        assertEquals("M1 2L3 4", line.attr("d"));
        assertFalse(line.hasAttr("stroke-dasharray"), "a whole line");
        assertEquals("5 5", first(new Canvas().path(Style.INK, Dash.SHORT, new Outline().move(0, 0).line(1, 1))).attr("stroke-dasharray"));
    }

    /** 11 long and 11 wide: looking right its back lies 11 to the left, looking down 11 above. */
    @Test
    void anArrowHeadHasItsPointWhereItPoints() {
        assertEquals("M100 50L89 55.5L89 44.5Z", first(new Canvas().arrowHead(Style.SOLID, 100, 50, 1, 0)).attr("d"));
        assertEquals("M100 50L94.5 39L105.5 39Z", first(new Canvas().arrowHead(Style.SOLID, 100, 50, 0, 1)).attr("d"));
    }

    @Test
    void linesOfATextStandBelowEachOtherAndEachTakesItsRoom() {
        Canvas canvas = new Canvas().text(10, 20, Anchor.END, Lettering.STRONG, List.of("a < b", "c"));
        List<Element> lines = Jsoup.parse(canvas.body(), "", Parser.xmlParser()).select("text");
        assertEquals(List.of("a < b", "c"), lines.stream().map(Element::text).toList());
        assertEquals("end", lines.get(0).attr("text-anchor"));
        assertEquals("strong", lines.get(0).attr("class"));
        assertEquals(20, Double.parseDouble(lines.get(0).attr("y")));
        assertEquals(20 + Lettering.STRONG.lineHeight(), Double.parseDouble(lines.get(1).attr("y")), 0.01);
        assertEquals(2, canvas.texts().size());
        Element plain = first(new Canvas().text(1, 2, Anchor.START, Lettering.PLAIN, "x"));
        assertFalse(plain.hasAttr("text-anchor") || plain.hasAttr("class"), plain.outerHtml());
        assertTrue(new Canvas().body().isEmpty());
    }
}
