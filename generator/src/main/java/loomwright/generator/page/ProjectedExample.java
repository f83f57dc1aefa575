package loomwright.generator.page;

import java.util.List;
import loomwright.generator.example.Example;
import loomwright.generator.example.Misprint;
import loomwright.generator.markdown.PlainText;
import loomwright.graph.Graphs;
import loomwright.markup.GivenMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.PictureMarkup;
import loomwright.markup.ProjectedMarkup;
import loomwright.markup.SourceMarkup;
import loomwright.markup.Words;
import loomwright.worked.Step;
import loomwright.worked.Working;

/** Puts a worked example on screens: the story with what is given, the steps, the result, the checks, the mistake to find. One that can be passed over is only
 * named, at the foot of the screen before it. */
final class ProjectedExample {
    /** Signs of checks that stand beside the results. */
    private static final int FEW = 750;

    private final Links links;
    private final ArticleWriter article;
    private final Screens screens;

    ProjectedExample(Place page, ArticleWriter article, Screens screens) {
        this.links = new Links(Address.root(page.address()));
        this.article = article;
        this.screens = screens;
    }

    void write(Example example) {
        String key = Html.escape(example.key());
        Screens screens = this.screens;
        if (example.further()) {
            screens = screens.passedOver(key, "<p class=\"more\"><a href=\"#" + key + "-title\">Further example: " + Html.escape(example.title()) + "</a></p>\n");
        }
        story(screens, example, key);
        working(screens, example);
        resultAndChecks(screens, example);
        misprint(screens, example);
    }

    private void story(Screens screens, Example example, String key) {
        screens.place("example", example.title(), "<p class=\"label\">" + (example.further() ? "Further example" : "Worked example")
                + "</p>\n<h3 class=\"title\" id=\"" + key + "-title\">" + Html.escape(example.title()) + "</h3>\n"
                + ExampleMarkup.story(article, example, example.working()) + flat(GivenMarkup.of(example.calculator().description(), example.given())));
    }

    /** All steps are on one screen; the page's script lets them appear one after another. */
    private void working(Screens screens, Example example) {
        List<Step> steps = example.working().steps();
        List<String> written = ProjectedMarkup.steps(links, example.working());
        StringBuilder html = new StringBuilder("<ol class=\"steps\">\n");
        for (int i = 0; i < steps.size(); i++) {
            html.append("<li data-beat=\"").append(Html.escape(Words.capital(steps.get(i).words()))).append("\">").append(written.get(i)).append("</li>\n");
        }
        screens.screen("step", example.title() + ": working", above(example, "Working") + html.append("</ol>\n"));
    }

    /** The results beside their graph and then the checks; without a graph, and if there is little to check, both on one screen. */
    private void resultAndChecks(Screens screens, Example example) {
        Working working = example.working();
        String results = flat(ProjectedMarkup.results(new loomwright.markup.Place(example.key(), links, example.show()), working));
        String graph = PictureMarkup.projected(example.key(), Graphs.draw(example.calculator(), example.given(), working));
        String checks = checks(example);
        if (!graph.isEmpty()) {
            screens.screen("figure", example.title() + ": result", above(example, "Result") + Gathering.two("before", "<div>" + results + "</div>\n", Gathering.shown(graph)));
        } else if (!checks.isEmpty() && PlainText.of(checks).length() <= FEW) {
            screens.screen("step", example.title() + ": result and checks", above(example, "Result and checks")
                    + Gathering.two("before", "<div>" + results + "</div>\n", "<div>" + checks + "</div>\n"));
            return;
        } else {
            screens.screen("example", example.title() + ": result", above(example, "Result") + results);
        }
        if (!checks.isEmpty()) {
            screens.screen("step", example.title() + ": checks", above(example, "Checks") + checks);
        }
    }

    private String checks(Example example) {
        List<String> assumptions = ProjectedMarkup.assumptions(example.working());
        return list("findings", ProjectedMarkup.checks(links, example.working()))
                + (assumptions.isEmpty() ? "" : "<p class=\"title\">What this takes for granted</p>\n" + list("granted", assumptions));
    }

    private static String list(String kind, List<String> items) {
        return items.isEmpty() ? "" : "<ul class=\"" + kind + "\">\n" + String.join("\n", items) + "</ul>\n";
    }

    private static String above(Example example, String part) {
        return "<p class=\"label\">Worked example: " + Html.escape(example.title()) + "</p>\n<p class=\"title\">" + part + "</p>\n";
    }

    private void misprint(Screens screens, Example example) {
        Misprint misprint = example.misprint();
        if (misprint != null) {
            screens.screen("step", example.title() + ": find the mistake", above(example, "Find the mistake") + "<p>The source prints "
                    + ExampleMarkup.value(misprint.printed()) + " for " + Html.escape(ExampleMarkup.small(misprint.resultLabel()))
                    + ". What went wrong?</p>\n" + SourceMarkup.paragraph(links, misprint.source()) + "<div class=\"answer\" data-beat=\"What went wrong\">"
                    + article.write(misprint.explain()) + "</div>\n");
        }
    }

    /** The view has headings for sections and examples only; the name of the part stands above already. */
    private static String flat(String html) {
        return html.replace("<h4>Given</h4>", "").replace("<h4 ", "<p class=\"unseen\" ").replace("</h4>", "</p>");
    }
}
