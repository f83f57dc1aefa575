package loomwright.generator.page;

import java.util.List;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.example.CheckedQuestion;
import loomwright.generator.example.Pin;
import loomwright.generator.example.SheetStory;
import loomwright.generator.example.Trial;
import loomwright.generator.example.Uses;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.worked.Output;

/** Writes the questions of a page; their answers are folded. */
final class QuestionMarkup {
    private final Site site;
    private final Place page;
    private final ArticleWriter article;
    private int count;

    QuestionMarkup(Site site, Place page, ArticleWriter article) {
        this.site = site;
        this.page = page;
        this.article = article;
    }

    /** A question and its answer, as they are found in a block. */
    private record Asked(String key, String ask, String answer, String pins) {}

    String write(YamlMap map) {
        Asked asked = read(map);
        if (asked == null) {
            return "";
        }
        return "<div class=\"question\" id=\"" + Html.escape(asked.key()) + "\">\n<p class=\"label\">Question " + count + "</p>\n"
                + "<div class=\"ask\">" + asked.ask() + "</div>\n<details><summary>Answer</summary><div class=\"answer\">"
                + asked.answer() + asked.pins() + "</div></details>\n</div>\n";
    }

    /** The question, and its answer as what appears after it. Empty if the block has a mistake. */
    String projected(YamlMap map) {
        Asked asked = read(map);
        return asked == null
                ? ""
                : "<p class=\"label\">Question " + count + "</p>\n<div class=\"ask\">" + asked.ask() + "</div>\n<div class=\"answer\" data-beat=\"Answer\">"
                        + asked.answer() + "</div>\n";
    }

    /** How many questions were written so far. */
    int count() {
        return count;
    }

    private Asked read(YamlMap map) {
        Scalar key = map.required("key");
        Scalar ask = map.required("ask");
        boolean computed = map.has("calculator");
        String answer = computed ? computed(map) : written(map);
        map.finish();
        if (key == null || ask == null) {
            return null;
        }
        article.places().id(key.text(), key.at());
        count++;
        return new Asked(key.text(), article.write(ask), answer, pins(site.book().question(key.text())));
    }

    private String pins(CheckedQuestion question) {
        if (question == null) {
            return "";
        }
        for (Pin pin : question.pins()) {
            site.reliance().onDocument(pin.source().document().key(), page);
        }
        return PinMarkup.of(question, new Links(Address.root(page.address())));
    }

    private String written(YamlMap map) {
        Scalar answer = map.required("answer");
        return answer == null ? "" : article.write(answer);
    }

    private String computed(YamlMap map) {
        Trial trial = Trial.of(map, site.calculators(), site.problems());
        SheetStory.of(map, trial, site.problems());
        Scalar result = map.required("result");
        Scalar because = map.text("because");
        map.maps("pins");
        Output output = trial == null || result == null ? null : trial.output(result, site.problems());
        if (output == null) {
            return "";
        }
        String key = trial.calculator().description().key();
        site.reliance().onCalculator(key, page);
        site.reliance().on(Uses.of(trial.working()), page);
        String working = new Links(Address.root(page.address())).calculator(key, trial.given());
        return "<p>" + Html.escape(output.label()) + " "
                + ExampleMarkup.value(trial.working().result(output.key()).quantity().text()) + ".</p>\n"
                + (because == null ? "" : article.write(because))
                + "<p class=\"actions\"><a href=\"" + Html.escape(working) + "\">Every step of the working</a></p>\n";
    }
}
