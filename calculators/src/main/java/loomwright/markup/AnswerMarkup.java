package loomwright.markup;

import java.util.ArrayList;
import java.util.List;
import loomwright.practice.AnswerCheck;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.Output;

/** The form that takes the reader's own answer, and the reply to it. */
public final class AnswerMarkup {
    private AnswerMarkup() {}

    /** The form that asks for one result. */
    public static String form(Place place, Output asked) {
        String id = place.id("answer");
        Html html = new Html().tag("<form class=\"check\" novalidate");
        html.attribute("aria-labelledby", place.id("check") + " " + place.id("title")).tag("><h4");
        html.attribute("id", place.id("check")).tag(">Check your own answer</h4><div class=\"field\"><label");
        html.attribute("for", id).tag(">Your answer for ").text(Words.small(asked.label()));
        List<Unit> units = units(asked.unit());
        if (units.size() == 1 && !asked.unit().symbol().isEmpty()) {
            html.tag(", in ").text(asked.unit().symbol());
        }
        html.tag("</label><div class=\"entry\"><input").attribute("id", id);
        html.tag(" type=\"text\" inputmode=\"" + (units.contains(Units.AWG) ? "text" : "decimal") + "\"");
        html.tag(" autocomplete=\"off\" spellcheck=\"false\">");
        if (units.size() > 1) {
            FieldMarkup.unitSelect(html, id + "-unit", "Unit of your answer", units, asked.unit());
        }
        html.tag("<button type=\"submit\">Check</button></div></div>");
        return html.tag("<div class=\"reply\"").attribute("id", place.id("reply")).tag(" role=\"status\" aria-live=\"polite\"></div></form>").toString();
    }

    /** The reply: its first sentence is the verdict. */
    public static String reply(AnswerCheck check) {
        String words = Words.sentence(check.words());
        int end = words.indexOf(". ");
        String verdict = end < 0 ? words : words.substring(0, end + 1);
        String kind = check.kind() == AnswerCheck.Kind.AGREES ? "agrees" : "differs";
        Html html = new Html().tag("<p data-verdict=\"" + kind + "\"><strong>").text(verdict).tag("</strong>");
        return html.text(words.substring(verdict.length())).tag("</p>").toString();
    }

    /** Every unit the answer could be in, the one we answer in first. A bare number has none: a choice between nothing and % would show an empty box. */
    private static List<Unit> units(Unit asked) {
        List<Unit> units = new ArrayList<>();
        units.add(asked);
        for (Unit unit : Units.all()) {
            if (!asked.symbol().isEmpty() && unit != asked && unit.dimension().equals(asked.dimension()) && !unit.symbol().isEmpty()) {
                units.add(unit);
            }
        }
        return units;
    }
}
