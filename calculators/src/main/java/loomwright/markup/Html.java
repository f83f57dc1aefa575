package loomwright.markup;

import loomwright.quantity.Quantity;

/** HTML being written. What a person typed goes in through {@link #text} only. */
public final class Html {
    private final StringBuilder out = new StringBuilder();

    /** The text with the characters that mean something in HTML spelt out; fit for an element and for a quoted attribute. */
    public static String escape(String text) {
        int plain = 0;
        while (plain < text.length() && !isSpelt(text.charAt(plain))) {
            plain++;
        }
        return plain == text.length() ? text : spelt(text);
    }

    private static boolean isSpelt(char c) {
        return c == '&' || c == '<' || c == '>' || c == '"' || c == '\'';
    }

    private static String spelt(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.append(c);
            }
        }
        return escaped.toString();
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
