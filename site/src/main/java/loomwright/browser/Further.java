package loomwright.browser;

import org.teavm.jso.JSBody;

/** A further example opens when the address names something in it, also where the browser does not do so by itself. */
final class Further {
    private Further() {}

    @JSBody(
            script =
                    """
                    var open = function () {
                      var there = location.hash.length > 1 && document.getElementById(location.hash.slice(1));
                      var fold = there && there.closest('details.further:not([open])');
                      if (fold) { fold.open = true; there.scrollIntoView(); }
                    };
                    addEventListener('hashchange', open);
                    open();
                    """)
    static native void followAddress();
}
