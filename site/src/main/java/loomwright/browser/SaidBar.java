package loomwright.browser;

import java.util.function.Supplier;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLElement;

/** Says what was done and what it brought, in sight and aloud, beside the button that takes it back; it stays until the next entry begins. */
final class SaidBar {
    private static final int SOON_MILLISECONDS = 300;

    private final StatusLine line;
    private int timer;

    SaidBar(HTMLElement bar) {
        this.line = new StatusLine(bar.querySelector("p"));
    }

    void say(String words) {
        Window.clearTimeout(timer);
        line.sayNow(words);
    }

    /** After a field was left: a little later, so that the next field is told first; what is to be said is found only then. */
    void saySoon(Supplier<String> words) {
        Window.clearTimeout(timer);
        timer = Window.setTimeout(() -> line.sayNow(words.get()), SOON_MILLISECONDS);
    }

    void hush() {
        Window.clearTimeout(timer);
        line.sayNow("");
    }
}
