package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.CutLine;
import loomwright.circuit.sheet.Extent;
import loomwright.circuit.sheet.Label;
import loomwright.circuit.sheet.PartsAndCuts;
import loomwright.circuit.sheet.PartsLine;
import loomwright.circuit.sheet.Schedule;
import loomwright.circuit.sheet.ScheduleRow;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.SourceMarkup;
import loomwright.quantity.Quantity;

/** Schedule of circuits, parts and cut list, labels. */
final class ListSheets {
    private static final String NONE = "\u2013";

    private ListSheets() {}

    static String schedule(Examination examination, Extent extent) {
        Html html = new Html();
        List<ScheduleRow> rows = Schedule.of(examination);
        if (rows.isEmpty()) {
            return "<p>There is no fuse-link and no breaker yet: nothing protects this circuit.</p>";
        }
        html.tag("<p>One row for each fuse-link or breaker: what it protects, up to the next one.</p>");
        TableHtml table = new TableHtml(
                html, "Schedule of circuits", "Circuit", "Device", "Conductors", "Loads", "Design current#", "Ampacity#", "Fault current#",
                "Largest drop#");
        for (ScheduleRow row : rows) {
            if (!extent.has(row.partId())) {
                continue;
            }
            table.row(row.designation() + " " + row.title()).words(row.device()).words(joined(row.conductors())).words(joined(row.loads()));
            table.number(text(row.designCurrent())).number(text(row.ampacity()));
            table.number(text(row.lowestFault()) + " to " + text(row.highestFault())).number(text(row.worstDrop())).endRow();
        }
        table.end();
        return html.tag("<p class=\"help\">Ampacity is the least of the conductors behind the device. The fault current is lowest at the far ends and ")
                .tag("highest at the device. Each check of the circuit names its source.</p>").toString();
    }

    private static String joined(List<String> words) {
        StringBuilder text = new StringBuilder();
        for (String each : words) {
            text.append(text.length() == 0 ? "" : "; ").append(each);
        }
        return text.length() == 0 ? NONE : text.toString();
    }

    private static String text(Quantity quantity) {
        return quantity == null ? NONE : quantity.text(3);
    }

    static String partsAndCuts(Links links, Circuit circuit, Extent extent) {
        PartsAndCuts lists = PartsAndCuts.of(circuit, extent);
        Html html = new Html().tag("<h3 id=\"circuit-parts-list\">Parts</h3>");
        TableHtml parts = new TableHtml(html, "Parts", "Part", "How many#", "Where");
        for (PartsLine line : lists.parts()) {
            parts.row(line.what()).number((line.count() + " " + line.unit()).strip()).words(line.designations()).endRow();
        }
        parts.end();
        html.tag("<h3 id=\"circuit-cuts\">Conductors to cut</h3><p>").text(
                "Cut two of each, out and back. To the route, " + PartsAndCuts.USUAL_END.text() + " is added at each end; nothing to a run that no "
                        + "device protects. Measure the route on the job before you cut.").tag("</p>");
        TableHtml cuts = new TableHtml(html, "Conductors to cut", "Run", "Conductor", "Route#", "Cut two of#", "Done");
        for (CutLine line : lists.cuts()) {
            cuts.row(line.designation() + " " + line.title()).words(line.conductor()).number(line.route().text()).number(line.each().text(3));
            cuts.cell("<span class=\"tick\"></span>").endRow();
        }
        cuts.end();
        return html.tag(SourceMarkup.paragraph(links, lists.allowanceSource())).toString();
    }

    static String labels(Circuit circuit, Extent extent) {
        Html html = new Html().tag("<p>Print, cut out, and fix one at each place named. The large words are the label.</p><ul class=\"labels\">");
        for (Label label : Label.of(circuit)) {
            if (!extent.has(label.partId())) {
                continue;
            }
            html.tag("<li><strong>").text(label.text()).tag("</strong> <span class=\"where\">").text(label.where()).tag("</span></li>");
        }
        return html.tag("</ul>").toString();
    }
}
