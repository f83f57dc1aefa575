package loomwright.plan.page;

import java.util.List;
import loomwright.markup.FieldMarkup;
import loomwright.markup.Html;
import loomwright.markup.Links;
import loomwright.markup.Place;
import loomwright.plan.Answers;
import loomwright.plan.JobTexts;
import loomwright.units.Shown;
import loomwright.units.UnitSystem;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** One screen of questions. */
public final class QuestionMarkup {
    /** Every id of the form begins with its key. */
    public static final Place PLACE = new Place("job", new Links(""), List.of());

    private QuestionMarkup() {}

    /** The screen, its fields filled with what was typed, in the units of a reader; empty ones open in them. */
    public static String of(JobTexts texts, Screen screen, UnitSystem units) {
        int at = Screen.of(texts).indexOf(screen) + 1;
        Html html = new Html().tag("<form class=\"try\" novalidate aria-labelledby=\"job-title\"><p class=\"label\">Step " + at + " of " + Screen.of(texts).size() + "</p>");
        html.tag("<h2 id=\"job-title\" tabindex=\"-1\">").text(screen.title(texts)).tag("</h2>");
        html.tag("<div class=\"summary\" id=\"job-summary\" tabindex=\"-1\" hidden></div>");
        for (Field field : screen.fields(texts)) {
            html.tag(field(field, texts.text(screen.item(), field), units));
            if (field instanceof QuantityField && field.usual() != null && field.usual().isEmpty()) {
                html.tag("<p class=\"open-question\"><button type=\"button\" class=\"quiet\"").attribute("data-open", field.key());
                html.attribute("aria-describedby", "job-" + field.key()).tag(">I don\u2019t know</button></p>");
            }
        }
        html.tag("<p class=\"help\">Leave open what you do not know: the careful value is taken, and the plan says which.</p>");
        return html.tag(actions(texts, screen, at)).tag("</form>").toString();
    }

    private static String field(Field field, String text, UnitSystem units) {
        return FieldMarkup.of(PLACE, Shown.field(units, field, text), Shown.text(units, field, text));
    }

    private static String actions(JobTexts texts, Screen screen, int at) {
        Html html = new Html().tag("<p class=\"actions\">");
        html.tag("<button type=\"button\" data-does=\"next\">Next</button> ");
        html.tag(at > 1 ? "<button type=\"button\" class=\"quiet\" data-does=\"back\">Back</button> " : "");
        if (screen.kind() == Screen.Kind.WAY && screen.item() == texts.items() - 1 && texts.items() < Answers.MOST_ITEMS) {
            html.tag("<button type=\"button\" class=\"quiet\" data-does=\"add\">Fit another thing</button> ");
        }
        if (screen.kind() == Screen.Kind.THING && texts.items() > 1) {
            html.tag("<button type=\"button\" class=\"quiet\" data-does=\"remove\">Leave this out</button> ");
        }
        return html.tag("<button type=\"button\" class=\"quiet\" data-does=\"plan\">Show the plan: the rest I don\u2019t know</button></p>").toString();
    }
}
