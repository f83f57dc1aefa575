package loomwright.generator.drawing;

import java.util.List;
import javax.xml.stream.XMLStreamException;

/** An {@code svg} element read back. */
final class DrawnSvg {
    private final List<SvgElement> elements;

    DrawnSvg(String svg) {
        try {
            elements = SvgReader.read(svg);
        } catch (XMLStreamException e) {
            throw new AssertionError("not well-formed: " + svg, e);
        }
    }

    String attribute(String name) {
        return elements.get(0).attribute(name);
    }

    List<SvgElement> elements(String name) {
        return elements.stream().filter(element -> element.name().equals(name)).toList();
    }

    String words(String name) {
        return elements(name).get(0).text();
    }

    List<String> texts() {
        return elements("text").stream().map(SvgElement::text).toList();
    }

    List<String> ids() {
        return elements.stream().map(element -> element.attribute("id")).filter(id -> !id.isEmpty()).toList();
    }

    double width() {
        return SvgCheck.Canvas.of(elements.get(0)).width();
    }

    /** What is wrong with the texts: outside the canvas, or one over another; empty if nothing is. */
    List<String> textFaults() {
        SvgCheck.Canvas canvas = SvgCheck.Canvas.of(elements.get(0));
        return SvgWords.faults(elements, canvas.width(), canvas.height()).stream().map(SvgWords.Fault::words).toList();
    }
}
