package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLElement;

/** What is folded away in a part of the page, and is written only once it is unfolded. */
final class Folds {
    private Folds() {}

    /** Does something when a fold is opened. The event does not rise, so it is caught on its way down. */
    @JSBody(params = {"element", "then"}, script = "element.addEventListener('toggle', function (event) { if (event.target.open) { then(); } }, true);")
    static native void listen(HTMLElement element, Dom.Done then);

    /** Whether anything is unfolded. */
    @JSBody(params = "element", script = "return element.querySelector('details[open]') !== null;")
    static native boolean isOpen(HTMLElement element);
}
