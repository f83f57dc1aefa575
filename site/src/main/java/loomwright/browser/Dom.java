package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;
import org.teavm.jso.dom.events.Event;
import org.teavm.jso.dom.events.EventTarget;
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

    static void insertBefore(HTMLElement element, String markup) {
        insert(element, "beforebegin", markup);
    }

    @JSBody(params = {"element", "where", "markup"}, script = "element.insertAdjacentHTML(where, markup);")
    private static native void insert(HTMLElement element, String where, String markup);

    /** Gives an element a class, or takes it away. */
    @JSBody(params = {"element", "name", "on"}, script = "element.classList.toggle(name, on);")
    static native void mark(HTMLElement element, String name, boolean on);

    /** What is taller than the window is shown from its start: it may reach over the whole window already. */
    @JSBody(
            params = "element",
            script = "element.scrollIntoView({block: element.offsetHeight > innerHeight ? 'start' : 'nearest'}); element.focus({preventScroll: true});")
    static native void goTo(HTMLElement element);

    /** The nearest of an element and its parents that the selector means, or null. */
    @JSBody(params = {"element", "selector"}, script = "return element.closest(selector);")
    static native HTMLElement closest(HTMLElement element, String selector);

    @JSBody(params = {"target", "name", "action"}, script = "target.addEventListener(name, function () { action(); }, {once: true});")
    static native void once(EventTarget target, String name, Done action);

    @JSBody(script = "window.print();")
    static native void print();

    /** What to do when something is over. */
    @JSFunctor
    interface Done extends JSObject {
        void run();
    }

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

    /** What the page wrote into a box is chosen whole when the box is entered, so that typing takes its place and does not stand before it. */
    @JSBody(
            params = "box",
            script = "box.addEventListener('focus', function () { box.select(); }, {once: true});"
                    + " box.addEventListener('mouseup', function (event) { event.preventDefault(); }, {once: true});")
    static native void takeWhole(HTMLElement box);

    /** Moves to the field a link of the summary names, without changing the address. */
    @JSBody(
            params = "event",
            script = "var link = event.target.closest('a'); if (link) { event.preventDefault();"
                    + " document.getElementById(link.getAttribute('href').slice(1)).focus(); }")
    static native void followToField(Event event);
}
