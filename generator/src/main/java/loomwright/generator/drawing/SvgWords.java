package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.List;
import loomwright.picture.Lettering;

/** The room the words of a drawing take, and what is wrong with it. */
final class SvgWords {
    /** A letter reaches so far above the base line, and below it, as a share of its size. */
    private static final double ABOVE = 0.73;

    private static final double BELOW = 0.21;
    /** The estimate of a width rounds each letter up, by a twentieth on the whole. */
    private static final double ROUNDED_UP = 0.95;

    /**
     * A text with the rectangle it takes.
     *
     * @param element the text
     */
    private record Place(SvgElement element, double left, double top, double right, double bottom) {
        boolean overlaps(Place other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        String words() {
            return "\u201c" + element.text() + "\u201d";
        }
    }

    /**
     * What is wrong with the words.
     *
     * @param at the element to be mended
     */
    record Fault(SvgElement at, String words) {}

    private SvgWords() {}

    /** The texts that lie outside the canvas, and those that lie over another. */
    static List<Fault> faults(List<SvgElement> elements, double width, double height) {
        List<Place> places = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (SvgElement element : elements) {
            if (element.name().equals("text")) {
                Place place = place(element);
                if (place.left < 0 || place.top < 0 || place.right > width || place.bottom > height) {
                    faults.add(new Fault(element, place.words() + " reaches outside the drawing"));
                }
                for (Place other : places) {
                    if (place.overlaps(other)) {
                        faults.add(new Fault(element, place.words() + " lies over " + other.words()));
                    }
                }
                places.add(place);
            }
        }
        return faults;
    }

    private static Place place(SvgElement text) {
        Lettering lettering = lettering(List.of(text.attribute("class").split(" ")));
        double width = ROUNDED_UP * lettering.width(text.text());
        double x = text.x() + text.number("x");
        double y = text.y() + text.number("y");
        double left =
                switch (text.attribute("text-anchor")) {
                    case "middle" -> x - width / 2;
                    case "end" -> x - width;
                    default -> x;
                };
        return new Place(text, left, y - ABOVE * lettering.size(), left + width, y + BELOW * lettering.size());
    }

    private static Lettering lettering(List<String> classes) {
        boolean strong = classes.contains("strong");
        if (classes.contains("small")) {
            return strong ? Lettering.SMALL_STRONG : Lettering.SMALL;
        }
        return strong ? Lettering.STRONG : Lettering.PLAIN;
    }
}
