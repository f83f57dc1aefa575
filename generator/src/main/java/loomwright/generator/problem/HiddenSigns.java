package loomwright.generator.problem;

/** Signs that show nothing, or make a line show something else than it says. None may stand in an author's text, nor in a message. */
public final class HiddenSigns {
    private static final char INSTEAD = '\uFFFD';

    private HiddenSigns() {}

    /** The text with such signs replaced by one that can be seen; its length stays. */
    public static String shown(String text) {
        int at = first(text, 0);
        if (at < 0) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text);
        for (; at >= 0; at = first(text, at + 1)) {
            shown.setCharAt(at, INSTEAD);
        }
        return shown.toString();
    }

    /** Reports every line with such a sign, and gives the file without them. */
    public static SourceFile refuse(SourceFile file, Problems problems) {
        int at = first(file.text(), 0);
        if (at < 0) {
            return file;
        }
        int line = 0;
        for (; at >= 0; at = first(file.text(), at + 1)) {
            if (file.lineAt(at) != line) {
                line = file.lineAt(at);
                problems.add(file.span(at, at + 1).problem(
                        "here stands " + name(file.text().charAt(at)) + ", which cannot be seen",
                        "Delete the words around it and type them again."));
            }
        }
        return new SourceFile(file.name(), shown(file.text()));
    }

    private static int first(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            if (isHidden(text.charAt(i))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isHidden(char c) {
        return c < ' ' && c != '\n' && c != '\t' || c >= '\u007f' && c <= '\u009f' || isDirection(c);
    }

    /** Marks that turn the direction of what follows, so that it reads as something else. */
    private static boolean isDirection(char c) {
        return c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069';
    }

    private static String name(char c) {
        String kind = isDirection(c) ? "a sign that turns the direction of the text" : "a control character";
        return kind + " (U+" + String.format("%04X", (int) c) + ")";
    }
}
