package loomwright.generator.drawing;

import java.util.List;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;

/** Holds a drawing of the content against what a drawing may be: few elements, classes in the place of colours, nothing outside its canvas. */
final class SvgCheck {
    private static final String COLOURS = " Colours and widths come from the classes of the style sheet.";

    private final SourceFile file;
    private final Problems problems;
    private boolean sound = true;

    SvgCheck(SourceFile file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /** Whether nothing is wrong; what is wrong is reported. */
    boolean passes(List<SvgElement> elements) {
        SvgElement root = elements.get(0);
        if (!root.name().equals("svg")) {
            report(root, "the file is no drawing: it begins with \"" + root.name() + "\"", "Begin it with <svg viewBox=\"0 0 320 200\">.");
            return false;
        }
        elements.forEach(this::checkElement);
        checkWords(elements, "title", 8, "Say in a few words what is drawn.");
        checkWords(elements, "desc", 40, "Describe what it shows for a reader who cannot see it.");
        if (!root.attribute("viewBox").matches("0 0 [1-9]\\d*(\\.\\d+)? [1-9]\\d*(\\.\\d+)?")) {
            report(root, "the drawing has no canvas", "Write viewBox=\"0 0 WIDTH HEIGHT\".");
        } else if (Canvas.of(root).width() > Canvas.WIDEST) {
            report(root, "the canvas is wider than a phone", "Draw it 320 wide, and no wider than 360.");
        } else if (sound) {
            elements.forEach(element -> checkPlace(element, Canvas.of(root)));
        }
        return sound;
    }

    /** The size of a drawing. */
    record Canvas(double width, double height) {
        static final double WIDEST = 360;

        static Canvas of(SvgElement root) {
            String[] numbers = root.attribute("viewBox").split(" ");
            return new Canvas(Double.parseDouble(numbers[2]), Double.parseDouble(numbers[3]));
        }
    }

    private void checkElement(SvgElement element) {
        String name = element.name();
        if (!SvgShape.NEEDED.containsKey(name)) {
            report(element, "a drawing holds no \"" + name + "\"", "Draw it with path, rect, circle, line and text; g keeps some of them together.");
            return;
        }
        for (String attribute : element.attributes().keySet()) {
            if (!SvgShape.takes(name, attribute)) {
                report(element, "in a drawing, \"" + name + "\" takes no \"" + attribute + "\"",
                        "It takes " + String.join(", ", SvgShape.attributes(name)) + "." + COLOURS);
            }
        }
        for (String needed : SvgShape.attributes(name)) {
            if (SvgShape.NEEDED.get(name).contains(needed) && element.attribute(needed).isBlank()) {
                report(element, "\"" + name + "\" has no \"" + needed + "\"", "Write it: " + needed + "=\"...\".");
            } else if (isMeasure(needed) && element.attributes().containsKey(needed) && !element.isNumber(needed)) {
                report(element, needed + " \"" + element.attribute(needed) + "\" is not a number", "Write a plain number, without a unit.");
            }
        }
        for (String each : element.attribute("class").isBlank() ? new String[0] : element.attribute("class").split(" ")) {
            if (!SvgShape.classes(name).contains(each)) {
                report(element, "no class of a drawing is called \"" + each + "\" on \"" + name + "\"", Nearest.remedy(each, SvgShape.classes(name)));
            }
        }
        if (!element.attribute("transform").isEmpty() && !SvgReader.moves(element.attribute("transform"))) {
            report(element, "a group can only be moved, not \"" + element.attribute("transform") + "\"", "Write transform=\"translate(10 20)\".");
        }
        if (!element.text().isBlank() && !List.of("text", "title", "desc").contains(name)) {
            report(element, "words stand outside a text", "Put them into a text, or into a comment.");
        }
    }

    private static boolean isMeasure(String attribute) {
        return List.of("x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "width", "height").contains(attribute);
    }

    private void checkWords(List<SvgElement> elements, String name, int least, String remedy) {
        List<SvgElement> found = elements.stream().filter(element -> element.name().equals(name)).toList();
        if (found.isEmpty()) {
            report(elements.get(0), "the drawing has no \"" + name + "\"", "Add <" + name + ">...</" + name + ">. " + remedy);
        } else if (found.get(0).text().strip().length() < least) {
            report(found.get(0), "the \"" + name + "\" says too little", remedy);
        }
    }

    private void checkPlace(SvgElement element, Canvas canvas) {
        for (double[] point : SvgExtent.of(element)) {
            if (point[0] < 0 || point[1] < 0 || point[0] > canvas.width() || point[1] > canvas.height()) {
                report(element, "the \"" + element.name() + "\" reaches outside the drawing", "Move it inwards, or widen the viewBox.");
                return;
            }
        }
    }

    private void report(SvgElement element, String words, String remedy) {
        sound = false;
        problems.add(at(file, element).problem(words, remedy));
    }

    /** The place of an element in its file. */
    static Span at(SourceFile file, SvgElement element) {
        Span line = file.lineSpan(element.line());
        return line.find("<" + element.name());
    }
}
