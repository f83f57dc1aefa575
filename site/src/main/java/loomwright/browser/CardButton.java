package loomwright.browser;

import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** Prints the card at the end of a lesson by itself. */
final class CardButton {
    private CardButton() {}

    static void mount(HTMLDocument document) {
        HTMLElement button = document.querySelector("#print-card");
        if (button != null) {
            SheetPrinting printing = new SheetPrinting(document);
            button.setHidden(false);
            button.addEventListener("click", event -> printing.print("card"));
        }
    }
}
