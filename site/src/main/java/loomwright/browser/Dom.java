package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.dom.events.Event;
import org.teavm.jso.dom.html.HTMLElement;

/** What the page needs from the browser beyond single elements. */
final class Dom {
    private Dom() {}

    static void append(HTMLElement parent, String markup) {
        insert(parent, "beforeend", markup);
    }

    static void prepend(HTMLElement parent, String markup) {
        insert(parent, "afterbegin", markup);
    }

    static void insertAfter(HTMLElement element, String markup) {
        insert(element, "afterend", markup);
    }

    @JSBody(params = {"element", "where", "markup"}, script = "element.insertAdjacentHTML(where, markup);")
    private static native void insert(HTMLElement element, String where, String markup);

    /** A form with several boxes and no button for sending does not send at Enter; this takes the key itself. */
    static void onEnter(HTMLElement form, Runnable action) {
        form.addEventListener("keydown", event -> {
            if (isEnterInBox(event)) {
                event.preventDefault();
                action.run();
            }
        });
    }

    @JSBody(params = "event", script = "return event.key === 'Enter' && event.target.tagName === 'INPUT';")
    private static native boolean isEnterInBox(Event event);

    /** Moves to the field a link of the summary names, without changing the address. */
    @JSBody(
            params = "event",
            script = "var link = event.target.closest('a'); if (link) { event.preventDefault();"
                    + " document.getElementById(link.getAttribute('href').slice(1)).focus(); }")
    static native void followToField(Event event);
}
