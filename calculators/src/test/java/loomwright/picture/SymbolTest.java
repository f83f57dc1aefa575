package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

class SymbolTest {
    private static DrawnSvg drawn(Symbol symbol, Heading heading) {
        Canvas canvas = new Canvas();
        symbol.draw(canvas, 100, 100, heading);
        return new DrawnSvg(new Picture("Symbol", "One symbol.", canvas, 200, 200).svg("s"));
    }

    @ParameterizedTest
    @EnumSource(Symbol.class)
    void staysWithinItsStatedSizeWhicheverWayItFaces(Symbol symbol) {
        for (Heading heading : Heading.values()) {
            boolean level = heading == Heading.EAST || heading == Heading.WEST;
            double width = level ? symbol.reach() : symbol.breadth();
            double height = level ? symbol.breadth() : symbol.reach();
            for (double[] point : points(drawn(symbol, heading))) {
                assertTrue(Math.abs(point[0] - 100) <= width + 0.01, heading + " x " + point[0]);
                assertTrue(Math.abs(point[1] - 100) <= height + 0.01, heading + " y " + point[1]);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Symbol.class)
    void looksLikeNoOtherSymbol(Symbol symbol) {
        Set<String> alike = new HashSet<>();
        for (Symbol other : Symbol.values()) {
            Canvas one = new Canvas();
            Canvas two = new Canvas();
            symbol.draw(one, 100, 100, Heading.EAST);
            other.draw(two, 100, 100, Heading.EAST);
            if (one.body().equals(two.body())) {
                alike.add(other.name());
            }
        }
        // The contact of a relay is drawn as an open switch: it is one.
        boolean contact = symbol == Symbol.SWITCH_OPEN || symbol == Symbol.MAKE_CONTACT;
        assertEquals(contact ? 2 : 1, alike.size(), alike.toString());
    }

    @Test
    void theLongPlateOfABatteryIsTheOneCurrentLeavesBy() {
        for (Heading heading : Heading.values()) {
            double longest = 0;
            double last = Double.NEGATIVE_INFINITY;
            for (Element plate : drawn(Symbol.BATTERY, heading).elements("path")) {
                List<Double> at = GraphTest.numbers(plate);
                double length = Math.hypot(at.get(2) - at.get(0), at.get(3) - at.get(1));
                double along = (at.get(0) - 100) * heading.dx() + (at.get(1) - 100) * heading.dy();
                if (along > last) {
                    last = along;
                    longest = length;
                }
            }
            assertEquals(28, longest, 1e-6, heading.name());
        }
    }

    @Test
    void lettersStayUprightInEveryHeading() {
        for (Heading heading : Heading.values()) {
            assertEquals("M", drawn(Symbol.MOTOR, heading).words("text"));
            assertEquals("", drawn(Symbol.MOTOR, heading).elements("text").get(0).getAttribute("transform"));
        }
    }

    private static List<double[]> points(DrawnSvg svg) {
        List<double[]> points = new ArrayList<>();
        for (Element path : svg.elements("path")) {
            if (!path.getAttribute("d").contains("A")) {
                List<Double> at = GraphTest.numbers(path);
                for (int i = 0; i < at.size(); i += 2) {
                    points.add(new double[] {at.get(i), at.get(i + 1)});
                }
            }
        }
        for (Element circle : svg.elements("circle")) {
            corners(points, number(circle, "cx"), number(circle, "cy"), number(circle, "r"), number(circle, "r"));
        }
        for (Element rectangle : svg.elements("rect")) {
            double halfWidth = number(rectangle, "width") / 2;
            double halfHeight = number(rectangle, "height") / 2;
            corners(points, number(rectangle, "x") + halfWidth, number(rectangle, "y") + halfHeight, halfWidth, halfHeight);
        }
        return points;
    }

    private static void corners(List<double[]> points, double x, double y, double halfWidth, double halfHeight) {
        points.add(new double[] {x - halfWidth, y - halfHeight});
        points.add(new double[] {x + halfWidth, y + halfHeight});
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
