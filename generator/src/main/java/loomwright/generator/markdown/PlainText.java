package loomwright.generator.markdown;

/** The words of a piece of our own HTML. */
public final class PlainText {
    /** What is left out, from its first tag to its last. */
    private static final String[][] LEFT_OUT = {
        {"<math", "</math>"}, {"<svg", "</svg>"}, {"<div class=\"given\"", "</section>"}, {"<details class=\"figures\"", "</details>"},
        {"<section class=\"sheet-body\"", "</section>"}, {"<div class=\"pins\" data-calculator", "</div>"}
    };

    private PlainText() {}

    /** The words without tags, formulas, drawings and what an example or a sheet of a circuit computes and what an answer was held against, on one line. */
    public static String of(String html) {
        StringBuilder text = new StringBuilder(html.length());
        int at = 0;
        while (at < html.length()) {
            char c = html.charAt(at);
            if (c == '<') {
                at = skip(html, at);
                space(text, html, at);
            } else if (c == '&') {
                int end = html.indexOf(';', at);
                text.append(sign(html.substring(at, end + 1)));
                at = end + 1;
            } else {
                append(text, c);
                at++;
            }
        }
        return text.toString().strip();
    }

    /** The end of the tag that begins at a place, or of the whole element if it is left out. */
    private static int skip(String html, int at) {
        String whole = ">";
        for (String[] element : LEFT_OUT) {
            whole = html.startsWith(element[0], at) ? element[1] : whole;
        }
        int end = html.indexOf(whole, at);
        return end < 0 ? html.length() : end + whole.length();
    }

    /** A block element ends a word; an inline one does not. */
    private static void space(StringBuilder text, String html, int end) {
        int open = html.lastIndexOf('<', end - 1);
        boolean inline = html.startsWith("</a", open) || html.startsWith("<a", open) || html.startsWith("</em", open)
                || html.startsWith("<em", open) || html.startsWith("</str", open) || html.startsWith("<str", open)
                || html.startsWith("<span", open) || html.startsWith("</span", open) || html.startsWith("<code", open)
                || html.startsWith("</code", open);
        if (!inline) {
            append(text, ' ');
        }
    }

    private static void append(StringBuilder text, char c) {
        boolean blank = c == ' ' || c == '\n';
        if (!blank) {
            text.append(c);
        } else if (text.length() > 0 && text.charAt(text.length() - 1) != ' ') {
            text.append(' ');
        }
    }

    private static String sign(String entity) {
        return switch (entity) {
            case "&amp;" -> "&";
            case "&lt;" -> "<";
            case "&gt;" -> ">";
            case "&quot;" -> "\"";
            case "&#39;" -> "'";
            default -> entity;
        };
    }
}
