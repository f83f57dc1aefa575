package loomwright.generator.page;

import java.util.LinkedHashMap;
import java.util.Map;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.drawing.Drawings;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.markup.Html;
import loomwright.markup.PictureMarkup;
import loomwright.picture.Picture;

/** Writes figure blocks. */
final class FigureMarkup {
    private final ArticleWriter article;
    private final Drawings drawings;
    private final Problems problems;

    FigureMarkup(Site site, ArticleWriter article) {
        this.drawings = site.drawings();
        this.article = article;
        this.problems = site.problems();
    }

    String write(YamlMap map) {
        return write(map, true);
    }

    /** A figure, with or without the folded table of what it shows. */
    String write(YamlMap map, boolean withTable) {
        Scalar key = map.required("key");
        Scalar drawing = map.required("drawing");
        Scalar title = map.required("title");
        Scalar description = map.required("description");
        Scalar caption = map.text("caption");
        Map<String, Scalar> values = map.textsByKey("values");
        map.finish();
        if (key == null || drawing == null || title == null || description == null) {
            return "";
        }
        article.places().id(key.text(), key.at());
        Picture picture = draw(drawing, values);
        if (picture == null) {
            return "";
        }
        return "<figure class=\"figure\" id=\"" + Html.escape(key.text()) + "\">\n"
                + picture.named(title.text(), description.text()).svg(key.text())
                + (withTable ? PictureMarkup.figures(picture.figures(), title.text()) : "")
                + (caption == null ? "" : "\n<figcaption>" + article.inLine(caption) + "</figcaption>") + "\n</figure>\n";
    }

    private Picture draw(Scalar drawing, Map<String, Scalar> values) {
        if (!drawings.has(drawing.text())) {
            problems.add(drawing.problem(
                    "no drawing is called \"" + drawing.text() + "\"", Nearest.remedy(drawing.text(), drawings.names())));
            return null;
        }
        Map<String, String> texts = new LinkedHashMap<>();
        values.forEach((name, text) -> texts.put(name, text.text()));
        try {
            return drawings.draw(drawing.text(), texts);
        } catch (IllegalArgumentException e) {
            String message = e.getMessage();
            String words = message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
            problems.add(drawing.problem(words, "Correct \"values\" of this figure."));
            return null;
        }
    }
}
