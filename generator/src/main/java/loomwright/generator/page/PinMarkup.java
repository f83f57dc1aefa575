package loomwright.generator.page;

import java.util.List;
import java.util.Map;
import loomwright.generator.example.CheckedQuestion;
import loomwright.generator.example.Pin;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.SourceMarkup;

/** Writes what a worked example or a question was held against. */
final class PinMarkup {
    private PinMarkup() {}

    static String of(List<Pin> pins, Links links) {
        String count = pins.size() == 1 ? "one figure" : pins.size() + " figures";
        return pins.isEmpty() ? "" : "<details class=\"pins\"><summary>Checked against " + count + "</summary>" + list(pins, links) + "</details>\n";
    }

    /** The pins of a question, with what it was worked from: no form beside it says so. */
    static String of(CheckedQuestion question, Links links) {
        StringBuilder given = new StringBuilder();
        for (Map.Entry<String, String> entry : question.given().entrySet()) {
            given.append(given.isEmpty() ? "" : "|").append(entry.getKey()).append('=').append(entry.getValue());
        }
        return "<div class=\"pins\" data-calculator=\"" + Html.escape(question.calculator().description().key()) + "\" data-given=\""
                + Html.escape(given.toString()) + "\"><p class=\"label\">Checked against</p>" + list(question.pins(), links) + "</div>\n";
    }

    private static String list(List<Pin> pins, Links links) {
        StringBuilder out = new StringBuilder("<ul>\n");
        for (Pin pin : pins) {
            out.append("<li data-result=\"").append(pin.output().key()).append("\" data-expect=\"").append(Html.escape(pin.expectText()));
            out.append("\" data-tolerance=\"").append(Html.escape(pin.toleranceText())).append("\">");
            out.append(Html.escape(pin.output().label())).append(' ').append(ExampleMarkup.value(pin.expectText()));
            out.append(", within ").append(ExampleMarkup.value(pin.toleranceText())).append(": ").append(pin.kind().words()).append(".\n");
            if (!pin.arithmetic().isEmpty()) {
                out.append("<span class=\"arithmetic\">").append(Html.escape(pin.arithmetic())).append("</span>\n");
            }
            out.append(SourceMarkup.inLine(links, pin.source())).append("</li>\n");
        }
        return out.append("</ul>").toString();
    }
}
