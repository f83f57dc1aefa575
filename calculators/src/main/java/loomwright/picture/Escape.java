package loomwright.picture;

/** The characters that mean something in HTML and SVG spelt out; the text is then fit for an element and for a quoted attribute. */
public final class Escape {
    private Escape() {}

    /** Most texts hold none of them and are given back as they are. */
    public static String text(String plain) {
        int at = 0;
        while (at < plain.length() && spelt(plain.charAt(at)) == null) {
            at++;
        }
        if (at == plain.length()) {
            return plain;
        }
        StringBuilder out = new StringBuilder(plain.length() + 16).append(plain, 0, at);
        for (; at < plain.length(); at++) {
            char c = plain.charAt(at);
            String spelt = spelt(c);
            if (spelt == null) {
                out.append(c);
            } else {
                out.append(spelt);
            }
        }
        return out.toString();
    }

    private static String spelt(char c) {
        return switch (c) {
            case '&' -> "&amp;";
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '"' -> "&quot;";
            case '\'' -> "&#39;";
            default -> null;
        };
    }
}
