package loomwright.circuit.page;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.DrilledPanel;
import loomwright.picture.FullSizePanel;
import loomwright.picture.RowOfCutOuts;
import loomwright.markup.FieldMarkup;
import loomwright.markup.FindingsMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.Place;
import loomwright.markup.Words;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.EntryFault;
import loomwright.worked.Field;
import loomwright.worked.Outcome;
import loomwright.worked.Working;

/** The drilling sheet of the panel the outlets go into, and the form it is filled from. */
public final class DrillingMarkup {
    /** Where the form stands: every id in it begins with {@code drill-}. */
    public static final Place PLACE = new Place("drill", new Links(""), List.of());

    private static final String FIRST = " panel-width panel-height count hole-diameter centre-distance first-centre row-height clear-depth ";

    private DrillingMarkup() {}

    /** The form, filled. */
    public static String form(DrilledPanel panel) {
        Html html = new Html().tag("<div class=\"summary\" tabindex=\"-1\" hidden></div>");
        fields(html, panel, true);
        html.tag("<details><summary>Edges, room and frames behind</summary>");
        fields(html, panel, false);
        return html.tag("</details>").toString();
    }

    private static void fields(Html html, DrilledPanel panel, boolean first) {
        for (Field field : DrilledPanel.FIELDS) {
            if (first == FIRST.indexOf(" " + field.key() + " ") >= 0) {
                html.tag(FieldMarkup.of(PLACE, field, panel.text(field.key())));
            }
        }
    }

    /** The sheet; a panel that cannot be worked out gives the reason in its place. */
    public static String sheet(Links links, Circuit circuit) {
        return sheet(links, circuit, circuit.panel().isEmpty() ? null : circuit.panel().outcome());
    }

    /** The sheet of a circuit whose panel has been worked out; {@code outcome} is null if nothing is to be drilled. */
    public static String sheet(Links links, Circuit circuit, Outcome outcome) {
        return SheetName.of(circuit) + sheet(links, circuit.panel(), outcome);
    }

    private static String sheet(Links links, DrilledPanel panel, Outcome outcome) {
        if (outcome == null) {
            return "<p>No panel has been entered: there is nothing to drill yet.</p>";
        }
        return outcome.working() == null ? faults(outcome.faults()) : drawn(links, panel, outcome.working());
    }

    private static String faults(List<EntryFault> faults) {
        Html html = new Html().tag("<p>The sheet cannot be drawn before these are put right:</p><ul>");
        for (EntryFault fault : faults) {
            html.tag("<li>").text(Words.sentence(fault.message())).tag("</li>");
        }
        return html.tag("</ul>").toString();
    }

    private static String drawn(Links links, DrilledPanel panel, Working working) {
        RowOfCutOuts row = row(working);
        double last = working.result("last-centre").quantity().in(Units.MILLIMETRE).value();
        Html html = new Html().tag("<p>Print at 100&#8239;% (“actual size”), never “fit to page”. On a screen the drawing is not true. Lay a steel ruler "
                + "on the bar, and measure the panel upright too: print again if either is off by more than half a millimetre. Drill when every check has "
                + "passed and you have looked and felt behind the panel.</p>");
        if (FullSizePanel.holds(row, last)) {
            String size = panel.text("panel-width") + " wide and " + panel.text("panel-height") + " high";
            html.tag("<figure class=\"figure\">").tag(
                    FullSizePanel.of(row, last, size, panel.text("hole-diameter"), panel.text("row-height")).svg("drilling-drawing")).tag("</figure>");
        } else {
            html.tag("<p>The row is longer than a sheet of paper. Mark the centres from the table.</p>");
        }
        centres(html, row, last, panel);
        return html.tag(FindingsMarkup.list(links, working)).toString();
    }

    private static RowOfCutOuts row(Working working) {
        return new RowOfCutOuts(
                millimetres(working, "panel-width"), millimetres(working, "panel-height"), millimetres(working, "hole-diameter"),
                millimetres(working, "centre-distance"), millimetres(working, "first-centre"), millimetres(working, "row-height"),
                Integer.parseInt(working.entries().choice("count")));
    }

    private static double millimetres(Working working, String key) {
        return working.entries().quantity(key).in(Units.MILLIMETRE).value();
    }

    private static void centres(Html html, RowOfCutOuts row, double last, DrilledPanel panel) {
        TableHtml table = new TableHtml(html, "Centres to mark", "Cut-out", "From the left edge#", "Above the lower edge#", "Diameter#", "Done");
        double[] centres = row.centres(row.first(), last);
        for (int i = 0; i < centres.length; i++) {
            table.row(Integer.toString(i + 1)).number(Quantity.of(centres[i], Units.MILLIMETRE).text(4));
            table.number(panel.text("row-height")).number(panel.text("hole-diameter")).cell("<span class=\"tick\"></span>").endRow();
        }
        table.end();
    }
}
