package loomwright.markup;

import loomwright.worked.NextQuestion;
import loomwright.worked.Working;

/** What a working takes for granted, and what to work out next. */
final class OnwardMarkup {
    private OnwardMarkup() {}

    static String assumptions(Working working) {
        if (working.description().assumptions().isEmpty()) {
            return "";
        }
        Html html = new Html().tag("<details class=\"assumptions\"><summary>What this takes for granted</summary><ul>");
        for (String assumption : working.description().assumptions()) {
            html.tag("<li>").text(Words.sentence(assumption)).tag("</li>");
        }
        return html.tag("</ul></details>").toString();
    }

    static String nextQuestions(Links links, Working working) {
        if (working.nextQuestions().isEmpty()) {
            return "";
        }
        Html html = new Html().tag("<div class=\"questions\"><h4>Work out next</h4><ul>");
        for (NextQuestion question : working.nextQuestions()) {
            html.tag("<li><a").attribute("href", links.calculator(question.calculatorKey(), question.carried())).tag(">");
            html.text(question.words()).tag("</a></li>");
        }
        return html.tag("</ul></div>").toString();
    }
}
