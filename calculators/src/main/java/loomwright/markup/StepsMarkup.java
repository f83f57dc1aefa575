package loomwright.markup;

import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Candidate;
import loomwright.worked.ChoiceStep;
import loomwright.worked.ConversionStep;
import loomwright.worked.FormulaStep;
import loomwright.worked.Step;
import loomwright.worked.TableStep;
import loomwright.worked.Working;

/** The working, step by step. */
final class StepsMarkup {
    private final Links links;
    private final Html html = new Html();

    private StepsMarkup(Links links) {
        this.links = links;
    }

    static String of(Links links, Working working) {
        StepsMarkup markup = new StepsMarkup(links);
        markup.html.tag("<div class=\"working\"><h4>Working</h4><ol class=\"steps\">");
        int number = 1;
        for (Step step : working.steps()) {
            markup.step(step, number);
            number++;
        }
        return markup.html.tag("</ol></div>").toString();
    }

    private void step(Step step, int number) {
        html.tag("<li><p class=\"words\">").text(Words.sentences(step.words(), step.why())).tag("</p>");
        if (step instanceof FormulaStep formula) {
            formula(formula, number);
        } else if (step instanceof TableStep table) {
            html.tag("<p class=\"gives\">").text(Words.capital(table.symbol().meaning())).tag(" ");
            html.tag(table.symbol().mathMl()).tag(" ");
            strong(table.result());
            source(table.row().source());
        } else if (step instanceof ConversionStep conversion) {
            html.tag("<p class=\"gives\">").value(conversion.from()).tag(" is ");
            strong(conversion.result());
        } else if (step instanceof ChoiceStep choice) {
            choice(choice);
        }
        html.tag("</li>");
    }

    private void formula(FormulaStep step, int number) {
        String meaning = step.formula().subject().meaning();
        html.tag("<div class=\"line\" role=\"group\" tabindex=\"0\"").attribute("aria-label", "Step " + number + ": " + meaning);
        html.tag(">").tag(step.formula().symbolicMathMl()).tag(step.formula().workedMathMl(step.values(), step.result()));
        html.tag("</div><p class=\"gives\">").text(Words.capital(meaning)).tag(" ");
        strong(step.result());
        if (step.source() != null) {
            source(step.source());
        }
    }

    private void choice(ChoiceStep step) {
        html.tag("<ul class=\"candidates\">");
        for (Candidate candidate : step.candidates()) {
            String element = candidate.taken() ? "strong" : "span";
            html.tag("<li><" + element + " class=\"value\">").text(candidate.name()).tag("</" + element + "> ");
            html.text(candidate.reason()).tag("</li>");
        }
        if (step.result() == null) {
            html.tag("</ul><p class=\"gives\">None of these fits.</p>");
        } else {
            html.tag("</ul><p class=\"gives\">Taken: ");
            strong(step.result());
        }
        source(step.source());
    }

    private void strong(Quantity quantity) {
        html.tag("<strong class=\"value\">").text(quantity.text()).tag("</strong></p>");
    }

    private void source(Source source) {
        html.tag(SourceMarkup.paragraph(links, source));
    }
}
