package loomwright.browser;

import org.teavm.jso.dom.html.HTMLElement;

/** Says what was done and what it brought, in sight and aloud, beside the button that takes it back; it stays until the next entry begins. */
final class SaidBar {
    private final StatusLine line;

    SaidBar(HTMLElement bar) {
        this.line = new StatusLine(bar.querySelector("p"));
    }

    void say(String words) {
        line.sayNow(words);
    }

    /** After a field was left: a little later, so that the next field is told first. */
    void saySoon(String words) {
        line.saySoon(words);
    }

    void hush() {
        line.sayNow("");
    }
}
