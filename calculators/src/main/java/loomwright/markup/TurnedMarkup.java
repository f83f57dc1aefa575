package loomwright.markup;

import java.util.List;
import loomwright.turned.Attempt;
import loomwright.turned.Turned;
import loomwright.turned.Wish;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Step;

/** The question of a calculator turned round: the form that asks it, and its answer. */
public final class TurnedMarkup {
    /** The choice of a result that stands for "no check stops". */
    public static final String NO_STOP = "no-stop";

    private TurnedMarkup() {}

    /** The fold with the form. Its limit is filled in when it is opened. */
    public static String fold(Place place, Description description, Output first) {
        Html html = new Html().tag("<details class=\"turned\"><summary>Turn the question round</summary><form class=\"turn\" novalidate");
        html.attribute("aria-label", "The question turned round").tag("><p class=\"help\">One figure is left open and found from the result you want; ");
        html.tag("the others stay as they are above.</p><div class=\"asks\"><span class=\"ask\">");
        open(html, place.id("turn-find"), "Find");
        for (Field field : description.fields()) {
            if (field instanceof QuantityField) {
                option(html, field.key(), field.label(), false);
            }
        }
        html.tag("</select></span> <span class=\"ask\">");
        open(html, place.id("turn-result"), "so that");
        for (Output output : description.outputs()) {
            option(html, output.key(), output.label(), output.equals(first));
        }
        option(html, NO_STOP, "no check ends in a stop", false);
        html.tag("</select></span> <span class=\"ask limit\">");
        open(html, place.id("turn-sense"), "is");
        option(html, "at-most", "at most", true);
        option(html, "at-least", "at least", false);
        html.tag("</select> <input type=\"text\" inputmode=\"decimal\" autocomplete=\"off\" spellcheck=\"false\" aria-label=\"Limit\"");
        html.attribute("id", place.id("turn-limit")).tag("></span> <button type=\"submit\">Find it</button></div></form>");
        return html.tag("<div class=\"turned-answer\" role=\"status\" aria-live=\"polite\"").attribute("id", place.id("turn-answer")).tag("></div></details>").toString();
    }

    private static void open(Html html, String id, String label) {
        html.tag("<label").attribute("for", id).tag(">").text(label).tag("</label> <select").attribute("id", id).tag(">");
    }

    private static void option(Html html, String value, String label, boolean selected) {
        html.tag("<option").attribute("value", value).tag(selected ? " selected>" : ">").text(label).tag("</option>");
    }

    /** What the box of the limit holds at first. */
    public static String limit(Wish wish) {
        return wish.limit() == null ? "" : wish.limit().text();
    }

    /** The answer: the figure first, its working or what was tried below it. */
    public static String answer(Links links, Turned turned) {
        Html html = new Html().tag("<p class=\"found\"").attribute("data-found", turned.kind().name()).tag(">").text(turned.words()).tag("</p>");
        if (turned.answer() != null) {
            html.tag("<p class=\"actions\"><button type=\"button\" class=\"quiet\" data-take").attribute("data-figure", turned.answer().text());
            html.tag(">Work the example with ").value(turned.answer()).tag("</button></p>");
        }
        if (!turned.steps().isEmpty()) {
            html.tag("<ol class=\"steps\">");
            int number = 1;
            for (Step step : turned.steps()) {
                html.tag("<li>").tag(StepsMarkup.whole(links, step, number)).tag("</li>");
                number++;
            }
            html.tag("</ol>");
        }
        attempts(html, turned.attempts());
        if (turned.kind() == Turned.Kind.TRIED) {
            html.tag("<p class=\"help\">The figure stands in more than one place of the working, so it was found by trying, closer and closer.</p>");
        }
        return html.toString();
    }

    private static void attempts(Html html, List<Attempt> attempts) {
        if (attempts.isEmpty()) {
            return;
        }
        html.tag("<table class=\"attempts\"><caption>What was tried</caption><thead><tr><th scope=\"col\">Figure</th><th scope=\"col\">Gives</th>");
        html.tag("<th scope=\"col\">As wanted</th></tr></thead><tbody>");
        for (Attempt attempt : attempts) {
            html.tag("<tr><th scope=\"row\">").value(attempt.figure()).tag("</th><td>").text(attempt.gives()).tag("</td><td>");
            html.tag(attempt.passes() ? "yes" : "no").tag("</td></tr>");
        }
        html.tag("</tbody></table>");
    }

    /** What cannot be used as a limit. */
    public static String fault(String message) {
        return new Html().tag("<p class=\"error\"><strong>Look again:</strong> ").text(Words.sentence(message)).tag("</p>").toString();
    }
}
