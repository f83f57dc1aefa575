package loomwright.markup;

import java.util.ArrayList;
import java.util.List;
import loomwright.worked.Finding;
import loomwright.worked.Step;
import loomwright.worked.Working;

/** A working in pieces, for a view that shows one idea a screen. */
public final class ProjectedMarkup {
    private ProjectedMarkup() {}

    /** Each step with its reason, its formula, its result and its source. */
    public static List<String> steps(Links links, Working working) {
        List<String> steps = new ArrayList<>();
        for (Step step : working.steps()) {
            steps.add(StepsMarkup.whole(links, step, steps.size() + 1));
        }
        return steps;
    }

    /** The table of results. */
    public static String results(Place place, Working working) {
        return ResultsMarkup.all(place, working);
    }

    /** Each check, as an item of a list. */
    public static List<String> checks(Links links, Working working) {
        List<String> checks = new ArrayList<>();
        for (Finding finding : working.findings()) {
            Html html = new Html();
            FindingsMarkup.item(html, links, finding);
            checks.add(html.toString());
        }
        return checks;
    }

    /** Each thing the working takes for granted, as an item of a list. */
    public static List<String> assumptions(Working working) {
        List<String> assumptions = new ArrayList<>();
        for (String assumption : working.description().assumptions()) {
            assumptions.add(new Html().tag("<li>").text(Words.sentence(assumption)).tag("</li>").toString());
        }
        return assumptions;
    }
}
