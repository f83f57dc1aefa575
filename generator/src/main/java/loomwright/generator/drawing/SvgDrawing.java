package loomwright.generator.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.picture.FigureTable;
import loomwright.picture.Picture;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;

/**
 * A drawing of the content. Where it shows a figure of the lesson, its text says so in braces with the unit of its kind: {@code {breaker A}}
 * is a value called {@code breaker}, a current.
 */
final class SvgDrawing implements Drawing {
    private static final Pattern VALUE = Pattern.compile("\\{([a-z][a-z0-9-]*) ([^{} ]+)\\}");
    private static final Pattern HEAD = Pattern.compile("(?s)^.*?<svg[^>]*>|<title>.*?</title>|<desc>.*?</desc>|<!--.*?-->|</svg>\\s*$");

    private final String name;
    private final SourceFile file;
    private final List<SvgElement> elements;
    private final Map<String, Unit> units = new LinkedHashMap<>();

    private SvgDrawing(String name, SourceFile file, List<SvgElement> elements) {
        this.name = name;
        this.file = file;
        this.elements = elements;
    }

    /** Reads a drawing; null if something is wrong with it, which is reported. */
    static SvgDrawing read(String name, SourceFile file, Problems problems) {
        try {
            SvgDrawing drawing = new SvgDrawing(name, file, SvgReader.read(file.text()));
            return new SvgCheck(file, problems).passes(drawing.elements) && drawing.findValues(problems) ? drawing : null;
        } catch (XMLStreamException fault) {
            problems.add(file.lineSpan(Math.max(1, fault.getLocation().getLineNumber())).problem(
                    "the drawing cannot be read from here on", "Close every element, and put every attribute in double quotes."));
            return null;
        }
    }

    private boolean findValues(Problems problems) {
        boolean sound = true;
        for (SvgElement element : elements) {
            Matcher value = VALUE.matcher(element.text());
            while (value.find()) {
                QuantityText.Reading reading = QuantityText.read("1 " + value.group(2), null);
                if (reading.quantity() == null) {
                    sound = false;
                    problems.add(SvgCheck.at(file, element).problem(
                            "no unit is called \"" + value.group(2) + "\"", "Write the value and the unit of its kind, such as {breaker A}."));
                } else {
                    units.put(value.group(1), reading.quantity().unit());
                }
            }
        }
        return sound;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<String> takes() {
        return List.copyOf(units.keySet());
    }

    @Override
    public Picture draw(Given given) {
        units.forEach(given::number);
        List<SvgElement> filled = new ArrayList<>();
        for (SvgElement each : elements) {
            filled.add(new SvgElement(each.name(), each.attributes(), filled(each.text(), given), each.line(), each.x(), each.y()));
        }
        SvgCheck.Canvas canvas = SvgCheck.Canvas.of(elements.get(0));
        List<SvgWords.Fault> faults = SvgWords.faults(filled, canvas.width(), canvas.height());
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("In the drawing " + name + ", line " + faults.get(0).at().line() + ", " + faults.get(0).words() + ".");
        }
        return new Picture(words(filled, "title"), words(filled, "desc"), body(given), canvas.width(), canvas.height(), FigureTable.NONE, false);
    }

    /** What stands between title, description and the end, on one line. */
    private String body(Given given) {
        return filled(HEAD.matcher(file.text()).replaceAll(""), given).replaceAll(">\\s+<", "><").strip();
    }

    private static String filled(String text, Given given) {
        return VALUE.matcher(text).replaceAll(value -> Matcher.quoteReplacement(given.label(value.group(1)).replace("&", "&amp;").replace("<", "&lt;")));
    }

    private static String words(List<SvgElement> elements, String name) {
        return elements.stream().filter(element -> element.name().equals(name)).findFirst().orElseThrow().text().strip();
    }
}
