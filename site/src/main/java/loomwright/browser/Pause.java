package loomwright.browser;

import org.teavm.jso.browser.Window;

/** Does something once no key has been pressed for a moment: a number that is half typed is not yet an entry. */
final class Pause {
    private static final int MILLISECONDS = 900;

    private int timer;
    private boolean waiting;

    /** A key was pressed: the moment begins anew. */
    void begin(Runnable then) {
        end();
        waiting = true;
        timer = Window.setTimeout(then::run, MILLISECONDS);
    }

    /** The entry is finished, or gone: nothing is waited for. */
    void end() {
        waiting = false;
        Window.clearTimeout(timer);
    }

    /** The field is left: what would be done after the moment is done now, if it was not yet. */
    void finish(Runnable then) {
        if (waiting) {
            end();
            then.run();
        }
    }
}
