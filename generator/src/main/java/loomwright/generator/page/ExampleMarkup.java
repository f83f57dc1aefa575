package loomwright.generator.page;

import java.util.List;
import java.util.Map;
import loomwright.generator.content.Lesson;
import loomwright.generator.example.Example;
import loomwright.generator.example.Misprint;
import loomwright.generator.example.Pin;
import loomwright.generator.problem.Span;
import loomwright.graph.Graphs;
import loomwright.markup.Absent;
import loomwright.markup.Assumed;
import loomwright.markup.GivenMarkup;
import loomwright.markup.Html;
import loomwright.markup.OutcomeMarkup;
import loomwright.markup.PictureMarkup;
import loomwright.markup.SourceMarkup;
import loomwright.markup.UpshotMarkup;
import loomwright.units.Shown;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Outcome;
import loomwright.worked.Working;

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
        return write(example, example.key(), Assumed.OWN_STORY, example.further());
    }

    /** The example on the page of its calculator: its figures are lent to a reader who has others. */
    String lent(Example example) {
        return write(example, example.calculator().description().key(), new Assumed(lender(example)), false);
    }

    private String lender(Example example) {
        for (Lesson lesson : site.content().lessons()) {
            if (lesson.address().equals(example.article().address()) && !lesson.number().isEmpty()) {
                return "Lesson " + lesson.number();
            }
        }
        return "the example";
    }

    private String write(Example example, String key, Assumed assumed, boolean further) {
        Working working = example.working();
        Description description = example.calculator().description();
        Opening opening = new Opening(key, description, working, example.check(), example.title());
        return opening.before(further, shows(description, working, example.show()))
                + opening.section(further, example.keep(), assumed.lender())
                + story(article, example, working)
                + bench(new loomwright.markup.Place(key, links, example.show()), example.calculator(), example.given(), working, assumed)
                + PinMarkup.of(example.pins(), links) + misprint(example.misprint()) + opening.end(further);
    }

    /** The story; and, if a check can rest on figures made up for it, that it does. */
    static String story(ArticleWriter article, Example example, Working working) {
        String madeUp = example.madeUp() && !working.findings().isEmpty()
                ? "<p class=\"source\">Figures here are <em>invented</em>: a check that passes on them proves nothing about yours.</p>\n"
                : "";
        return "<div class=\"story\">" + article.write(example.story()) + madeUp + "</div>\n";
    }

    /** A calculator with its usual entries, for want of an example; empty if it cannot run on those. */
    String usual(Calculator calculator) {
        Description description = calculator.description();
        Outcome outcome = Outcome.of(calculator, Map.of());
        if (outcome.working() == null) {
            return "";
        }
        Opening opening = new Opening(description.key(), description, outcome.working(), description.outputs().get(0).key(), description.title());
        return opening.before(false, "") + opening.section(false, List.of(), "")
                + bench(new loomwright.markup.Place(description.key(), links, List.of()), calculator, Map.of(), outcome.working(), Assumed.OWN_STORY)
                + opening.end(false);
    }

    /** Figures, upshot and graph on one side, the working on the other. */
    private String bench(
            loomwright.markup.Place place, Calculator calculator, Map<String, String> given, Working working, Assumed assumed) {
        Working shown = Shown.in(site.content().units(), working);
        Description description = calculator.description();
        return "<div class=\"beside\">\n<div class=\"figures\">\n"
                + GivenMarkup.of(description, given, assumed, Absent.of(description, working.entries())) + "\n"
                + "<div class=\"upshot\">" + UpshotMarkup.printed(place, shown) + "</div>\n"
                + PictureMarkup.graph(place.key(), Graphs.draw(calculator, given, working))
                + "</div>\n<div class=\"outcome\">" + OutcomeMarkup.printed(place, shown) + "</div>\n</div>\n";
    }

    /** What an example shows, in a few words: its main results. */
    private static String shows(Description description, Working working, List<String> show) {
        List<String> labels = show.stream().filter(key -> working.result(key) != null).map(key -> small(description.output(key).label())).toList();
        return labels.isEmpty() ? small(working.results().get(0).output().label()) : String.join(", ", labels);
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
