package loomwright.generator.page;

import java.util.LinkedHashMap;
import java.util.Map;
import loomwright.generator.content.Scalar;
import loomwright.generator.problem.Nearest;

/** Draws the picture of a figure block. */
final class FigureMarkup {
    private FigureMarkup() {}

    /** The drawing, or an empty text with a problem if it cannot be drawn. */
    static String draw(Site site, Scalar drawing, Map<String, Scalar> values, String key, String title, String description) {
        if (!site.pictures().names().contains(drawing.text())) {
            site.problems().add(drawing.problem(
                    "no drawing is called \"" + drawing.text() + "\"", Nearest.remedy(drawing.text(), site.pictures().names())));
            return "";
        }
        Map<String, String> texts = new LinkedHashMap<>();
        values.forEach((name, text) -> texts.put(name, text.text()));
        try {
            return site.pictures().draw(drawing.text(), texts, key, title, description);
        } catch (IllegalArgumentException e) {
            site.problems().add(drawing.problem(
                    "the drawing \"" + drawing.text() + "\" cannot be made: " + e.getMessage(), "Correct \"values\" of this figure."));
            return "";
        }
    }
}
