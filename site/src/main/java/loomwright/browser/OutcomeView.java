package loomwright.browser;

import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;
import loomwright.worked.Working;
import org.teavm.jso.dom.html.HTMLElement;

/** Everything computed of one example. */
final class OutcomeView {
    private final HTMLElement element;
    private final Place place;
    private final OldMark old;

    OutcomeView(HTMLElement element, Place place) {
        this.element = element;
        this.place = place;
        this.old = new OldMark(element);
    }

    /** Shows a working: the printed one itself, or one with own figures beside it. */
    void show(Working working, Working printed) {
        String markup = working == printed
                ? OutcomeMarkup.printed(place, working, "")
                : OutcomeMarkup.own(place, working, printed, "");
        old.clear();
        Repaint.inside(element, markup);
    }

    /** What stands here and is left in place. */
    OldMark old() {
        return old;
    }
}
