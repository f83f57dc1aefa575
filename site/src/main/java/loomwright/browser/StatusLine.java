package loomwright.browser;

import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLElement;

/** Tells a screen reader one sentence after a change; waits for a pause in typing, so that not every keystroke is read out. */
final class StatusLine {
    private static final int PAUSE_MILLISECONDS = 600;

    private final HTMLElement element;
    private int timer;

    StatusLine(HTMLElement element) {
        this.element = element;
    }

    void say(String words) {
        Window.clearTimeout(timer);
        timer = Window.setTimeout(() -> element.setTextContent(words), PAUSE_MILLISECONDS);
    }
}
