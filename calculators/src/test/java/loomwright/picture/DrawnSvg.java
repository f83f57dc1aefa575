package loomwright.picture;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** An {@code svg} element read back, as a browser would see it. */
public final class DrawnSvg {
    private final Element root;

    /** A text with the rectangle it takes. */
    public record Text(String words, double left, double top, double right, double bottom) {
        /** Whether the two share more than a hair. */
        boolean overlaps(Text other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    public DrawnSvg(String svg) {
        try {
            root = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + svg, e);
        }
    }

    public String attribute(String name) {
        return root.getAttribute(name);
    }

    public String words(String element) {
        return elements(element).get(0).getTextContent();
    }

    public List<String> ids() {
        List<String> ids = new ArrayList<>();
        for (Element element : elements("*")) {
            if (element.hasAttribute("id")) {
                ids.add(element.getAttribute("id"));
            }
        }
        return ids;
    }

    public double width() {
        return viewBox(2);
    }

    public double height() {
        return viewBox(3);
    }

    private double viewBox(int at) {
        return Double.parseDouble(root.getAttribute("viewBox").split(" ")[at]);
    }

    public List<Element> elements(String name) {
        NodeList found = root.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    /** The texts with letters as tall as those of DejaVu Sans: 0.73 above the base line for capitals, 0.21 below. */
    public List<Text> texts() {
        List<Text> texts = new ArrayList<>();
        for (Element element : elements("text")) {
            List<String> classes = List.of(element.getAttribute("class").split(" "));
            double size = classes.contains("small") ? 14 : 16;
            String words = element.getTextContent();
            double width = FaceWidths.width(words, size, classes.contains("strong"));
            double x = Double.parseDouble(element.getAttribute("x"));
            double y = Double.parseDouble(element.getAttribute("y"));
            double left =
                    switch (element.getAttribute("text-anchor")) {
                        case "middle" -> x - width / 2;
                        case "end" -> x - width;
                        default -> x;
                    };
            texts.add(new Text(words, left, y - 0.73 * size, left + width, y + 0.21 * size));
        }
        return texts;
    }

    /** What is wrong with the texts: outside the canvas, or one over another; empty if nothing is. */
    public List<String> textFaults() {
        List<String> faults = new ArrayList<>();
        List<Text> texts = texts();
        for (int i = 0; i < texts.size(); i++) {
            Text text = texts.get(i);
            if (text.left() < 0 || text.top() < 0 || text.right() > width() || text.bottom() > height()) {
                faults.add("outside the canvas: " + text);
            }
            for (int j = 0; j < i; j++) {
                if (text.overlaps(texts.get(j))) {
                    faults.add("\u201c" + text.words() + "\u201d lies over \u201c" + texts.get(j).words() + "\u201d");
                }
            }
        }
        return faults;
    }
}
