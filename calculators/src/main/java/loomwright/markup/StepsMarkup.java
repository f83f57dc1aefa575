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

    /** The inside of one step, with the reason for it. */
    static String whole(Links links, Step step, int number) {
        StepsMarkup markup = new StepsMarkup(links);
        markup.content(step, number);
        return markup.html.toString();
    }

    /** The inside of one step, without the reason for it. */
    static String inside(Links links, Step step, int number) {
        StepsMarkup markup = new StepsMarkup(links);
        markup.html.tag("<p class=\"words\">").text(Words.sentence(step.words())).tag("</p>");
        markup.figures(step, number);
        return markup.html.toString();
    }

    /** The formula of a step, with its numbers or in letters alone. */
    static String line(FormulaStep step, int number, boolean numbers) {
        StepsMarkup markup = new StepsMarkup(null);
        markup.openLine(step, number);
        markup.html.tag(numbers ? step.formula().workedMathMl(step.values(), step.result()) : step.formula().symbolicMathMl());
        return markup.html.tag("</div>").toString();
    }

    private void step(Step step, int number) {
        html.tag("<li>");
        content(step, number);
        html.tag("</li>");
    }

    private void content(Step step, int number) {
        html.tag("<p class=\"words\">").text(Words.sentences(step.words(), step.why())).tag("</p>");
        figures(step, number);
    }

    private void figures(Step step, int number) {
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
    }

    private void openLine(FormulaStep step, int number) {
        String meaning = step.formula().subject().meaning();
        html.tag("<div class=\"line\" role=\"group\" tabindex=\"0\"").attribute("aria-label", "Step " + number + ": " + meaning);
        html.tag(">");
    }

    private void formula(FormulaStep step, int number) {
        String meaning = step.formula().subject().meaning();
        openLine(step, number);
        html.tag(step.formula().symbolicMathMl()).tag(step.formula().workedMathMl(step.values(), step.result()));
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
