package loomwright.circuit.page;

import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FigureToGet;
import loomwright.markup.Html;
import loomwright.worked.Verdict;

/** What holds the bench together: the bar with the verdict, which stays in sight, and the tabs of the sheets. */
public final class BenchMarkup {
    private BenchMarkup() {}

    /**
     * The bar. Where there is no room for all, its first buttons choose what is shown; the verdict is always one of them. What was done or changed is
     * said beside the button that takes it back.
     */
    public static String bar() {
        Html html = new Html().tag("<div id=\"circuit-bar\" role=\"group\" aria-label=\"Bench\">");
        button(html, "drawing", "Drawing");
        button(html, "part", "Part");
        html.tag("<button type=\"button\" class=\"quiet\" data-does=\"verdict\" data-pane=\"verdict\"></button>");
        html.tag("<div id=\"circuit-said\"><p role=\"status\"></p></div>");
        html.tag("<button type=\"button\" class=\"quiet\" data-does=\"undo\">Undo</button><button type=\"button\" class=\"quiet\" data-does=\"redo\">Redo</button>");
        return html.tag("</div>").toString();
    }

    private static void button(Html html, String pane, String words) {
        html.tag("<button type=\"button\" class=\"quiet pane\"").attribute("data-does", pane).attribute("data-pane", pane).tag(">").text(words).tag("</button>");
    }

    /**
     * What stands on the button of the verdict.
     *
     * @param faults how many entries need another look first
     */
    public static String verdict(Examination examination, int faults) {
        Html html = new Html();
        if (faults > 0) {
            html.tag("<span data-verdict=\"fault\"><strong>").text(Integer.toString(faults)).tag("</strong> to look at again</span>");
        }
        if (examination.worst() != null) {
            count(html, Verdict.STOP, examination.count(Verdict.STOP), "to change");
            count(html, Verdict.CAUTION, examination.count(Verdict.CAUTION), "to decide");
            count(html, Verdict.NOT_KNOWN, FigureToGet.of(examination).size(), "to get");
        }
        return html.toString();
    }

    private static void count(Html html, Verdict verdict, int count, String words) {
        html.tag(" <span").attribute("data-verdict", count == 0 ? "none" : verdict.key()).tag("><strong>").text(Integer.toString(count)).tag("</strong> ").text(words).tag("</span>");
    }

    /** The tabs of the sheets of which one is shown. */
    public static String tabs() {
        Html html = new Html().tag("<div class=\"tabs\" role=\"tablist\" aria-label=\"Sheets\">");
        for (Sheet sheet : CircuitMarkup.CHOSEN) {
            html.tag("<button type=\"button\" class=\"quiet\" role=\"tab\"").attribute("id", "tab-" + sheet.key()).attribute("data-tab", sheet.key());
            html.attribute("aria-controls", CircuitMarkup.id(sheet)).tag(">").text(sheet.title()).tag("</button>");
        }
        return html.tag("</div>").toString();
    }
}
