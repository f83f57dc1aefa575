package loomwright.browser;

import org.teavm.jso.dom.html.HTMLElement;

/** Fills a form anew. What a reader unfolded stays unfolded, and the focus stays in the same field. */
final class Refill {
    private Refill() {}

    static void inside(HTMLElement form, String markup) {
        HTMLElement more = form.querySelector("details");
        boolean open = more != null && more.getAttribute("open") != null;
        String focused = Focus.idWithin(form);
        form.setInnerHTML(markup);
        HTMLElement newMore = form.querySelector("details");
        if (open && newMore != null) {
            newMore.setAttribute("open", "");
        }
        Focus.to(focused);
    }
}
