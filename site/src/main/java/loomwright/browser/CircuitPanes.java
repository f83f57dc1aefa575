package loomwright.browser;

import org.teavm.jso.JSBody;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** Drawing, part and verdict. Where all have room they stand side by side; on a narrow page one is shown, and the bar leads to the others. */
final class CircuitPanes {
    private final HTMLDocument document;
    private final HTMLElement bench;

    CircuitPanes(HTMLDocument document) {
        this.document = document;
        this.bench = document.getElementById("workbench");
        show("drawing");
    }

    private void show(String pane) {
        bench.setAttribute("data-pane", pane);
        for (String each : new String[] {"drawing", "part", "verdict"}) {
            document.querySelector("#circuit-bar [data-pane=" + each + "]").setAttribute("aria-pressed", each.equals(pane) ? "true" : "false");
        }
    }

    /** The form of the part, from its top. */
    void part() {
        show("part");
        go(document.getElementById("part-title"), bench);
    }

    /** A field of the part's form. */
    void field(String key) {
        part();
        HTMLElement field = document.querySelector("#circuit-form [data-input='" + key + "'] [name]");
        if (field != null) {
            reach(field);
        }
    }

    void verdict() {
        show("verdict");
        go(document.getElementById("findings"), bench);
    }

    /** The drawing, with the focus on a part. */
    void drawing(HTMLElement row) {
        show("drawing");
        go(row, bench);
        reach(row);
    }

    private static void go(HTMLElement element, HTMLElement bench) {
        Focus.take(element);
        bring(element, bench);
    }

    /** Side by side the bench comes into view as a whole, else its top; what scrolls by itself begins at its top. */
    @JSBody(
            params = {"element", "bench"},
            script = "var form = document.querySelector('#circuit-form form'); if (element.id === 'part-title') { form.scrollTop = 0; }"
                    + " bench.scrollIntoView({block: getComputedStyle(bench).display === 'grid' ? 'nearest' : 'start'});")
    private static native void bring(HTMLElement element, HTMLElement bench);

    @JSBody(
            params = "element",
            script = "var fold = element.closest('details'); if (fold) { fold.open = true; }"
                    + " element.focus({preventScroll: true}); element.scrollIntoView({block: 'nearest'});")
    private static native void reach(HTMLElement element);

    /** Brings the part chosen into what can be seen of the drawing, without moving the page. */
    @JSBody(
            params = {"row", "plan"},
            script = "if (!row || plan.scrollHeight <= plan.clientHeight) { return; }"
                    + " var box = plan.getBoundingClientRect(), part = row.getBoundingClientRect();"
                    + " if (part.top < box.top || part.bottom > box.bottom) { plan.scrollTop += part.top - box.top - (box.height - part.height) / 2; }")
    static native void follow(HTMLElement row, HTMLElement plan);
}
