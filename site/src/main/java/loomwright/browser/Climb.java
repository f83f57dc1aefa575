package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.markup.LadderMarkup;
import loomwright.markup.Place;
import loomwright.markup.RungMarkup;
import loomwright.practice.Exercise;
import loomwright.practice.MendedWorking;
import loomwright.practice.Variation;
import loomwright.worked.Calculator;
import loomwright.worked.Working;
import org.teavm.jso.JSBody;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The ladder of one example: opens a rung in the place of the whole working, and remembers what is climbed. */
final class Climb {
    private static final int FINISH = 2;
    private static final int DO = 3;
    private static final int MEND = 4;

    private final HTMLElement section;
    private final HTMLElement panel;
    private final RungRow row;
    private final Calculator calculator;
    private final Place place;
    private final Map<String, String> given;
    /** The fields that the story says something of that holds for no other number. */
    private final List<String> keep = new ArrayList<>();
    private final Exercise printed;
    private int numbers = 1;

    Climb(HTMLElement section, HTMLElement panel, RungRow row, Place place, Calculator calculator, Map<String, String> given, Working printed) {
        this.section = section;
        this.panel = panel;
        this.row = row;
        this.place = place;
        this.calculator = calculator;
        this.given = given;
        this.printed = new Exercise(printed);
        for (String field : given.keySet()) {
            if (isKept(section, field)) {
                keep.add(field);
            }
        }
        if (MendedWorking.all(printed).isEmpty()) {
            row.leaveOutMending("None of the slips we know fits a step of this example, so there is nothing to mend.");
        }
    }

    @JSBody(params = {"section", "field"}, script = "return section.matches('[data-keep~=' + field + ']');")
    private static native boolean isKept(HTMLElement section, String field);

    void open(int rung) {
        if (rung == MEND && !row.mayMend()) {
            row.say(row.whyNotMend());
            return;
        }
        row.climb(1);
        row.open(rung);
        Dom.mark(section, "climbing", rung > 1);
        panel.setHidden(rung == 1);
        if (rung == FINISH) {
            finish(1, new BlankRung.Filled(printed.working().steps().size()));
        } else if (rung == DO) {
            doIt();
        } else if (rung == MEND) {
            mend();
        } else {
            panel.setInnerHTML("");
            row.say("The whole working stands below.");
        }
    }

    /** The printed working with its last steps blank, one more each time. What is filled stays filled. */
    private void finish(int count, BlankRung.Filled filled) {
        List<Integer> blanks = printed.last(count);
        int most = Math.max(1, printed.blanks().size() - 1);
        String words = count == 1 ? "The last step is yours. Work it out and put in your figure."
                : "Now the last " + count + " steps are yours. What you have filled in stays.";
        if (blanks.isEmpty()) {
            words = "No step of this working is computed, so there is nothing to fill in: it is read from tables.";
            row.climb(FINISH);
        }
        show(FINISH, words, given, RungMarkup.steps(place, printed, blanks, true), "print", "Print this rung");
        BlankRung.mount(panel, place, printed, blanks, filled, numbers, row::say, clean -> {
            boolean enough = count >= Math.min(2, most);
            if (clean && enough) {
                row.climb(FINISH);
            }
            String praise = !clean ? "Filled, with help. The rung counts when every figure is your own."
                    : enough ? "Rung climbed." : "Right. One step more, then the rung is climbed.";
            if (count < most) {
                end(praise, () -> finish(count + 1, filled), "more", "One more blank", "do", LadderMarkup.name(DO));
            } else {
                end(praise, null, "do", LadderMarkup.name(DO), "again", "Once more");
            }
        });
    }

    private void doIt() {
        Variation variation = Variation.of(calculator, given, keep, seed());
        Exercise exercise = variation == null ? printed : new Exercise(variation.working());
        String words = variation == null
                ? "No other round numbers lead through these same steps, so the numbers are those of the example. All steps are yours."
                : "The story with other numbers. All steps are yours.";
        show(DO, words, variation == null ? given : variation.entries(),
                RungMarkup.steps(place, exercise, exercise.blanks(), false), "other", "Other numbers", "print", "Print this rung");
        if (exercise.blanks().isEmpty()) {
            row.climb(DO);
        }
        BlankRung.Filled filled = new BlankRung.Filled(exercise.working().steps().size());
        BlankRung.mount(panel, place, exercise, exercise.blanks(), filled, seed(), row::say, clean -> {
            if (clean) {
                row.climb(DO);
            }
            String praise = clean ? "Rung climbed." : "Filled, with help. The rung counts when every figure is your own.";
            if (row.mayMend() && clean) {
                end(praise, null, "mend", LadderMarkup.name(MEND), "other", "Other numbers");
            } else {
                end(praise, null, "other", "Other numbers");
            }
        });
    }

    private void mend() {
        Variation variation = Variation.of(calculator, given, keep, seed() + 1);
        boolean fits = variation != null && !MendedWorking.all(variation.working()).isEmpty();
        Working working = fits ? variation.working() : printed.working();
        MendedWorking mended = MendedWorking.of(working, seed());
        show(MEND, "One step of this working has a slip in it, and whatever uses its figure follows from the wrong one. Find the step, name the slip, put it right.",
                fits ? variation.entries() : given, RungMarkup.endsInAStop(printed.working()) + RungMarkup.mended(place, mended), "other", "Another slip", "print", "Print this rung");
        new MendRung(panel.querySelector(".tasks"), place, new Exercise(working), mended, seed(), row::say, () -> {
            row.climb(MEND);
            end("Mended. You are at the top of this ladder.", null, "other", "Another slip", "read", LadderMarkup.name(1));
        });
    }

    private void show(int rung, String words, Map<String, String> entries, String steps, String... actions) {
        panel.setInnerHTML(RungMarkup.head(place, LadderMarkup.name(rung), words, printed.working(), entries) + steps
                + "<div class=\"tasks\"></div><div class=\"end-of-rung\"></div>" + RungMarkup.actions(actions));
        listen(panel.querySelector(":scope > .moves"), rung, null);
        row.say(LadderMarkup.name(rung) + ". " + words);
        Dom.goTo(panel);
    }

    private void end(String praise, Runnable more, String... actions) {
        HTMLElement end = panel.querySelector(".end-of-rung");
        end.setInnerHTML("<p class=\"praise\"><strong>" + praise + "</strong></p>" + RungMarkup.actions(actions));
        listen(end, 0, more);
        row.say(praise);
        Dom.goTo(end.querySelector("button"));
    }

    private void listen(HTMLElement actions, int rung, Runnable more) {
        actions.addEventListener("click", event -> {
            HTMLElement button = Dom.closest((HTMLElement) event.getTarget(), "button[data-does]");
            String does = button == null ? "" : button.getAttribute("data-does");
            switch (does) {
                case "more" -> more.run();
                case "again" -> open(FINISH);
                case "do" -> open(DO);
                case "mend" -> open(MEND);
                case "read" -> open(1);
                case "print" -> print();
                case "other" -> {
                    numbers++;
                    open(panel.querySelector("[data-slip]") == null ? DO : MEND);
                }
                default -> { }
            }
        });
    }

    private int seed() {
        return Variation.seed(place.key(), numbers);
    }

    /** Prints the rung alone; the mark is taken away when the printing is over. */
    private void print() {
        HTMLElement page = HTMLDocument.current().getDocumentElement();
        Dom.mark(page, "rung-only", true);
        Dom.mark(section, "on-paper", true);
        Dom.once(Window.current(), "afterprint", () -> {
            Dom.mark(page, "rung-only", false);
            Dom.mark(section, "on-paper", false);
        });
        Dom.print();
    }
}
