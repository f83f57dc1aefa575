package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.markdown.Heading;
import loomwright.generator.markdown.Part;
import loomwright.generator.markdown.PlainText;

/**
 * Gathers the pieces of a lesson into screens: as many as a room can take in at a glance, and never more than fits. Short pieces that follow each
 * other share a screen, and a few lines before a figure, a table or an example stand beside it. What does not fit is made smaller by the page's
 * script, never cut.
 */
final class Screens {
    /** Signs of running text on a screen. */
    private static final int ENOUGH = 900;

    /** Signs that a screen holds if a line announces what follows it, or one more item ends a list. */
    private static final int MOST = 1150;

    /** Signs of a caution or a task: better seen whole than large. */
    private static final int OF_ONE_THING = 1300;

    /** Signs that may stand beside a figure or above an example. */
    private static final int BESIDE = 420;

    /** The page begins with a screen for the title. */
    private static final int FIRST = 2;

    /**
     * A place to jump to.
     *
     * @param title its name
     * @param id its screen
     * @param deep whether it lies within a section
     * @param further whether it is passed over
     */
    record Place(String title, String id, boolean deep, boolean further) {}

    private final List<Screen> screens = new ArrayList<>();
    private final List<Place> outline = new ArrayList<>();
    private final StringBuilder held = new StringBuilder();
    private final List<Screens> asides = new ArrayList<>();
    private final String further;
    private String section;
    private String title = "";
    private String close = "";
    private String above = "";
    private String leading = "";
    private String kind = "text";
    private int regular;
    private int signs;
    private boolean begins;
    private boolean place;
    private boolean announces;

    Screens() {
        this(null, "");
    }

    private Screens(String further, String section) {
        this.further = further;
        this.section = section;
    }

    /** The pieces of a text on screens of one kind, each below the same line of its own, which may be empty. */
    void parts(List<Part> parts, String kindOfAll, String above, String titleOfAll) {
        end();
        place = true;
        for (Part part : parts) {
            if (!part.html().isEmpty()) {
                piece(part, kindOfAll, above);
                title = titleOfAll;
            }
        }
        end();
    }

    /** One piece of the running text. */
    void part(Part part) {
        if (part.heading() == null) {
            piece(part, "text", "");
        } else {
            heading(part.heading(), part.html());
        }
    }

    private void piece(Part part, String kindOfPart, String above) {
        int more = PlainText.of(part.html()).length();
        boolean full = signs > 0 && signs + more > most(kindOfPart);
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

    private int most(String kindOfPart) {
        if (!kindOfPart.equals("text")) {
            return OF_ONE_THING;
        }
        return !leading.isEmpty() ? BESIDE : announces ? MOST : ENOUGH;
    }

    /** A heading of a section begins a screen, and stays above the screens after it. A smaller one does so if much stands above it. */
    private void heading(Heading heading, String html) {
        if (heading.level() == 2 || signs > BESIDE) {
            end();
        }
        if (heading.level() == 2) {
            section = heading.text();
            begins = true;
        }
        held.append(close).append(html);
        close = "";
    }

    /** What shares a screen with the few lines before it: a figure or a formula. More than a few stand on a screen before it. */
    void beside(String kindOfScreen, String titleOfScreen, String html) {
        boolean figure = kindOfScreen.equals("figure");
        if (figure && !leading.isEmpty() && signs == 1) {
            leading = two("pair", shown(leading), shown(html));
            end();
            return;
        }
        if (!leading.isEmpty() || !kind.equals("text") || signs > BESIDE) {
            end();
        }
        if (signs > 0) {
            String text = "<div>" + held.append(close) + "</div>\n";
            held.setLength(0);
            held.append(two("before", text, figure ? shown(html) : "<div>" + html + "</div>\n"));
        } else if (figure) {
            lead(titleOfScreen, html);
            return;
        } else {
            held.append(close).append(html);
        }
        shown(kindOfScreen, titleOfScreen);
    }

    /** A figure without text before it waits: a few lines that follow, or a second figure, stand beside it. */
    private void lead(String titleOfScreen, String html) {
        above = held.append(close).toString();
        held.setLength(0);
        close = "";
        leading = html;
        title = titleOfScreen;
        signs = 1;
    }

    /** Two things beside each other. */
    static String two(String how, String left, String right) {
        return "<div class=\"beside " + how + "\">\n" + left + right + "</div>\n";
    }

    /** A picture, as one of two things. */
    static String shown(String picture) {
        return "<div class=\"shown\">" + picture + "</div>\n";
    }

    /** A screen of its own. A heading that waits stands above it. */
    void screen(String kindOfScreen, String titleOfScreen, String html) {
        end();
        held.append(close).append(html);
        shown(kindOfScreen, titleOfScreen);
    }

    /** The first screen of an example: below the few lines before it, and named by the outline. */
    void place(String kindOfScreen, String titleOfScreen, String html) {
        place = true;
        below(kindOfScreen, titleOfScreen, html);
    }

    /** What needs the whole width, below the few lines before it. */
    void below(String kindOfScreen, String titleOfScreen, String html) {
        if (!leading.isEmpty() || !kind.equals("text") || signs > BESIDE) {
            boolean kept = place;
            place = false;
            end();
            place = kept;
        }
        held.append(close).append(html);
        shown(kindOfScreen, titleOfScreen);
    }

    private void shown(String kindOfScreen, String titleOfScreen) {
        close = "";
        kind = kindOfScreen;
        title = titleOfScreen;
        signs = 1;
        end();
    }

    /**
     * Screens that are passed over unless somebody asks: they stand behind the one that is being gathered, which goes on as if they were not there
     * and names them at its foot.
     */
    Screens passedOver(String key, String foot) {
        if (!leading.isEmpty()) {
            end();
        }
        if (signs > 0) {
            held.append(close).append(foot);
            close = "";
        } else if (!screens.isEmpty()) {
            int last = screens.size() - 1;
            while (last > 0 && screens.get(last).further() != null) {
                last--;
            }
            screens.set(last, screens.get(last).with(foot));
        }
        Screens aside = new Screens(key, section);
        asides.add(aside);
        return aside;
    }

    /** Ends the screen, if it shows more than a heading. */
    private void end() {
        if (signs == 0) {
            return;
        }
        String html = held.append(close).toString();
        if (!leading.isEmpty()) {
            html = above + (html.isEmpty() ? leading : two("after", shown(leading), "<div>" + html + "</div>\n"));
            kind = "figure";
        }
        String name = title.isEmpty() ? section : title;
        String id = further == null ? "screen-" + (regular++ + FIRST) : "further-" + further + "-" + screens.size();
        String said = further == null ? "Screen " + (regular + 1) : "Further example";
        screens.add(new Screen(id, said, name, kind, begins || section.isEmpty() ? null : section, further, html));
        if (begins || place) {
            outline.add(new Place(begins ? section : name, id, !begins, further != null));
        }
        held.setLength(0);
        leading = "";
        above = "";
        signs = 0;
        close = "";
        kind = "text";
        title = "";
        begins = false;
        place = false;
        announces = false;
        behind();
    }

    /** Puts what is passed over behind the screen that names it. */
    private void behind() {
        for (Screens aside : asides) {
            aside.end();
            screens.addAll(aside.screens);
            outline.addAll(aside.outline);
        }
        asides.clear();
    }

    /** How many are shown one after another, with the first and the last one of the page. */
    int count() {
        return regular + 2;
    }

    /** The places to jump to. */
    List<Place> outline() {
        return List.copyOf(outline);
    }

    List<Screen> all() {
        end();
        behind();
        return screens.stream().map(each -> each.of(count())).toList();
    }
}
