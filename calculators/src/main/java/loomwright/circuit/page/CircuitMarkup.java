package loomwright.circuit.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.Installation;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Extent;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.Words;

/** Everything that is worked out for a circuit, as sections of a page. */
public final class CircuitMarkup {
    private CircuitMarkup() {}

    /** The whole page as it is printed, before any script has run. */
    public static String printed(Links links, Examination examination) {
        Html html = new Html().tag("<div id=\"workbench\" class=\"workbench\"><section id=\"circuit-plan\" class=\"sheet-of-paper\" data-sheet=\"drawing\" aria-labelledby=\"drawing\">");
        html.tag("<h2 id=\"drawing\">Drawing</h2>").tag(legend()).tag("<div id=\"circuit-rows\">").tag(PlanMarkup.printed(examination, Extent.WHOLE));
        html.tag("</div></section></div><div id=\"circuit-sheets\">").tag(sheets(links, examination, new HashMap<>(), false));
        html.tag("</div><section id=\"circuit-drilling\" class=\"sheet-of-paper\" data-sheet=\"drilling\" aria-labelledby=\"drilling\"><h2 id=\"drilling\">Drilling sheet</h2>");
        html.tag("<div id=\"drilling-sheet\">").tag(DrillingMarkup.sheet(links, examination.circuit()));
        return html.tag("</div></section>").toString();
    }

    static String legend() {
        return "<p>One line stands for both conductors, out and back; two short strokes across it mark a run. Current flows downward. Each branch "
                + "leaves its trunk at a dot.</p>";
    }

    /**
     * Findings, results and the sheets to print.
     *
     * @param readings what was read with a meter under load, by part
     * @param live whether the page can be changed
     */
    public static String sheets(Links links, Examination examination, Map<String, String> readings, boolean live) {
        Installation installation = examination.solution().installation();
        Html html = new Html();
        section(html, examination, "findings", "What was found", FoundMarkup.of(links, examination, live));
        section(html, examination, "results", "Results", ResultsSheet.of(links, examination));
        section(html, examination, "schedule", "Schedule of circuits", ListSheets.schedule(examination, Extent.WHOLE));
        section(html, examination, "parts", "Parts and cut list", ListSheets.partsAndCuts(links, installation, Extent.WHOLE));
        section(html, examination, "labels", "Labels", ListSheets.labels(installation, Extent.WHOLE));
        section(html, examination, "test", "Test sheet", TestSheetMarkup.of(examination, Extent.WHOLE, readings, live));
        return html.toString();
    }

    private static void section(Html html, Examination examination, String key, String title, String body) {
        html.tag("<section class=\"sheet-of-paper\" data-sheet=\"" + key + "\" aria-labelledby=\"" + key + "\"><h2 id=\"" + key + "\">").text(title).tag("</h2>");
        html.tag(SheetName.of(examination.circuit())).tag(body).tag("</section>");
    }

    /** What cannot be understood yet, each with a button that leads there. */
    public static String faults(Circuit circuit, List<PartFault> faults) {
        Designations designations = Designations.of(circuit);
        Html html = new Html().tag("<div class=\"summary\"><p><strong>Below are the figures from before: this needs another look first.</strong></p><ul>");
        for (PartFault fault : faults) {
            html.tag("<li>");
            if (circuit.part(fault.partId()) != null) {
                html.tag("<button type=\"button\" class=\"quiet\"").attribute("data-go", fault.partId()).tag(">");
                html.text(designations.titled(fault.partId())).tag("</button> ");
            }
            html.text(Words.sentence(fault.message())).tag("</li>");
        }
        return html.tag("</ul></div>").toString();
    }
}
