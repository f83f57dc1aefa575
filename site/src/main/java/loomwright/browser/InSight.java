package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLElement;

/** Keeps what the style sheet holds in sight really in sight. */
final class InSight {
    private InSight() {}

    /**
     * Tells the style sheet how much of the column of figures is to be held in the window: all of it, or as far as its graph, or as far as its
     * upshot. What is taller than the window even so is not held; its upshot stays at the lower edge of the window. A field is never under it.
     */
    @JSBody(
            params = "column",
            script =
                    """
                    var form = column.querySelector('form.try'), upshot = column.querySelector('.upshot'), graph = column.querySelector('.graph svg');
                    var bottom = function (element) { return element.getBoundingClientRect().bottom - column.getBoundingClientRect().top; };
                    var tell = function () {
                      var tall = column.offsetHeight, room = innerHeight - 20;
                      if (tall > room && graph) { tall = bottom(graph); }
                      if (tall > room) { tall = bottom(form) + upshot.offsetHeight + 16; }
                      column.style.setProperty('--tall', Math.round(tall) + 'px');
                      column.style.setProperty('--hold', tall > room ? 'static' : 'sticky');
                    };
                    var uncover = function () {
                      var field = document.activeElement;
                      if (!field || !form.contains(field)) { return; }
                      var box = field.getBoundingClientRect(), over = upshot.getBoundingClientRect();
                      if (over.top < box.bottom + 4 && box.top - 4 < over.bottom) {
                        scrollBy(0, over.top > innerHeight / 2 ? box.bottom - over.top + 12 : box.top - over.bottom - 12);
                      }
                    };
                    form.addEventListener('focusin', function () { uncover(); requestAnimationFrame(uncover); });
                    new ResizeObserver(tell).observe(column);
                    addEventListener('resize', tell);
                    """)
    static native void keep(HTMLElement column);

    /** With a keyboard on the screen a phone may push the upper edge of the window out of sight: tells the style sheet by how much. */
    @JSBody(
            script = """
                    var view = window.visualViewport;
                    if (!view) { return; }
                    var tell = function () {
                      var pushed = view.scale > 1.05 ? 0 : Math.max(0, Math.round(view.offsetTop));
                      document.documentElement.style.setProperty('--pushed', pushed + 'px');
                    };
                    view.addEventListener('scroll', tell);
                    view.addEventListener('resize', tell);
                    """)
    static native void followKeyboard();
}
