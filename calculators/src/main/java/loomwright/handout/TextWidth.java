package loomwright.handout;

/** How many lines a text takes, reckoned with letters that are rather too wide than too narrow. */
final class TextWidth {
    /** Letters of the body of a sheet on a whole line. */
    static final int SHEET = 84;
    /** Letters of one of the two columns of figures on a sheet. */
    static final int FIGURE = 45;
    /** Letters of a line of the key. */
    static final int KEY = 104;

    private TextWidth() {}

    /** The lines of a text broken at its blanks. */
    static int lines(String text, int width) {
        int lines = 1;
        int used = 0;
        int word = 0;
        for (int i = 0; i <= text.length(); i++) {
            boolean end = i == text.length() || text.charAt(i) == ' ';
            if (!end) {
                word++;
            } else {
                if (used > 0 && used + 1 + word > width) {
                    lines++;
                    used = 0;
                }
                used += used == 0 ? word : word + 1;
                while (used > width) {
                    lines++;
                    used -= width;
                }
                word = 0;
            }
        }
        return lines;
    }
}
