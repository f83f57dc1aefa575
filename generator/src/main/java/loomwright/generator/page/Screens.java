package loomwright.generator.page;

import java.util.ArrayList;
import java.util.List;
import loomwright.generator.markdown.Heading;
import loomwright.generator.markdown.Part;

/**
 * Gathers the pieces of a lesson into screens: as many as a room can take in at a glance, and never more than fits. Short pieces that follow each
 * other share a screen, and a few lines before or after a figure, or before an example, stand beside it. What does not fit is made smaller by the
 * page's script, never cut.
 */
final class Screens {
    /** The page begins with a screen for the title. */
    private static final int FIRST = 2;

    private final List<Screen> screens = new ArrayList<>();
    private final List<Jump> outline = new ArrayList<>();
    private final List<Screens> asides = new ArrayList<>();
    private final String further;
    private Gathering now = new Gathering();
    private String section;
    private String title = "";
    private int regular;
    private boolean begins;
    private boolean place;

    Screens() {
        this(null, "");
    }

    private Screens(String further, String section) {
        this.further = further;
        this.section = section;
    }

    /** The pieces of a text on screens of one kind, each below the same line of its own. The outline names the first of them. */
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
        if (!now.takes(part, kindOfPart)) {
            end();
        }
        now.add(part, kindOfPart, above);
    }

    /** A heading of a section begins a screen, and stays above the screens after it. A smaller one does so if much stands above it. */
    private void heading(Heading heading, String html) {
        if (heading.level() == 2 || now.isMuch()) {
            end();
        }
        if (heading.level() == 2) {
            section = heading.text();
            begins = true;
        }
        now.add(html);
    }

    /** A figure, which shares a screen with the few lines before or after it, or with the figure before it. */
    void figure(String titleOfFigure, String html) {
        if (now.isFigureAlone()) {
            now.lead(html);
            end();
            return;
        }
        beforeMore();
        if (now.isEmpty()) {
            now.lead(html);
            title = titleOfFigure;
        } else {
            now.beside("figure", Gathering.shown(html));
            ends(titleOfFigure);
        }
    }

    /** What shares a screen with the few lines before it, such as a formula. More than a few stand on a screen before it. */
    void beside(String kindOfScreen, String titleOfScreen, String html) {
        beforeMore();
        if (now.isEmpty()) {
            now.add(kindOfScreen, html);
        } else {
            now.beside(kindOfScreen, "<div>" + html + "</div>\n");
        }
        ends(titleOfScreen);
    }

    /** What needs the whole width, below the few lines before it. */
    void below(String kindOfScreen, String titleOfScreen, String html) {
        beforeMore();
        now.add(kindOfScreen, html);
        ends(titleOfScreen);
    }

    /** The first screen of an example: below the few lines before it, and named by the outline. */
    void place(String kindOfScreen, String titleOfScreen, String html) {
        beforeMore();
        place = true;
        below(kindOfScreen, titleOfScreen, html);
    }

    /** A screen of its own. A heading that waits stands above it. */
    void screen(String kindOfScreen, String titleOfScreen, String html) {
        end();
        now.add(kindOfScreen, html);
        ends(titleOfScreen);
    }

    private void beforeMore() {
        if (!now.isFewLines()) {
            end();
        }
    }

    private void ends(String titleOfScreen) {
        title = titleOfScreen;
        end();
    }

    /**
     * Screens that are passed over unless somebody asks: they stand behind the one that is being gathered, which goes on as if they were not there
     * and names them at its foot.
     */
    Screens passedOver(String key, String foot) {
        if (now.isFigureAlone()) {
            end();
        }
        if (!now.isEmpty()) {
            now.add(foot);
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
        if (now.isEmpty()) {
            return;
        }
        String name = title.isEmpty() ? section : title;
        String id = further == null ? "screen-" + (regular++ + FIRST) : "further-" + further + "-" + screens.size();
        String said = further == null ? "Screen " + (regular + 1) : "Further example";
        screens.add(new Screen(id, said, name, now.kind(), begins || section.isEmpty() ? null : section, further, now.html()));
        if (begins || place) {
            outline.add(new Jump(begins ? section : name, id, !begins, further != null));
        }
        now = new Gathering();
        title = "";
        begins = false;
        place = false;
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
    List<Jump> outline() {
        return List.copyOf(outline);
    }

    List<Screen> all() {
        end();
        behind();
        return screens.stream().map(each -> each.of(count())).toList();
    }
}
