package loomwright.browser;

import loomwright.circuit.page.BenchMarkup;
import loomwright.circuit.page.CircuitMarkup;
import loomwright.circuit.page.Sheet;
import org.teavm.jso.JSBody;
import org.teavm.jso.dom.events.Event;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The sheets, of which one is chosen and shown. */
final class SheetTabs {
    private static final String SHOWN = "shown";

    private final HTMLDocument document;
    private Sheet chosen = CircuitMarkup.CHOSEN.get(0);

    SheetTabs(HTMLDocument document, Runnable whenChosen) {
        this.document = document;
        HTMLElement tabs = document.querySelector("#circuit-sheets .tabs");
        tabs.addEventListener("click", event -> choose((HTMLElement) event.getTarget(), whenChosen));
        tabs.addEventListener("keydown", event -> {
            HTMLElement next = next(event);
            if (next != null) {
                event.preventDefault();
                next.focus();
                choose(next, whenChosen);
            }
        });
        mark();
    }

    /** What was printed folded stands open, below tabs. */
    static void unfold(HTMLDocument document) {
        HTMLElement sheets = document.getElementById("circuit-sheets");
        unfold(sheets);
        Dom.prepend(sheets, BenchMarkup.tabs());
        for (Sheet sheet : CircuitMarkup.CHOSEN) {
            document.getElementById(CircuitMarkup.id(sheet)).setAttribute("role", "tabpanel");
        }
    }

    @JSBody(
            params = "sheets",
            script = "sheets.querySelectorAll('.folded').forEach(function (each) { each.replaceWith.apply(each,"
                    + " [each.firstChild.firstChild].concat(Array.from(each.childNodes).slice(1))); });")
    private static native void unfold(HTMLElement sheets);

    Sheet chosen() {
        return chosen;
    }

    private void choose(HTMLElement tab, Runnable whenChosen) {
        for (Sheet sheet : CircuitMarkup.CHOSEN) {
            if (sheet.key().equals(tab.getAttribute("data-tab"))) {
                chosen = sheet;
                mark();
                whenChosen.run();
            }
        }
    }

    private void mark() {
        for (Sheet sheet : CircuitMarkup.CHOSEN) {
            HTMLElement tab = document.getElementById("tab-" + sheet.key());
            tab.setAttribute("aria-selected", sheet == chosen ? "true" : "false");
            tab.setAttribute("tabindex", sheet == chosen ? "0" : "-1");
            Dom.mark(document.getElementById(CircuitMarkup.id(sheet)), SHOWN, sheet == chosen);
        }
    }

    @JSBody(
            params = "event",
            script = "var at = event.target, row = at.parentElement; return event.key === 'ArrowRight' ? at.nextElementSibling || row.firstElementChild"
                    + " : event.key === 'ArrowLeft' ? at.previousElementSibling || row.lastElementChild"
                    + " : event.key === 'Home' ? row.firstElementChild : event.key === 'End' ? row.lastElementChild : null;")
    private static native HTMLElement next(Event event);
}
