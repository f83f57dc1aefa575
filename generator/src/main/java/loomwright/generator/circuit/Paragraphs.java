package loomwright.generator.circuit;

/** Text for a terminal: each paragraph in lines of a width that the eye follows, the later lines as far in as the first. */
final class Paragraphs {
    private static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();

    /** One paragraph, indented. */
    void add(int indent, String words) {
        int column = 0;
        for (String word : PlainLine.of(words).strip().split(" +")) {
            if (column == 0 || column + 1 + word.length() > WIDTH) {
                text.append(column == 0 ? "" : "\n").append(" ".repeat(indent)).append(word);
                column = indent + word.length();
            } else {
                text.append(' ').append(word);
                column += 1 + word.length();
            }
        }
        text.append('\n');
    }

    void gap() {
        text.append('\n');
    }

    String written() {
        return text.toString();
    }
}
