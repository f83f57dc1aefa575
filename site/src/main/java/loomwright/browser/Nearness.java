package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** Tells of elements that come near the window: less than its height away. */
final class Nearness {
    private Nearness() {}

    /** What to do with an element that has come near. */
    @JSFunctor
    interface Near extends JSObject {
        void near(HTMLElement element);
    }

    /**
     * Hands over each element once. One a task, so that the browser can draw and take keys in between.
     *
     * @param settled called once, after those that are near at the start
     */
    @JSBody(
            params = {"document", "selector", "near", "settled"},
            script =
                    """
                    var waiting = [], said = false;
                    var next = function () {
                      if (waiting.length > 0) { near(waiting.shift()); }
                      if (waiting.length > 0) { setTimeout(next, 0); } else if (!said) { said = true; settled(); }
                    };
                    var elements = document.querySelectorAll(selector);
                    if (elements.length === 0) { next(); return; }
                    var observer = new IntersectionObserver(function (entries) {
                      var begins = waiting.length === 0;
                      entries.forEach(function (entry) {
                        if (entry.isIntersecting) { observer.unobserve(entry.target); waiting.push(entry.target); }
                      });
                      if (begins) { setTimeout(next, 0); }
                    }, {rootMargin: '100% 0px'});
                    elements.forEach(function (each) { observer.observe(each); });
                    """)
    static native void watch(HTMLDocument document, String selector, Near near, Dom.Done settled);
}
