package loomwright.markup;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Output;
import loomwright.worked.Result;
import loomwright.worked.Working;

/** A table of results, with the reader's own figures beside the printed ones if there are any. */
final class ResultsMarkup {
    /** More than these do not stand beside the figures of a phone. */
    private static final int MAIN = 3;

    private final Html html = new Html();
    private final Working printed;

    /** @param printed the printed working where the reader has figures of his own; else null */
    private ResultsMarkup(Working printed) {
        this.printed = printed;
    }

    /** All results, those asked for first. */
    static String all(Place place, Working working) {
        List<Result> all = new ArrayList<>(main(place, working));
        all.addAll(others(place, working));
        return new ResultsMarkup(null).table(place, "results", "Result", all);
    }

    /** The main results, at most three: those asked for, or the first of the calculator. */
    static String main(Place place, Working working, Working printed) {
        return new ResultsMarkup(printed).table(place, "results", "Result", main(place, working));
    }

    /** The results that are no main ones, folded under their count; empty if there are none. */
    static String others(Place place, Working working, Working printed) {
        List<Result> others = others(place, working);
        if (others.isEmpty()) {
            return "";
        }
        String count = others.size() == 1 ? "One more result" : others.size() + " more results";
        return "<details class=\"other-results\"><summary>" + count + "</summary>"
                + new ResultsMarkup(printed).table(place, "other-results", "", others) + "</details>";
    }

    /** The first of the main results; null if there is no result. */
    static Result first(Place place, Working working) {
        List<Result> main = main(place, working);
        return main.isEmpty() ? null : main.get(0);
    }

    private static List<Result> main(Place place, Working working) {
        List<Result> main = new ArrayList<>();
        for (String key : place.show()) {
            Result result = working.answer(key);
            if (result != null && main.size() < MAIN) {
                main.add(result);
            }
        }
        if (main.isEmpty() && !working.results().isEmpty()) {
            main.add(working.results().get(0));
        }
        return main;
    }

    /** Those asked for that are no main ones, then the others in the order of the calculator. */
    private static List<Result> others(Place place, Working working) {
        List<Result> before = main(place, working);
        List<Result> others = new ArrayList<>();
        for (String key : place.show()) {
            add(others, working.answer(key), before);
        }
        for (Result result : working.results()) {
            add(others, result, before);
        }
        return others;
    }

    private static void add(List<Result> others, Result result, List<Result> before) {
        if (result != null && !before.contains(result) && !others.contains(result)) {
            others.add(result);
        }
    }

    private String table(Place place, String part, String heading, List<Result> results) {
        String id = place.id(part);
        html.tag("<div class=\"results\">");
        if (heading.isEmpty()) {
            html.tag("<table aria-label=\"Other results\">");
        } else {
            html.tag("<h4").attribute("id", id).tag(">").text(heading).tag("</h4><table");
            html.attribute("aria-labelledby", id + " " + place.id("title")).tag(">");
        }
        html.tag("<thead><tr><th scope=\"col\">Quantity</th>");
        html.tag(printed == null ? "<th scope=\"col\" class=\"number\">This example</th>"
                : "<th scope=\"col\" class=\"number own\">Your figures</th><th scope=\"col\" class=\"number printed\">Printed example</th>");
        html.tag("</tr></thead><tbody>");
        for (Result result : results) {
            row(place, result);
        }
        return html.tag("</tbody></table></div>").toString();
    }

    private void row(Place place, Result result) {
        String key = result.output().key();
        html.tag("<tr");
        if (place.show().contains(key) || place.show().contains(result.output().insteadOf())) {
            html.tag(" class=\"first\"");
        }
        html.attribute("data-result", key).tag("><th scope=\"row\">").text(result.output().label()).tag("</th>");
        if (printed == null) {
            cell("number", result);
        } else {
            cell("number own", result);
            cell("number printed", printed(result.output()));
        }
        html.tag("</tr>");
    }

    /** What the printed example gives for it, or in its place; null if it gives neither. */
    private Result printed(Output output) {
        Result same = printed.answer(output.key());
        return same != null || output.insteadOf().isEmpty() ? same : printed.answer(output.insteadOf());
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
}
