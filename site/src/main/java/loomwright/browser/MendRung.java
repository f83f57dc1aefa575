package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.markup.Place;
import loomwright.markup.RungMarkup;
import loomwright.practice.BlankCheck;
import loomwright.practice.Exercise;
import loomwright.practice.MendedWorking;
import loomwright.quantity.Quantity;
import loomwright.worked.Step;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;

/** A working with a slip in it: find the step, name the slip, put the figure right, one after the other. */
final class MendRung {
    private final HTMLElement tasks;
    private final Place place;
    private final Exercise exercise;
    private final MendedWorking mended;
    private final int seed;
    private final BlankRung.Say say;
    private final Runnable finished;

    MendRung(
            HTMLElement tasks, Place place, Exercise exercise, MendedWorking mended, int seed, BlankRung.Say say, Runnable finished) {
        this.tasks = tasks;
        this.place = place;
        this.exercise = exercise;
        this.mended = mended;
        this.seed = seed;
        this.say = say;
        this.finished = finished;
        tasks.setAttribute("data-slip", "");
        findTheStep();
    }

    private void findTheStep() {
        List<String> steps = new ArrayList<>();
        for (int at = 0; at < mended.steps().size(); at++) {
            steps.add("Step " + (at + 1) + ": " + mended.steps().get(at).words());
        }
        ask("step", "Which step has the slip?", steps, chosen -> chosen == mended.at()
                ? null
                : "Step " + (chosen + 1) + " is not the one. It is worked rightly from the figures before it.",
                this::nameTheSlip);
    }

    private void nameTheSlip() {
        say.say("Yes, step " + (mended.at() + 1) + ".");
        List<String> names = mended.names(exercise.working(), seed);
        if (names.size() == 1) {
            putItRight();
            return;
        }
        ask("slip", "Step " + (mended.at() + 1) + ": what is the slip?", names, chosen -> names.get(chosen).equals(mended.slip().name())
                ? null
                : "That is not what happened here. Hold what the step says against its formula.",
                this::putItRight);
    }

    private void putItRight() {
        Step right = exercise.working().steps().get(mended.at());
        String wrong = RungMarkup.worked(mended.steps().get(mended.at()), mended.at());
        tasks.setInnerHTML("<p><strong>Now put step " + (mended.at() + 1) + (wrong.isEmpty() ? " right." : " right. It says:") + "</strong></p>" + wrong
                + RungMarkup.entry(place, right, mended.at()));
        HTMLElement form = tasks.querySelector("form");
        HTMLInputElement box = (HTMLInputElement) form.querySelector("input");
        form.addEventListener("submit", event -> {
            event.preventDefault();
            Quantity[] none = new Quantity[exercise.working().steps().size()];
            BlankCheck check = exercise.check(mended.at(), box.getValue(), none);
            if (check.kind() == BlankCheck.Kind.RIGHT) {
                mended(right);
            } else {
                box.setAttribute("aria-invalid", "true");
                form.querySelector(".reply").setInnerHTML(RungMarkup.reply(check));
                say.say(check.words());
            }
        });
        Dom.goTo(box);
    }

    private void mended(Step right) {
        tasks.setInnerHTML(RungMarkup.reply(true, mended.slip().name() + ". " + mended.slip().words())
                + "<p class=\"words\">Step " + (mended.at() + 1) + " put right:</p>" + RungMarkup.worked(right, mended.at()));
        finished.run();
    }

    private void ask(String part, String question, List<String> answers, Question.Judge judge, Runnable then) {
        tasks.setInnerHTML(RungMarkup.choices(place, part, question, answers));
        new Question(tasks.querySelector("form"), say, judge, then);
        if (!part.equals("step")) {
            Dom.goTo(tasks.querySelector("input"));
        }
    }
}
