package loomwright.generator.page;

import java.util.List;
import loomwright.generator.example.Example;
import loomwright.generator.example.Misprint;
import loomwright.generator.markdown.Part;
import loomwright.graph.Graphs;
import loomwright.markup.GivenMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.PictureMarkup;
import loomwright.markup.ProjectedMarkup;
import loomwright.markup.SourceMarkup;
import loomwright.worked.Working;

/** Puts a worked example on screens: the story, what is given, each step, the result, the checks, the mistake to find. */
final class ProjectedExample {
    private final Links links;
    private final ArticleWriter article;
    private final Screens screens;

    ProjectedExample(Place page, ArticleWriter article, Screens screens) {
        this.links = new Links(Address.root(page.address()));
        this.article = article;
        this.screens = screens;
    }

    void write(Example example) {
        Working working = example.working();
        String key = example.key();
        loomwright.markup.Place place = new loomwright.markup.Place(key, links, example.show());
        screens.screen("example", "<p class=\"label\">Worked example</p>\n<h3 class=\"title\" id=\"" + Html.escape(key) + "-title\">"
                + Html.escape(example.title()) + "</h3>\n<div class=\"story\">" + article.write(example.story()) + "</div>\n"
                + flat(GivenMarkup.of(example.calculator().description(), example.given())));
        List<String> steps = ProjectedMarkup.steps(links, working);
        for (int i = 0; i < steps.size(); i++) {
            screens.screen("step", above(example, "Step " + (i + 1) + " of " + steps.size()) + steps.get(i));
        }
        screens.screen("example", above(example, "Result") + flat(ProjectedMarkup.results(place, working)));
        String graph = PictureMarkup.projected(key, Graphs.draw(example.calculator(), example.given(), working));
        if (!graph.isEmpty()) {
            screens.screen("figure", above(example, "The same over a range") + graph);
        }
        items(ProjectedMarkup.checks(links, working), "<ul class=\"findings\">\n", above(example, "Checks"));
        items(ProjectedMarkup.assumptions(working), "<ul>\n", above(example, "What this takes for granted"));
        misprint(example);
    }

    private void items(List<String> items, String open, String above) {
        screens.parts(items.stream().map(item -> new Part(open, item + "\n", "</ul>\n", null, null)).toList(), "step", above);
    }

    private static String above(Example example, String part) {
        return "<p class=\"label\">Worked example: " + Html.escape(example.title()) + "</p>\n<p class=\"title\">" + part + "</p>\n";
    }

    private void misprint(Example example) {
        Misprint misprint = example.misprint();
        if (misprint == null) {
            return;
        }
        screens.screen("step", above(example, "Find the mistake") + "<p>The source prints " + ExampleMarkup.value(misprint.printed()) + " for "
                + Html.escape(ExampleMarkup.small(misprint.resultLabel())) + ". What went wrong?</p>\n" + SourceMarkup.paragraph(links, misprint.source()));
        screens.screen("step", above(example, "What went wrong") + article.write(misprint.explain()));
    }

    /** The view has headings for sections and examples only; the name of the part stands above already. */
    private static String flat(String html) {
        return html.replace("<h4>Given</h4>", "").replace("<h4 ", "<p class=\"unseen\" ").replace("</h4>", "</p>");
    }
}
