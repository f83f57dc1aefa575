package loomwright.browser;

import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLElement;

/** Tells a screen reader one sentence after a change; waits for a pause in typing, so that half a number is not read out. */
final class StatusLine {
    private static final int PAUSE_MILLISECONDS = 600;
    private static final int MORE_MILLISECONDS = 300;

    private final HTMLElement element;
    private int timer;

    StatusLine(HTMLElement element) {
        this.element = element;
    }

    void say(String words) {
        later(words, PAUSE_MILLISECONDS);
    }

    /** For an entry that is taken after a pause of its own: a little later still. */
    void saySoon(String words) {
        later(words, MORE_MILLISECONDS);
    }

    void sayNow(String words) {
        hush();
        element.setTextContent(words);
    }

    /** What was to be said is not said. */
    void hush() {
        Window.clearTimeout(timer);
    }

    private void later(String words, int milliseconds) {
        hush();
        timer = Window.setTimeout(() -> element.setTextContent(words), milliseconds);
    }
}
