package loomwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Collects the elements of one picture, the last on top. */
public final class Canvas {
    private final StringBuilder body = new StringBuilder();
    private final List<Box> texts = new ArrayList<>();

    public Canvas line(Style style, double x1, double y1, double x2, double y2) {
        return path(style, new Outline().move(x1, y1).line(x2, y2));
    }

    public Canvas path(Style style, Outline outline) {
        return path(style, Dash.NONE, outline);
    }

    public Canvas path(Style style, Dash dash, Outline outline) {
        open("path", style);
        attribute("d", outline.data());
        if (dash != Dash.NONE) {
            attribute("stroke-dasharray", dash.pattern());
        }
        return close();
    }

    public Canvas rectangle(Style style, double x, double y, double width, double height) {
        open("rect", style);
        number("x", x);
        number("y", y);
        number("width", width);
        number("height", height);
        return close();
    }

    public Canvas circle(Style style, double x, double y, double radius) {
        open("circle", style);
        number("cx", x);
        number("cy", y);
        number("r", radius);
        return close();
    }

    /** An arrow head whose point is at (x, y), looking along (dx, dy), a step of length one. */
    public Canvas arrowHead(Style style, double x, double y, double dx, double dy) {
        double length = 11;
        double half = 5.5;
        double backX = x - dx * length;
        double backY = y - dy * length;
        Outline head = new Outline().move(x, y).line(backX - dy * half, backY + dx * half);
        return path(style, head.line(backX + dy * half, backY - dx * half).close());
    }

    public Canvas text(double x, double y, Anchor anchor, Lettering lettering, String text) {
        return text(new Label(x, y, anchor, lettering, text));
    }

    /** Several lines below each other; {@code y} is the base line of the first. */
    public Canvas text(double x, double y, Anchor anchor, Lettering lettering, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            text(x, y + i * lettering.lineHeight(), anchor, lettering, lines.get(i));
        }
        return this;
    }

    Canvas text(Label label) {
        texts.add(label.box());
        body.append("<text");
        number("x", label.x());
        number("y", label.y());
        if (label.anchor() != Anchor.START) {
            attribute("text-anchor", label.anchor().attribute());
        }
        if (!label.lettering().classes().isEmpty()) {
            attribute("class", label.lettering().classes());
        }
        body.append('>').append(Escape.text(label.text())).append("</text>");
        return this;
    }

    /** The space that texts take so far. */
    List<Box> texts() {
        return texts;
    }

    /** The elements as SVG text. */
    public String body() {
        return body.toString();
    }

    private void open(String element, Style style) {
        body.append('<').append(element);
        attribute("class", style.classes());
    }

    private void number(String name, double value) {
        attribute(name, Coordinate.text(value));
    }

    private void attribute(String name, String value) {
        body.append(' ').append(name).append("=\"").append(Escape.text(value)).append('"');
    }

    private Canvas close() {
        body.append("/>");
        return this;
    }
}
