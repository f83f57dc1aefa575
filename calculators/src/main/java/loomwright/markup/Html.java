package loomwright.markup;

import loomwright.picture.Escape;
import loomwright.quantity.Quantity;

/** HTML being written. What a person typed goes in through {@link #text} only. */
public final class Html {
    private final StringBuilder out = new StringBuilder();

    /** The text with the characters that mean something in HTML spelt out. */
    public static String escape(String text) {
        return Escape.text(text);
    }

    /** Adds markup as it stands. */
    public Html tag(String markup) {
        out.append(markup);
        return this;
    }

    /** Adds a text, escaped. */
    public Html text(String text) {
        out.append(escape(text));
        return this;
    }

    /** Adds {@code name="text"} with a space before it, the text escaped. */
    public Html attribute(String name, String text) {
        out.append(' ').append(name).append("=\"").append(escape(text)).append('"');
        return this;
    }

    /** Adds a quantity that does not wrap. */
    public Html value(Quantity quantity) {
        return tag("<span class=\"value\">").text(quantity.text()).tag("</span>");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
