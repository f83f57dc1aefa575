package loomwright.browser;

import org.teavm.jso.dom.html.HTMLElement;

/** Says what was done, in sight and aloud; it stays until the next change. */
final class SaidBar {
    private final HTMLElement bar;
    private final StatusLine spoken;

    SaidBar(HTMLElement bar) {
        this.bar = bar;
        this.spoken = new StatusLine(bar.querySelector("p"));
        bar.setHidden(true);
    }

    void say(String words) {
        bar.setHidden(false);
        spoken.say(words);
        bar.querySelector("p").setTextContent(words);
    }

    void hush() {
        bar.setHidden(true);
    }
}
