package loomwright.picture;

/** Makes text fit for the inside of an element or a quoted attribute. */
final class Escape {
    private Escape() {}

    static String text(String plain) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.append(c);
            }
        }
        return out.toString();
    }
}
