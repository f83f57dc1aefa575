package loomwright.browser;

import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** Prints all sheets of a page, or one alone. */
final class SheetPrinting {
    private static final String ALONE = "sheet-alone";
    private static final String CHOSEN = "chosen-sheet";

    private final HTMLDocument document;

    SheetPrinting(HTMLDocument document) {
        this.document = document;
        Window.current().addEventListener("afterprint", event -> clear());
    }

    /** @param key the sheet; empty for all */
    void print(String key) {
        clear();
        if (!key.isEmpty()) {
            Dom.mark(document.querySelector("main"), ALONE, true);
            Dom.mark(document.querySelector("main [data-sheet='" + key + "']"), CHOSEN, true);
        }
        Dom.print();
    }

    private void clear() {
        Dom.mark(document.querySelector("main"), ALONE, false);
        HTMLElement chosen = document.querySelector("." + CHOSEN);
        if (chosen != null) {
            Dom.mark(chosen, CHOSEN, false);
        }
    }
}
