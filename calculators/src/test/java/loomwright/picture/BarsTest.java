package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class BarsTest {
    private static final Bars.Bar USED = new Bars.Bar(
            "Used", "90\u00a0Wh", List.of(new Bars.Part("laptop", 60, Style.SOLID), new Bars.Part("lamp", 30, Style.BOX)));
    private static final Bars.Bar GOT = new Bars.Bar("Got", "45\u00a0Wh", List.of(new Bars.Part("lamp", 45, Style.BOX)));

    private static Picture picture() {
        return new Bars("Energy", Axis.linear("Energy of a day (Wh)", 0, 100), List.of(USED, GOT)).picture("A day", "Two bars.");
    }

    @Test
    void partsStandEndToEndAndAreAsLongAsTheirValues() {
        List<Element> rectangles = new DrawnSvg(picture().svg("b")).elements("rect");
        double first = number(rectangles.get(0), "width");
        double second = number(rectangles.get(1), "width");
        assertEquals(2, first / second, 1e-2);
        assertEquals(number(rectangles.get(0), "x") + first, number(rectangles.get(1), "x"), 0.02);
        assertEquals(1.5, number(rectangles.get(2), "width") / second, 1e-2);
    }

    @Test
    void theKeyNamesEachKindOfPartOnce() {
        DrawnSvg svg = new DrawnSvg(picture().svg("b"));
        assertEquals(1, svg.texts().stream().filter(text -> text.words().equals("lamp")).count());
        assertEquals(1, svg.texts().stream().filter(text -> text.words().equals("laptop")).count());
        assertEquals(List.of(), svg.textFaults());
    }

    @Test
    void givesTheSameFiguresAsATable() {
        assertEquals(List.of(List.of("Used", "90\u00a0Wh"), List.of("Got", "45\u00a0Wh")), picture().figures().rows());
    }

    @Test
    void refusesAnAxisThatDoesNotBeginAtZero() {
        Axis axis = Axis.linear("Energy of a day (Wh)", 20, 100);
        assertThrows(IllegalArgumentException.class, () -> new Bars("Energy", axis, List.of(USED)));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
