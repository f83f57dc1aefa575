package loomwright.generator.page;

import java.util.List;
import java.util.Map;
import loomwright.generator.content.Lesson;
import loomwright.generator.example.Example;
import loomwright.generator.example.Misprint;
import loomwright.generator.example.Pin;
import loomwright.generator.problem.Span;
import loomwright.graph.Graphs;
import loomwright.markup.Assumed;
import loomwright.markup.GivenMarkup;
import loomwright.markup.Html;
import loomwright.markup.OutcomeMarkup;
import loomwright.markup.PictureMarkup;
import loomwright.markup.SourceMarkup;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Outcome;

/** Writes a worked example. What the page program rewrites is written by the same code as there. */
final class ExampleMarkup {
    private final Site site;
    private final Place page;
    private final ArticleWriter article;
    private final loomwright.markup.Links links;

    ExampleMarkup(Site site, Place page, ArticleWriter article) {
        this.site = site;
        this.page = page;
        this.article = article;
        this.links = new loomwright.markup.Links(Address.root(page.address()));
    }

    String write(Example example, Span at) {
        relies(example);
        article.places().id(example.key(), at);
        article.places().id(example.key() + "-title", at);
        return write(example, example.key(), Assumed.OWN_STORY);
    }

    /** The example on the page of its calculator: its figures are lent to a reader who has others. */
    String lent(Example example) {
        return write(example, example.calculator().description().key(), new Assumed(lender(example)));
    }

    private String lender(Example example) {
        for (Lesson lesson : site.content().lessons()) {
            if (lesson.address().equals(example.article().address()) && !lesson.number().isEmpty()) {
                return "Lesson " + lesson.number();
            }
        }
        return "the example";
    }

    private String write(Example example, String key, Assumed assumed) {
        loomwright.markup.Place place = new loomwright.markup.Place(key, links, example.show());
        boolean further = example.further() && assumed.lender().isEmpty();
        return open(key, example.calculator().description(), example.check(), example.keep(), example.title(), assumed, further)
                + "<div class=\"story\">" + article.write(example.story()) + "</div>\n"
                + GivenMarkup.of(example.calculator().description(), example.given(), assumed) + "\n"
                + PictureMarkup.graph(key, Graphs.draw(example.calculator(), example.given(), example.working()))
                + "<div class=\"outcome\">" + OutcomeMarkup.printed(place, example.working(), "") + "</div>\n"
                + PinMarkup.of(example.pins(), links) + misprint(example.misprint()) + "</section>\n";
    }

    /** A calculator with its usual entries, for want of an example; empty if it cannot run on those. */
    String usual(Calculator calculator) {
        Description description = calculator.description();
        Outcome outcome = Outcome.of(calculator, Map.of());
        if (outcome.working() == null) {
            return "";
        }
        loomwright.markup.Place place = new loomwright.markup.Place(description.key(), links, List.of());
        return open(description.key(), description, description.outputs().get(0).key(), List.of(), description.title(), Assumed.OWN_STORY, false)
                + GivenMarkup.of(description, Map.of()) + "\n"
                + PictureMarkup.graph(description.key(), Graphs.draw(calculator, Map.of(), outcome.working()))
                + "<div class=\"outcome\">" + OutcomeMarkup.printed(place, outcome.working(), "") + "</div>\n</section>\n";
    }

    private static String open(
            String key, Description description, String check, List<String> keep, String title, Assumed assumed, boolean further) {
        String id = Html.escape(key);
        return "<section class=\"example\" id=\"" + id + "\" data-calculator=\"" + Html.escape(description.key())
                + "\" data-key=\"" + id + "\" data-check=\"" + Html.escape(check)
                + (keep.isEmpty() ? "" : "\" data-keep=\"" + Html.escape(String.join(" ", keep)))
                + (assumed.lender().isEmpty() ? "" : "\" data-lender=\"" + Html.escape(assumed.lender()))
                + (further ? "\" data-further=\"yes" : "") + "\" aria-labelledby=\"" + id
                + "-title\">\n<p class=\"label\">" + (further ? "Further example" : "Worked example") + "</p>\n<h3 class=\"title\" id=\"" + id + "-title\">"
                + Html.escape(title) + "</h3>\n";
    }

    private void relies(Example example) {
        site.reliance().on(example.uses(), page);
        for (Pin pin : example.pins()) {
            site.reliance().onDocument(pin.source().document().key(), page);
        }
        site.reliance().onCalculator(example.calculator().description().key(), page);
    }

    private String misprint(Misprint misprint) {
        if (misprint == null) {
            return "";
        }
        site.reliance().onDocument(misprint.source().document().key(), page);
        return "<div class=\"misprint\"><h4>Find the mistake</h4>\n<p>The source prints " + value(misprint.printed()) + " for "
                + Html.escape(small(misprint.resultLabel())) + ". What went wrong?</p>\n"
                + SourceMarkup.paragraph(links, misprint.source())
                + "\n<details><summary>What went wrong</summary><div class=\"answer\">" + article.write(misprint.explain())
                + "</div></details></div>\n";
    }

    static String value(String text) {
        return "<span class=\"value\">" + Html.escape(text) + "</span>";
    }

    /** A label inside a sentence: its first letter small, unless it is an abbreviation. */
    static String small(String label) {
        boolean abbreviation = label.length() > 1 && Character.isUpperCase(label.charAt(1));
        return label.isEmpty() || abbreviation ? label : Character.toLowerCase(label.charAt(0)) + label.substring(1);
    }
}
