package loomwright.generator.page;

import loomwright.generator.markdown.Part;
import loomwright.generator.markdown.PlainText;

/** What stands on the screen that is being gathered, and whether more may stand beside it. */
final class Gathering {
    /** Signs of running text on a screen. */
    private static final int ENOUGH = 900;

    /** Signs that a screen holds if a line announces what follows it. */
    private static final int MOST = 1150;

    /** Signs of a caution or a task: better seen whole than large. */
    private static final int OF_ONE_THING = 1300;

    /** Signs that may stand beside a figure or above an example. */
    private static final int BESIDE = 420;

    private final StringBuilder held = new StringBuilder();
    private String close = "";
    private String above = "";
    private String leading = "";
    private String kind = "text";
    private int signs;
    private boolean announces;

    /** Whether there is nothing but perhaps a heading that waits. */
    boolean isEmpty() {
        return signs == 0;
    }

    /** Whether more than a few lines stand there. */
    boolean isMuch() {
        return signs > BESIDE;
    }

    /** Whether something can be put beside or below what stands there: a few lines of text, or nothing. */
    boolean isFewLines() {
        return leading.isEmpty() && kind.equals("text") && !isMuch();
    }

    /** Whether a figure stands there by itself. */
    boolean isFigureAlone() {
        return !leading.isEmpty() && held.isEmpty();
    }

    String kind() {
        return leading.isEmpty() ? kind : "figure";
    }

    /** Whether a piece of text of a kind can stand there too. */
    boolean takes(Part part, String kindOfPart) {
        return kind.equals(kindOfPart) && (signs == 0 || signs + signs(part) <= most(kindOfPart));
    }

    private int most(String kindOfPart) {
        if (!kindOfPart.equals("text")) {
            return OF_ONE_THING;
        }
        return !leading.isEmpty() ? BESIDE : announces ? MOST : ENOUGH;
    }

    private static int signs(Part part) {
        return PlainText.of(part.html()).length();
    }

    /** Adds a piece of text; the first one comes below a line of its own, which may be empty. */
    void add(Part part, String kindOfPart, String line) {
        if (signs == 0) {
            kind = kindOfPart;
            held.append(line);
        }
        boolean sameList = !close.isEmpty() && close.equals(part.close());
        if (!sameList) {
            held.append(close).append(part.open());
        }
        close = part.close();
        held.append(part.html());
        signs += Math.max(1, signs(part));
        announces = part.html().strip().endsWith(":</p>");
    }

    /** Adds what ends a list, without counting it: a heading, a line at the foot. */
    void add(String html) {
        held.append(close).append(html);
        close = "";
    }

    /** Adds what makes the screen whole. */
    void add(String kindOfScreen, String html) {
        add(html);
        kind = kindOfScreen;
        signs = Math.max(1, signs);
    }

    /** Puts something beside the few lines that stand there. */
    void beside(String kindOfScreen, String html) {
        String text = "<div>" + held.append(close) + "</div>\n";
        held.setLength(0);
        close = "";
        add(kindOfScreen, two("before", text, html));
    }

    /** A figure without text before it waits: a few lines that follow, or a second figure, stand beside it. */
    void lead(String figure) {
        if (isFigureAlone()) {
            leading = two("pair", shown(leading), shown(figure));
            return;
        }
        above = held.append(close).toString();
        held.setLength(0);
        close = "";
        leading = figure;
        signs = 1;
    }

    String html() {
        String text = held + close;
        if (leading.isEmpty()) {
            return text;
        }
        return above + (text.isEmpty() ? leading : two("after", shown(leading), "<div>" + text + "</div>\n"));
    }

    /** Two things beside each other. */
    static String two(String how, String left, String right) {
        return "<div class=\"beside " + how + "\">\n" + left + right + "</div>\n";
    }

    /** A picture, as one of two things. */
    static String shown(String picture) {
        return "<div class=\"shown\">" + picture + "</div>\n";
    }
}
