package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.markdown.Heading;
import loomwright.generator.markdown.Part;
import loomwright.generator.markdown.PlainText;

/**
 * Gathers the pieces of a lesson into screens: one idea each. Short pieces that follow each other share a screen, and a line that ends in a
 * colon stays with what it announces. What does not fit is made smaller by the page's script, never cut.
 */
final class Screens {
    /** Signs on a screen that a room can read at a glance. */
    private static final int ENOUGH = 340;

    /** Signs that a screen holds if a line announces what follows it. */
    private static final int MOST = 520;

    /** The page begins with a screen for the title. */
    private static final int FIRST = 2;

    private final List<Screen> screens = new ArrayList<>();
    private final StringBuilder held = new StringBuilder();
    private String section = "";
    private String close = "";
    private String kind = "text";
    private int signs;
    private boolean begins;
    private boolean announces;

    /** The pieces of a text on screens of one kind, each below the same line of its own, which may be empty. */
    void parts(List<Part> parts, String kindOfAll, String above) {
        for (Part part : parts) {
            if (!part.html().isEmpty()) {
                part(part, kindOfAll, above);
            }
        }
        end();
    }

    /** One piece of the running text. */
    void part(Part part, String kindOfPart, String above) {
        if (part.heading() != null) {
            heading(part.heading(), part.html());
            return;
        }
        int more = PlainText.of(part.html()).length();
        boolean full = signs > 0 && signs + more > (announces ? MOST : ENOUGH);
        if (full || !kind.equals(kindOfPart)) {
            end();
        }
        if (signs == 0) {
            kind = kindOfPart;
            held.append(above);
        }
        boolean sameList = !close.isEmpty() && close.equals(part.close());
        if (!sameList) {
            held.append(close).append(part.open());
        }
        close = part.close();
        held.append(part.html());
        signs += Math.max(1, more);
        announces = part.html().strip().endsWith(":</p>");
    }

    /** A heading begins a screen; that of a section stays above the screens after it. */
    private void heading(Heading heading, String html) {
        end();
        if (heading.level() == 2) {
            section = heading.text();
            begins = true;
        }
        held.append(html);
    }

    /** A screen of its own. A heading that waits stands above it. */
    void screen(String kindOfScreen, String html) {
        end();
        kind = kindOfScreen;
        held.append(html);
        signs = 1;
        end();
    }

    /** Ends the screen, if it shows more than a heading. */
    private void end() {
        if (signs == 0) {
            return;
        }
        String html = held.append(close).toString();
        int number = screens.size() + FIRST;
        screens.add(new Screen("screen-" + number, "Screen " + number, kind, begins || section.isEmpty() ? null : section, html));
        held.setLength(0);
        signs = 0;
        close = "";
        kind = "text";
        begins = false;
        announces = false;
    }

    List<Screen> all() {
        end();
        return List.copyOf(screens);
    }
}
