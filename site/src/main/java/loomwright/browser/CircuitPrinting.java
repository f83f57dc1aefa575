package loomwright.browser;

import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.xml.NodeList;

/** Prints the sheets that are ticked. All ticked, the whole page is printed, with what it says before and after them. */
final class CircuitPrinting {
    private static final String SOME = "some-sheets";
    private static final String CHOSEN = "chosen-sheet";
    private static final String FIRST = "first-sheet";

    private final HTMLDocument document;
    private final CircuitView view;
    private final NodeList<? extends HTMLElement> ticks;

    CircuitPrinting(HTMLDocument document, CircuitView view) {
        this.document = document;
        this.view = view;
        this.ticks = document.querySelectorAll("#circuit-print input");
        document.getElementById("circuit-print").addEventListener("change", event -> mark());
        Window.current().addEventListener("beforeprint", event -> view.showAllSheets());
        mark();
    }

    void print() {
        view.showAllSheets();
        Dom.print();
    }

    void tick(boolean all) {
        for (int i = 0; i < ticks.getLength(); i++) {
            ((HTMLInputElement) ticks.get(i)).setChecked(all);
        }
        mark();
    }

    /** A browser prints by a command of its own too, so the marks stand all the time. */
    private void mark() {
        boolean first = true;
        boolean all = true;
        for (int i = 0; i < ticks.getLength(); i++) {
            HTMLInputElement tick = (HTMLInputElement) ticks.get(i);
            HTMLElement sheet = document.querySelector("main [data-sheet='" + tick.getValue() + "']");
            Dom.mark(sheet, CHOSEN, tick.isChecked());
            Dom.mark(sheet, FIRST, tick.isChecked() && first);
            first &= !tick.isChecked();
            all &= tick.isChecked();
        }
        Dom.mark(document.querySelector("main"), SOME, !all);
    }
}
