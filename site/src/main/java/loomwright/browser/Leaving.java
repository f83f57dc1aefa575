package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/** Before the page is left, the browser asks the reader if something would be lost. */
final class Leaving {
    private Leaving() {}

    /** Whether something would be lost. */
    @JSFunctor
    interface Loss extends JSObject {
        boolean isNear();
    }

    @JSBody(
            params = "loss",
            script = "window.addEventListener('beforeunload', function (event) { if (loss()) { event.preventDefault(); event.returnValue = ''; } });")
    static native void askFirst(Loss loss);
}
