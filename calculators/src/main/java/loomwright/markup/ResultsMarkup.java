package loomwright.markup;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Result;
import loomwright.worked.Working;

/** The table of results, with the reader's own figures beside the printed ones if there are any. */
final class ResultsMarkup {
    private final Place place;
    private final Html html = new Html();

    private ResultsMarkup(Place place) {
        this.place = place;
    }

    static String of(Place place, Working printed) {
        ResultsMarkup markup = new ResultsMarkup(place);
        markup.open("<th scope=\"col\" class=\"number\">This example</th>");
        for (Result result : ordered(place, printed)) {
            markup.row(result);
            markup.cell("number", result);
            markup.html.tag("</tr>");
        }
        return markup.close();
    }

    static String of(Place place, Working own, Working printed) {
        ResultsMarkup markup = new ResultsMarkup(place);
        markup.open("<th scope=\"col\" class=\"number own\">Your figures</th><th scope=\"col\" class=\"number printed\">Printed example</th>");
        for (Result result : ordered(place, own)) {
            markup.row(result);
            markup.cell("number own", result);
            markup.cell("number printed", printed.result(result.output().key()));
            markup.html.tag("</tr>");
        }
        return markup.close();
    }

    /** The results asked for first, in the order asked, then the others in the order of the calculator. */
    private static List<Result> ordered(Place place, Working working) {
        List<Result> ordered = new ArrayList<>();
        for (String key : place.show()) {
            Result result = working.result(key);
            if (result != null) {
                ordered.add(result);
            }
        }
        for (Result result : working.results()) {
            if (!isFirst(place, result)) {
                ordered.add(result);
            }
        }
        return ordered;
    }

    private static boolean isFirst(Place place, Result result) {
        for (String key : place.show()) {
            if (key.equals(result.output().key())) {
                return true;
            }
        }
        return false;
    }

    private void open(String heads) {
        String id = place.id("results");
        html.tag("<div class=\"results\"><h4").attribute("id", id).tag(">Result</h4><table");
        html.attribute("aria-labelledby", id + " " + place.id("title"));
        html.tag("><thead><tr><th scope=\"col\">Quantity</th>").tag(heads).tag("</tr></thead><tbody>");
    }

    private void row(Result result) {
        html.tag("<tr");
        if (isFirst(place, result)) {
            html.tag(" class=\"first\"");
        }
        html.attribute("data-result", result.output().key()).tag("><th scope=\"row\">");
        html.text(result.output().label()).tag("</th>");
    }

    private void cell(String classes, Result result) {
        html.tag("<td class=\"" + classes + "\">");
        if (result == null) {
            html.tag("none");
        } else {
            html.value(result.quantity());
        }
        html.tag("</td>");
    }

    private String close() {
        return html.tag("</tbody></table></div>").toString();
    }
}
