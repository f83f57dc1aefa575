package loomwright.generator.circuit;

/** Text from someone else's file, made fit for a terminal: nothing in it can move the cursor, change colours or turn the writing round. */
final class PlainLine {
    private PlainLine() {}

    static String of(String text) {
        StringBuilder plain = new StringBuilder();
        text.codePoints().forEach(c -> plain.appendCodePoint(isSpace(c) ? ' ' : isHarmful(c) ? '?' : c));
        return plain.toString();
    }

    private static boolean isSpace(int c) {
        return c == '\u00a0' || c == '\u2009' || c == '\t';
    }

    private static boolean isHarmful(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR || type == Character.UNASSIGNED;
    }
}
