package loomwright.browser;

import loomwright.circuit.page.ToolsMarkup;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The program of the pages "Your circuit" and "First job": makes the printed circuit one that can be changed, or the sample one of the reader's own. */
final class CircuitProgram {
    private CircuitProgram() {}

    public static void main(String[] arguments) {
        HTMLDocument document = HTMLDocument.current();
        if (document.getElementById("first-job") != null) {
            new FirstJob(document).start();
        } else {
            startBench(document);
        }
        Printing.prepare(document);
        PageProgram.isReady();
    }

    private static void startBench(HTMLDocument document) {
        HTMLElement bench = document.getElementById("workbench");
        Dom.insertBefore(bench, ToolsMarkup.tools());
        Dom.append(bench, "<section id=\"circuit-form\" aria-labelledby=\"part-title\"><form class=\"try\" novalidate></form></section>");
        Dom.insertBefore(document.getElementById("circuit-sheets"), "<div id=\"circuit-faults\"></div>");
        Dom.insertBefore(
                document.getElementById("drilling-sheet"), "<form id=\"drilling-form\" class=\"try\" novalidate aria-labelledby=\"drilling\"></form>");
        Dom.append(document.querySelector("main"), ToolsMarkup.said());
        new CircuitDesk(document).start();
    }
}
