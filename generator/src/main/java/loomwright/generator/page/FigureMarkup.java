package loomwright.generator.page;

import java.util.LinkedHashMap;
import java.util.Map;
import loomwright.generator.content.PictureFile;
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
    private final Map<String, PictureFile> pictures;
    private final Place page;
    private final Problems problems;

    FigureMarkup(Site site, Place page, ArticleWriter article) {
        this.drawings = site.drawings();
        this.pictures = site.content().pictures();
        this.page = page;
        this.article = article;
        this.problems = site.problems();
    }

    String write(YamlMap map) {
        return write(map, true);
    }

    /** A figure, with or without the folded table of what it shows. */
    String write(YamlMap map, boolean withTable) {
        Scalar key = map.required("key");
        Scalar photo = map.text("picture");
        Scalar drawing = photo == null ? map.required("drawing") : map.text("drawing");
        Scalar title = map.required("title");
        Scalar description = map.required("description");
        Scalar caption = map.text("caption");
        Map<String, Scalar> values = map.textsByKey("values");
        map.finish();
        if (key == null || drawing == null && photo == null || title == null || description == null) {
            return "";
        }
        article.places().id(key.text(), key.at());
        if (photo != null && (drawing != null || !values.isEmpty())) {
            problems.add(photo.problem("a figure shows a drawing or a picture, not both", "Keep \"picture\" alone; it takes no values."));
            return "";
        }
        String shown = photo == null ? drawn(key, drawing, values, title, description, withTable) : photo(photo, title, description);
        return shown.isEmpty() ? "" : "<figure class=\"figure\" id=\"" + Html.escape(key.text()) + "\">\n" + shown
                + (caption == null ? "" : "\n<figcaption>" + article.inLine(caption) + "</figcaption>") + "\n</figure>\n";
    }

    private String drawn(Scalar key, Scalar drawing, Map<String, Scalar> values, Scalar title, Scalar description, boolean withTable) {
        Picture picture = draw(drawing, values);
        return picture == null ? "" : picture.named(title.text(), description.text()).svg(key.text())
                + (withTable ? PictureMarkup.figures(picture.figures(), title.text()) : "");
    }

    /** Its size stands beside it, so that the text does not jump when it comes. */
    private String photo(Scalar photo, Scalar title, Scalar description) {
        PictureFile file = pictures.get(photo.text());
        if (file == null) {
            problems.add(photo.problem(
                    "no picture is called \"" + photo.text() + "\"",
                    pictures.isEmpty() ? "Put the file into the folder \"pictures\"." : Nearest.remedy(photo.text(), pictures.keySet())));
            return "";
        }
        return "<img class=\"picture\" src=\"" + Address.from(page.address(), Address.picture(file.name())) + "\" width=\"" + file.width()
                + "\" height=\"" + file.height() + "\" alt=\"" + Html.escape(title.text() + ": " + description.text()) + "\">";
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
