package loomwright.browser;

import org.teavm.jso.dom.html.HTMLElement;

/** Says of a part of the page, where it stands, that it belongs to figures from before. */
final class OldMark {
    private static final String NOTE = "<p class=\"oldnote\"></p>";

    private final HTMLElement element;
    private HTMLElement note;
    private boolean refused;

    OldMark(HTMLElement element) {
        this.element = element;
    }

    /** An entry is being typed: what stands here is from before it. Nothing moves. */
    void typing() {
        if (note == null) {
            put(false);
        }
    }

    /** An entry cannot be used: what stands here is from the last one that could. */
    void refused() {
        if (note == null || !refused) {
            clear();
            put(true);
        }
    }

    void clear() {
        if (note != null) {
            note.delete();
            note = null;
            Dom.mark(element, "old", false);
            Dom.mark(element, "typing", false);
        }
    }

    private void put(boolean isRefused) {
        refused = isRefused;
        Dom.prepend(element, NOTE);
        note = (HTMLElement) element.getFirstChild();
        note.setTextContent(isRefused ? "From your last good entry" : "From before");
        Dom.mark(element, isRefused ? "old" : "typing", true);
    }
}
