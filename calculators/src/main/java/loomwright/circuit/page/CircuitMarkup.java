package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Extent;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.Words;

/** Everything that is worked out for a circuit, as sections of a page. */
public final class CircuitMarkup {
    /** Findings, results and the sheets to print, all worked out from the circuit. */
    public static final List<Sheet> FOLLOWING =
            List.of(Sheet.FINDINGS, Sheet.RESULTS, Sheet.SCHEDULE, Sheet.PARTS, Sheet.LABELS, Sheet.TEST_SHEET);

    private CircuitMarkup() {}

    /** The whole page as it is printed, before any script has run. */
    public static String printed(Links links, Examination examination) {
        Html html = new Html().tag("<div id=\"workbench\" class=\"workbench\">");
        open(html, Sheet.DRAWING, "circuit-plan");
        html.tag(legend()).tag("<div id=\"circuit-rows\">").tag(PlanMarkup.printed(examination, Extent.WHOLE));
        html.tag("</div></section></div><div id=\"circuit-sheets\">").tag(sheets(links, examination, false)).tag("</div>");
        open(html, Sheet.DRILLING, "circuit-drilling");
        html.tag("<div id=\"drilling-sheet\">").tag(DrillingMarkup.sheet(links, examination.circuit()));
        return html.tag("</div></section>").toString();
    }

    static String legend() {
        return "<p>One line stands for both conductors, out and back; two short strokes across it mark a run. Current flows downward. Each branch "
                + "leaves its trunk at a dot.</p>";
    }

    private static String sheets(Links links, Examination examination, boolean live) {
        Html html = new Html();
        for (Sheet sheet : FOLLOWING) {
            open(html, sheet, id(sheet));
            html.tag(body(sheet, links, examination, live)).tag("</section>");
        }
        return html.toString();
    }

    /** The id of a sheet's element on the page. */
    public static String id(Sheet sheet) {
        return "circuit-" + sheet.key();
    }

    /**
     * One of the sheets that follow from the circuit, as it stands in its element.
     *
     * @param sheet one of {@link #FOLLOWING}
     */
    public static String inside(Sheet sheet, Links links, Examination examination) {
        return heading(sheet) + body(sheet, links, examination, true);
    }

    private static String body(Sheet sheet, Links links, Examination examination, boolean live) {
        String written = switch (sheet) {
            case FINDINGS -> FoundMarkup.of(links, examination, live);
            case RESULTS -> ResultsSheet.of(links, examination);
            case TEST_SHEET -> TestSheetMarkup.of(examination, Extent.WHOLE, live);
            default -> LessonSheet.markup(sheet, links, examination, Extent.WHOLE);
        };
        return SheetName.of(examination.circuit()) + written;
    }

    private static String heading(Sheet sheet) {
        return new Html().tag("<h2").attribute("id", sheet.key()).tag(">").text(sheet.title()).tag("</h2>").toString();
    }

    private static void open(Html html, Sheet sheet, String id) {
        html.tag("<section").attribute("id", id).attribute("class", "sheet-of-paper").attribute("data-sheet", sheet.key());
        html.attribute("aria-labelledby", sheet.key()).tag(">").tag(heading(sheet));
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
