package loomwright.browser;

import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;
import loomwright.worked.Working;
import org.teavm.jso.dom.html.HTMLElement;

/** Everything computed of one example. */
final class OutcomeView {
    private static final String OLD_NOTE = "<p class=\"oldnote\">From your last good entry</p>";

    private final HTMLElement element;
    private final Place place;
    private boolean old;

    OutcomeView(HTMLElement element, Place place) {
        this.element = element;
        this.place = place;
    }

    /** Shows a working: the printed one itself, or one with own figures beside it. */
    void show(Working working, Working printed) {
        String markup = working == printed
                ? OutcomeMarkup.printed(place, working, "")
                : OutcomeMarkup.own(place, working, printed, "");
        if (old) {
            element.getFirstChild().delete();
        }
        Repaint.inside(element, markup);
        element.setClassName("outcome");
        old = false;
    }

    /** Leaves the last good outcome in place and says that it is old. */
    void markOld() {
        if (!old) {
            element.setClassName("outcome old");
            Dom.prepend(element, OLD_NOTE);
            old = true;
        }
    }
}
