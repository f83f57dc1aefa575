package loomwright.browser;

import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;
import loomwright.worked.Working;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.xml.NodeList;

/** Everything computed of one example. Keeps what a reader had unfolded unfolded. */
final class OutcomeView {
    private static final String OLD_NOTE = "<p class=\"oldnote\">From your last good entry</p>";

    private final HTMLElement element;
    private final Place place;
    private final Working printed;
    private boolean old;

    OutcomeView(HTMLElement element, Place place, Working printed) {
        this.element = element;
        this.place = place;
        this.printed = printed;
    }

    void show(Working working, boolean isPrinted) {
        String markup = isPrinted
                ? OutcomeMarkup.printed(place, working, "")
                : OutcomeMarkup.own(place, working, printed, "");
        boolean[] open = unfolded();
        element.setInnerHTML(markup);
        unfold(open);
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

    private boolean[] unfolded() {
        NodeList<? extends HTMLElement> details = element.querySelectorAll("details");
        boolean[] open = new boolean[details.getLength()];
        for (int i = 0; i < open.length; i++) {
            open[i] = details.get(i).hasAttribute("open");
        }
        return open;
    }

    private void unfold(boolean[] open) {
        NodeList<? extends HTMLElement> details = element.querySelectorAll("details");
        for (int i = 0; i < open.length && i < details.getLength(); i++) {
            if (open[i]) {
                details.get(i).setAttribute("open", "");
            }
        }
    }
}
