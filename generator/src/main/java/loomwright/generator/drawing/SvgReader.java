package loomwright.generator.drawing;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Takes a drawing apart into its elements. It never looks at anything outside the text. */
final class SvgReader {
    private static final XMLInputFactory FACTORY = factory();
    private static final Pattern MOVED = Pattern.compile("translate\\((-?\\d+(?:\\.\\d+)?)[ ,]+(-?\\d+(?:\\.\\d+)?)\\)");

    private final List<SvgElement> elements = new ArrayList<>();
    private final Deque<double[]> moves = new ArrayDeque<>(List.of(new double[] {0, 0}));

    private SvgReader() {}

    /**
     * The elements in the order of the text.
     *
     * @throws XMLStreamException if the text is not well-formed
     */
    static List<SvgElement> read(String svg) throws XMLStreamException {
        SvgReader reader = new SvgReader();
        reader.readAll(FACTORY.createXMLStreamReader(new StringReader(svg)));
        return reader.elements;
    }

    /** Whether groups can be moved so. */
    static boolean moves(String transform) {
        return MOVED.matcher(transform).matches();
    }

    private void readAll(XMLStreamReader xml) throws XMLStreamException {
        Deque<Integer> open = new ArrayDeque<>();
        while (xml.hasNext()) {
            switch (xml.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    open.push(elements.size());
                    start(xml);
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> write(open.peek(), xml.getText());
                case XMLStreamConstants.END_ELEMENT -> {
                    open.pop();
                    moves.pop();
                }
                default -> { }
            }
        }
    }

    private void start(XMLStreamReader xml) {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String prefix = xml.getAttributePrefix(i);
            attributes.put((prefix == null || prefix.isEmpty() ? "" : prefix + ":") + xml.getAttributeLocalName(i), xml.getAttributeValue(i));
        }
        double[] around = moves.peek();
        Matcher moved = MOVED.matcher(attributes.getOrDefault("transform", ""));
        double[] here = moved.matches()
                ? new double[] {around[0] + Double.parseDouble(moved.group(1)), around[1] + Double.parseDouble(moved.group(2))}
                : around;
        moves.push(here);
        String prefix = xml.getPrefix();
        String name = (prefix == null || prefix.isEmpty() ? "" : prefix + ":") + xml.getLocalName();
        elements.add(new SvgElement(name, attributes, "", xml.getLocation().getLineNumber(), here[0], here[1]));
    }

    private void write(Integer at, String words) {
        SvgElement old = elements.get(at);
        elements.set(at, new SvgElement(old.name(), old.attributes(), old.text() + words, old.line(), old.x(), old.y()));
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory;
    }
}
