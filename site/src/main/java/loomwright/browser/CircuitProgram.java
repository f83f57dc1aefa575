package loomwright.browser;

import loomwright.circuit.page.ToolsMarkup;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The program of the page "Your circuit": makes the printed circuit one that can be changed. */
final class CircuitProgram {
    private CircuitProgram() {}

    public static void main(String[] arguments) {
        HTMLDocument document = HTMLDocument.current();
        HTMLElement bench = document.getElementById("workbench");
        Dom.insertBefore(bench, ToolsMarkup.tools());
        Dom.append(bench, "<section id=\"circuit-form\" aria-labelledby=\"part-title\"><form class=\"try\" novalidate></form></section>");
        Dom.insertBefore(document.getElementById("circuit-sheets"), "<div id=\"circuit-faults\"></div>");
        Dom.insertBefore(
                document.getElementById("drilling-sheet"), "<form id=\"drilling-form\" class=\"try\" novalidate aria-labelledby=\"drilling\"></form>");
        Dom.append(document.querySelector("main"), ToolsMarkup.said());
        new CircuitDesk(document).start();
        Printing.prepare(document);
        PageProgram.isReady();
    }
}
