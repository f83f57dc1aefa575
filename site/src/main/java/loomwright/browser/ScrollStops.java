package loomwright.browser;

import org.teavm.jso.JSBody;

/** A formula or a table is a stop of the Tab key only where it really scrolls; some browsers see to that by themselves, others do not. */
final class ScrollStops {
    private ScrollStops() {}

    @JSBody(
            script =
                    """
                    var timer, mark = function () {
                      document.querySelectorAll('.line, .scroll').forEach(function (each) {
                        if (each.scrollWidth > each.clientWidth + 1) { each.tabIndex = 0; } else if (each !== document.activeElement) { each.removeAttribute('tabindex'); }
                      });
                    };
                    var soon = function () { clearTimeout(timer); timer = setTimeout(mark, 1500); };
                    addEventListener('resize', soon);
                    ['toggle', 'change', 'focusin', 'click'].forEach(function (name) { document.addEventListener(name, soon, true); });
                    soon();
                    """)
    static native void watch();
}
