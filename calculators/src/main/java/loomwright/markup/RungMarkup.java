package loomwright.markup;

import java.util.List;
import java.util.Map;
import loomwright.practice.BlankCheck;
import loomwright.practice.Exercise;
import loomwright.practice.MendedWorking;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Description;
import loomwright.worked.Finding;
import loomwright.worked.FormulaStep;
import loomwright.worked.Step;
import loomwright.worked.Verdict;
import loomwright.worked.Working;

/** One rung of a ladder: a working with blanks, or with a slip. */
public final class RungMarkup {
    private RungMarkup() {}

    /** The head of a rung: what it is, what to do, and what is given. */
    public static String head(Place place, String title, String words, Working working, Map<String, String> given) {
        Html html = new Html().tag("<h4").attribute("id", place.id("rung")).tag(">").text(title).tag("</h4><p>").text(words).tag("</p>");
        Description description = working.description();
        return html.tag(GivenMarkup.of(description, given, Assumed.OWN_STORY, Absent.of(description, working.entries()))).toString();
    }

    /** Buttons of a rung, by what they do and what they say. */
    public static String actions(String... doesAndSays) {
        Html html = new Html().tag("<p class=\"moves\">");
        for (int i = 0; i < doesAndSays.length; i += 2) {
            html.tag("<button type=\"button\" class=\"quiet\"").attribute("data-does", doesAndSays[i]).tag(">");
            html.text(doesAndSays[i + 1]).tag("</button>");
        }
        return html.tag("</p>").toString();
    }

    /**
     * The steps of an exercise.
     *
     * @param blanks the steps left blank
     * @param formulas whether a blank shows its formula at once, or when asked
     */
    public static String steps(Place place, Exercise exercise, List<Integer> blanks, boolean formulas) {
        List<Step> steps = exercise.working().steps();
        Html html = new Html().tag("<ol class=\"steps\">");
        for (int at = 0; at < steps.size(); at++) {
            html.tag("<li data-step=\"" + at + "\">");
            boolean waits = steps.get(at) instanceof ChoiceStep && !blanks.isEmpty() && at > blanks.get(0);
            if (blanks.contains(at)) {
                html.tag(blank(place, steps.get(at), at, formulas));
            } else {
                html.tag(waits ? waiting(steps.get(at)) : shown(place, steps.get(at), at));
            }
            html.tag("</li>");
        }
        return html.tag("</ol>").toString();
    }

    /** A step as the working shows it. */
    public static String shown(Place place, Step step, int at) {
        return StepsMarkup.inside(place.links(), step, at + 1) + because(step.why());
    }

    /** A choice looks at figures that are not there yet. */
    private static String waiting(Step step) {
        Html html = new Html().tag("<p class=\"words\">").text(Words.sentence(step.words())).tag("</p>");
        return html.tag("<p class=\"help\">This step is filled in when the blanks before it are.</p>").toString();
    }

    private static String blank(Place place, Step step, int at, boolean formulas) {
        Html html = new Html().tag("<p class=\"words\">").text(Words.sentence(step.words())).tag("</p>");
        if (step instanceof FormulaStep formula) {
            String line = StepsMarkup.line(formula, at + 1, false);
            html.tag(formulas ? line : "<p class=\"moves\"><button type=\"button\" class=\"quiet\" data-does=\"formula\">Show the formula</button></p>"
                    + "<div class=\"letters-only\" hidden>" + line + "</div>");
        }
        return html.tag(entry(place, step, at)).toString();
    }

    /** The box of a blank, with its reply. */
    public static String entry(Place place, Step step, int at) {
        String id = place.id("blank-" + at);
        Unit unit = step.result().unit();
        Html html = new Html().tag("<form class=\"yours\" novalidate><label").attribute("for", id).tag(">Your figure");
        if (step instanceof FormulaStep formula) {
            html.tag(" for ").text(formula.formula().subject().meaning());
        }
        html.text(unit.symbol().isEmpty() ? "" : ", in " + unit.symbol()).tag("</label><div class=\"entry\"><input").attribute("id", id);
        html.tag(" type=\"text\" inputmode=\"" + (unit == Units.AWG ? "text" : "decimal") + "\" autocomplete=\"off\" spellcheck=\"false\"");
        html.attribute("aria-describedby", id + "-reply").tag("><button type=\"submit\">Check</button></div><div class=\"reply\"");
        return html.attribute("id", id + "-reply").tag("></div></form><div class=\"more\"></div>").toString();
    }

    /** The reply to a figure. */
    public static String reply(BlankCheck check) {
        return reply(check.isDone(), check.words());
    }

    /** A reply: its first sentence is the verdict. */
    public static String reply(boolean good, String words) {
        int end = words.indexOf(". ");
        String verdict = end < 0 ? words : words.substring(0, end + 1);
        Html html = new Html().tag("<p data-verdict=\"" + (good ? "agrees" : "differs") + "\"><strong>").text(verdict).tag("</strong>");
        return html.text(words.substring(verdict.length())).tag("</p>").toString();
    }

    /** The numbers put in, once the blank is filled. */
    public static String worked(Step step, int at) {
        return step instanceof FormulaStep formula ? StepsMarkup.line(formula, at + 1, true) : "";
    }

    /** The reason for a step. */
    public static String because(String why) {
        return new Html().tag("<p class=\"because\">").text(Words.sentence(why)).tag("</p>").toString();
    }

    /** A question with one right answer among several. */
    public static String choices(Place place, String part, String ask, List<String> answers) {
        Html html = new Html().tag("<form class=\"ask-why\" novalidate><fieldset><legend>").text(ask).tag("</legend>");
        for (int i = 0; i < answers.size(); i++) {
            html.tag("<label><input type=\"radio\"").attribute("name", place.id(part)).tag(" value=\"" + i + "\"><span>");
            html.text(Words.sentence(answers.get(i))).tag("</span></label>");
        }
        html.tag("</fieldset><p class=\"moves\"><button type=\"submit\">Answer</button></p><div class=\"reply\"></div></form>");
        return html.toString();
    }

    /** That an example ends in a stop though it is worked rightly; empty if it does not. */
    public static String endsInAStop(Working printed) {
        for (Finding finding : printed.findings()) {
            if (finding.verdict() == Verdict.STOP) {
                return new Html().tag("<p><strong>This example ends in a stop:</strong> ").text(finding.words()).tag("</p>").toString();
            }
        }
        return "";
    }

    /** The steps of a working with a slip in it. */
    public static String mended(Place place, MendedWorking mended) {
        Html html = new Html().tag("<ol class=\"steps\">");
        for (int at = 0; at < mended.steps().size(); at++) {
            html.tag("<li data-step=\"" + at + "\">").tag(shown(place, mended.steps().get(at), at)).tag("</li>");
        }
        return html.tag("</ol>").toString();
    }
}
