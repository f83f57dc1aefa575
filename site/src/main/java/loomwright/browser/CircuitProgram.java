package loomwright.browser;

import loomwright.circuit.page.BenchMarkup;
import loomwright.circuit.page.ToolsMarkup;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The program of the pages "Your circuit" and "First job": makes the printed circuit a bench, or the sample one of the reader's own. */
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
        Dom.mark(document.getDocumentElement(), "bench", true);
        Dom.insertBefore(document.getElementById("workbench"), ToolsMarkup.tools() + BenchMarkup.bar());
        Dom.insertAfter(
                document.getElementById("circuit-plan"),
                "<section id=\"circuit-form\" aria-labelledby=\"part-title\"><div id=\"part-head\"></div><div id=\"part-found\"></div>"
                        + "<form class=\"try\" novalidate></form></section><div id=\"circuit-verdicts\"><div id=\"circuit-faults\"></div></div>");
        HTMLElement verdicts = document.getElementById("circuit-verdicts");
        verdicts.appendChild(document.getElementById("circuit-findings"));
        SheetTabs.unfold(document);
        Dom.insertBefore(
                document.getElementById("drilling-sheet"), "<form id=\"drilling-form\" class=\"try\" novalidate aria-labelledby=\"drilling\"></form>");
        new CircuitDesk(document).start();
    }
}
