package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLElement;

/** Where the keyboard is. */
final class Focus {
    private Focus() {}

    /** The id of what has the focus, if it stands in an element; else empty. */
    @JSBody(params = "element", script = "var now = document.activeElement; return now && element.contains(now) ? now.id || '' : '';")
    static native String idWithin(HTMLElement element);

    @JSBody(params = "id", script = "var element = id && document.getElementById(id); if (element) { element.focus({preventScroll: true}); }")
    static native void to(String id);

    /** Whether what had the focus is gone from the page. */
    @JSBody(script = "return !document.activeElement || document.activeElement === document.body;")
    static native boolean isLost();

    /** Moves to a heading or a part of the page, and brings it into view. */
    static void go(HTMLElement element) {
        take(element);
        intoView(element);
    }

    /** Gives a heading or a part of the page the focus, and makes it one that can have it; nothing scrolls. */
    @JSBody(
            params = "element",
            script = "if (!element.hasAttribute('tabindex') && element.tagName !== 'BUTTON') { element.setAttribute('tabindex', '-1'); }"
                    + " element.focus({preventScroll: true});")
    static native void take(HTMLElement element);

    @JSBody(params = "element", script = "element.scrollIntoView({block: 'nearest'});")
    private static native void intoView(HTMLElement element);
}
