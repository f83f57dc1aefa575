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
    /** The sheets of which one at a time is chosen and shown. */
    public static final List<Sheet> CHOSEN = List.of(Sheet.RESULTS, Sheet.SCHEDULE, Sheet.PARTS, Sheet.LABELS, Sheet.TEST_SHEET, Sheet.DRILLING);

    private CircuitMarkup() {}

    /** The whole page as it is printed, before any script has run: the drawing and what was found stand open, the sheets folded. */
    public static String printed(Links links, Examination examination) {
        Html html = new Html().tag("<div id=\"workbench\" class=\"workbench\">");
        open(html, Sheet.DRAWING, "circuit-plan");
        html.tag(heading(Sheet.DRAWING)).tag(legend()).tag("<div id=\"circuit-rows\">").tag(PlanMarkup.printed(examination, Extent.WHOLE)).tag("</div></section>");
        open(html, Sheet.FINDINGS, id(Sheet.FINDINGS));
        html.tag(heading(Sheet.FINDINGS)).tag(SheetName.of(examination.circuit())).tag(FoundMarkup.printed(links, examination)).tag("</section></div>");
        html.tag("<div id=\"circuit-sheets\">");
        for (Sheet sheet : CHOSEN) {
            open(html, sheet, id(sheet));
            html.tag("<details class=\"folded\"><summary>").tag(heading(sheet)).tag("</summary>");
            if (sheet == Sheet.DRILLING) {
                html.tag("<div id=\"drilling-sheet\">").tag(DrillingMarkup.sheet(links, examination.circuit())).tag("</div>");
            } else {
                html.tag(body(sheet, links, examination, false));
            }
            html.tag("</details></section>");
        }
        return html.tag("</div>").toString();
    }

    static String legend() {
        return "<p class=\"help\">One line stands for both conductors, out and back; two short strokes across it mark a run. Current flows downward. Each branch "
                + "leaves its trunk at a dot. On the right: the most current through the part, and the least voltage behind it.</p>";
    }

    /** The id of a sheet's element on the page. */
    public static String id(Sheet sheet) {
        return "circuit-" + sheet.key();
    }

    /**
     * One of the sheets as it stands in its element.
     *
     * @param sheet one of {@link #CHOSEN}, but not the drilling sheet, which follows its own form
     */
    public static String inside(Sheet sheet, Links links, Examination examination) {
        return heading(sheet) + body(sheet, links, examination, true);
    }

    /**
     * What was found, as it stands in its element.
     *
     * @param withPassed whether the checks that passed are unfolded
     */
    public static String found(Links links, Examination examination, boolean withPassed) {
        return heading(Sheet.FINDINGS) + SheetName.of(examination.circuit()) + FoundMarkup.live(links, examination, withPassed);
    }

    private static String body(Sheet sheet, Links links, Examination examination, boolean live) {
        String written = switch (sheet) {
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
        html.attribute("aria-labelledby", sheet.key()).tag(">");
    }

    /** What cannot be understood yet, each with a button that leads there. */
    public static String faults(Circuit circuit, List<PartFault> faults) {
        Designations designations = Designations.of(circuit);
        Html html = new Html().tag("<div class=\"summary\"><p><strong>What stands here is from before. This needs another look first:</strong></p><ul>");
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
