package loomwright.markup;

import java.util.List;
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
    private final boolean sourced;
    private final Html html = new Html();

    private StepsMarkup(Links links, boolean sourced) {
        this.links = links;
        this.sourced = sourced;
    }

    private StepsMarkup(Links links) {
        this(links, true);
    }

    static String of(Links links, Working working) {
        return new StepsMarkup(links).all(working);
    }

    /** The steps of an example on the page: their sources stand folded behind them, see {@link #sources}. */
    static String withoutSources(Links links, Working working) {
        return new StepsMarkup(links, false).all(working);
    }

    /** Where the figures of the steps come from, folded; empty if none is looked up. */
    static String sources(Links links, Working working) {
        Html html = new Html();
        int number = 0;
        for (Step step : working.steps()) {
            number++;
            Source source = source(step);
            if (source != null) {
                html.tag("<li value=\"" + number + "\">").tag(SourceMarkup.inLine(links, source)).tag("</li>");
            }
        }
        String items = html.toString();
        return items.isEmpty() ? "" : "<details class=\"sources\"><summary>Where the figures of the steps come from</summary><ol>" + items + "</ol></details>";
    }

    private static Source source(Step step) {
        if (step instanceof TableStep table) {
            return table.row().source();
        }
        return step instanceof ChoiceStep choice ? choice.source() : step instanceof FormulaStep formula ? formula.source() : null;
    }

    private String all(Working working) {
        html.tag("<div class=\"working\"><h4>Working</h4><ol class=\"steps\">");
        int number = 1;
        for (Step step : working.steps()) {
            step(step, number);
            number++;
        }
        return html.tag("</ol></div>").toString();
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
        html.tag("<div class=\"line\" role=\"group\"").attribute("aria-label", "Step " + number + ": " + step.formula().spoken()).tag(">");
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
        List<Candidate> candidates = step.candidates();
        int hidden = sourced ? 0 : beforeTheLast(candidates);
        if (hidden > 0 && candidates.get(0).taken()) {
            candidates(candidates.subList(0, 1));
            folded(hidden + " others", candidates.subList(1, candidates.size()));
        } else if (hidden > 0) {
            folded(hidden + " tried before", candidates.subList(0, hidden));
            candidates(candidates.subList(hidden, candidates.size()));
        } else if (!candidates.isEmpty()) {
            candidates(candidates);
        }
        if (step.result() == null) {
            html.tag("<p class=\"gives\">None of these fits.</p>");
        } else {
            html.tag("<p class=\"gives\">Taken: ");
            strong(step.result());
        }
        source(step.source());
    }

    /** How many of a long list were tried before the one that nearly fits: those are looked at by who doubts. */
    private static int beforeTheLast(List<Candidate> candidates) {
        if (!candidates.isEmpty() && candidates.get(0).taken()) {
            return candidates.size() > 3 ? candidates.size() - 1 : 0;
        }
        int last = candidates.size() - 1;
        while (last > 0 && !candidates.get(last).taken()) {
            last--;
        }
        int hidden = (last == 0 ? candidates.size() - 1 : last) - 1;
        return hidden > 2 ? hidden : 0;
    }

    private void folded(String summary, List<Candidate> candidates) {
        html.tag("<details class=\"tried\"><summary>" + summary + "</summary>");
        candidates(candidates);
        html.tag("</details>");
    }

    private void candidates(List<Candidate> candidates) {
        html.tag("<ul class=\"candidates\">");
        for (Candidate candidate : candidates) {
            String element = candidate.taken() ? "strong" : "span";
            html.tag("<li><" + element + " class=\"value\">").text(candidate.name()).tag("</" + element + "> ");
            html.text(candidate.reason()).tag("</li>");
        }
        html.tag("</ul>");
    }

    private void strong(Quantity quantity) {
        html.tag("<strong class=\"value\">").text(quantity.text()).tag("</strong></p>");
    }

    private void source(Source source) {
        if (sourced) {
            html.tag(SourceMarkup.paragraph(links, source));
        }
    }
}
