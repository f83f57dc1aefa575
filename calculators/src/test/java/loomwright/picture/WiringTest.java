package loomwright.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Wiring.Item;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class WiringTest {
    @Provide
    Arbitrary<Item> installations() {
        Arbitrary<String> words = Arbitraries.of("fuse panel, six ways", "relay", "accessory outlet at the bench, behind the locker", "");
        Arbitrary<Item> leaf = words.map(label -> Item.of(label, "2.5 mm², 4.2 m"));
        Arbitrary<Item> branch = leaf.list().ofMaxSize(3).map(feeds -> new Item("panel", "", feeds));
        return branch.list().ofMinSize(1).ofMaxSize(3).map(feeds -> new Item("battery", "", feeds));
    }

    @Property(tries = 100)
    void wordsNeverLieOverEachOtherAndBoxesKeepApart(@ForAll("installations") Item root) {
        DrawnSvg svg = new DrawnSvg(new Wiring(root).picture("Wiring", "Boxes.").svg("w"));
        assertEquals(List.of(), svg.textFaults());
        double free = 0;
        for (Element box : svg.elements("rect")) {
            assertTrue(number(box, "y") > free, "below the box before it");
            free = number(box, "y") + number(box, "height");
            assertTrue(number(box, "x") + number(box, "width") <= svg.width());
        }
    }

    @Test
    void eachBoxIsFedByOneConductorOfEachKind() {
        Item root = Item.of("battery", "", Item.of("panel", "6 mm²", Item.of("lamp", ""), Item.of("pump", "")));
        DrawnSvg svg = new DrawnSvg(new Wiring(root).picture("Wiring", "Boxes.").svg("w"));
        assertEquals(4, svg.elements("rect").size());
        assertEquals(3, ends(svg, "plus").size());
        assertEquals(3, ends(svg, "minus").size());
        List<Element> boxes = svg.elements("rect");
        for (int i = 1; i < boxes.size(); i++) {
            List<Double> end = ends(svg, "plus").get(i - 1);
            assertEquals(number(boxes.get(i), "x"), end.get(0), 0.01);
            assertTrue(end.get(1) > number(boxes.get(i), "y"));
            assertTrue(end.get(1) < number(boxes.get(i), "y") + number(boxes.get(i), "height"));
        }
    }

    @Test
    void onlyConductorsThatRunOnAreJoined() {
        Item two = Item.of("battery", "", Item.of("lamp", ""), Item.of("pump", ""));
        Item one = Item.of("battery", "", Item.of("lamp", ""));
        assertEquals(2, new DrawnSvg(new Wiring(two).picture("Wiring", "Boxes.").svg("w")).elements("circle").size());
        assertEquals(0, new DrawnSvg(new Wiring(one).picture("Wiring", "Boxes.").svg("w")).elements("circle").size());
    }

    /** Where each conductor of that kind ends. */
    private static List<List<Double>> ends(DrawnSvg svg, String style) {
        List<List<Double>> ends = new ArrayList<>();
        for (Element path : svg.elements("path")) {
            if (path.getAttribute("class").equals(style)) {
                List<Double> numbers = GraphTest.numbers(path);
                ends.add(numbers.subList(numbers.size() - 2, numbers.size()));
            }
        }
        return ends;
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
