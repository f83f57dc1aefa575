package loomwright.browser;

import java.util.List;
import loomwright.markup.Place;
import loomwright.markup.RungMarkup;
import loomwright.practice.BlankCheck;
import loomwright.practice.Exercise;
import loomwright.quantity.Quantity;
import loomwright.worked.ChoiceStep;
import loomwright.worked.Step;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;

/** A working with blanks. Each is checked at its step; when it is right, the reader is asked why the step is taken. */
final class BlankRung {
    private static final int TRIES_BEFORE_HELP = 2;

    private final HTMLElement panel;
    private final Place place;
    private final Exercise exercise;
    private final List<Integer> blanks;
    private final Filled filled;
    private final int seed;
    private final Say say;
    private final Finished finished;
    private final boolean[] credited;
    private final int[] tries;

    /** What a reader has filled in, step by step; kept while more blanks come. */
    static final class Filled {
        private final Quantity[] figures;
        private final String[] texts;
        private final boolean[] right;
        private final boolean[] explained;
        private boolean helped;

        Filled(int steps) {
            figures = new Quantity[steps];
            texts = new String[steps];
            right = new boolean[steps];
            explained = new boolean[steps];
        }
    }

    /** Tells a screen reader something. */
    interface Say {
        void say(String words);
    }

    /** Called when every blank is right and explained. */
    interface Finished {
        /** @param clean whether no step was shown to the reader */
        void finished(boolean clean);
    }

    private BlankRung(
            HTMLElement panel, Place place, Exercise exercise, List<Integer> blanks, Filled filled, int seed, Say say, Finished finished) {
        this.panel = panel;
        this.place = place;
        this.exercise = exercise;
        this.blanks = blanks;
        this.filled = filled;
        this.seed = seed;
        this.say = say;
        this.finished = finished;
        this.credited = new boolean[exercise.working().steps().size()];
        this.tries = new int[credited.length];
    }

    /** Makes the blanks in {@code panel} work. */
    static void mount(
            HTMLElement panel, Place place, Exercise exercise, List<Integer> blanks, Filled filled, int seed, Say say, Finished finished) {
        BlankRung rung = new BlankRung(panel, place, exercise, blanks, filled, seed, say, finished);
        for (int at : blanks) {
            rung.listen(at);
        }
    }

    private void listen(int at) {
        HTMLElement step = step(at);
        step.querySelector("form.yours").addEventListener("submit", event -> {
            event.preventDefault();
            check(at);
        });
        HTMLElement ask = step.querySelector("[data-does=formula]");
        if (ask != null) {
            ask.addEventListener("click", event -> {
                step.querySelector(".letters-only").setHidden(false);
                ask.setHidden(true);
                Dom.goTo(step.querySelector(".letters-only .line"));
            });
        }
        if (filled.right[at]) {
            box(at).setValue(filled.texts[at]);
            close(at, "Right.");
            more(at).setInnerHTML(RungMarkup.because(exercise.working().steps().get(at).why()));
        }
    }

    private void check(int at) {
        if (filled.right[at]) {
            return;
        }
        BlankCheck check = exercise.check(at, box(at).getValue(), filled.figures);
        filled.figures[at] = check.figure();
        credited[at] = check.kind() == BlankCheck.Kind.CREDITED;
        askAgain(at);
        if (check.kind() == BlankCheck.Kind.RIGHT) {
            right(at, check.words());
            return;
        }
        reply(at).setInnerHTML(RungMarkup.reply(check));
        box(at).setAttribute("aria-invalid", check.isDone() ? "false" : "true");
        tries[at] += check.isDone() ? 0 : 1;
        if (tries[at] == TRIES_BEFORE_HELP) {
            more(at).setInnerHTML(RungMarkup.actions("show", "Show me this step"));
            more(at).querySelector("button").addEventListener("click", event -> show(at));
        }
        say.say(check.words());
    }

    /** A figure that was right for a wrong one before it is no longer so once that one changes. */
    private void askAgain(int changed) {
        for (int at : blanks) {
            if (at > changed && credited[at]) {
                credited[at] = false;
                reply(at).setInnerHTML(RungMarkup.reply(false, "Step " + (changed + 1) + " has changed. Check this one again."));
            }
        }
    }

    private void right(int at, String words) {
        filled.right[at] = true;
        filled.texts[at] = box(at).getValue();
        close(at, words);
        openChoices();
        Step step = exercise.working().steps().get(at);
        List<String> reasons = exercise.reasons(at, seed);
        if (reasons.size() == 1) {
            explained(at);
            return;
        }
        more(at).setInnerHTML(RungMarkup.worked(step, at) + RungMarkup.choices(place, "why-" + at, "Why this step?", reasons));
        new Question(more(at).querySelector("form"), say, chosen ->
                reasons.get(chosen).equals(step.why()) ? null : "That is why another step is taken: step " + stepOf(reasons.get(chosen)) + ".",
                () -> explained(at));
        say.say(words + " Why this step?");
        Dom.goTo(more(at).querySelector("input"));
    }

    private int stepOf(String why) {
        List<Step> steps = exercise.working().steps();
        int at = 0;
        while (!steps.get(at).why().equals(why)) {
            at++;
        }
        return at + 1;
    }

    private void show(int at) {
        filled.helped = true;
        filled.right[at] = true;
        Quantity result = exercise.working().steps().get(at).result();
        filled.figures[at] = result;
        box(at).setValue(result.text());
        filled.texts[at] = result.text();
        askAgain(at);
        close(at, "Shown to you.");
        openChoices();
        explained(at);
    }

    private void close(int at, String words) {
        box(at).removeAttribute("aria-invalid");
        box(at).setReadOnly(true);
        step(at).querySelector("form.yours button").setHidden(true);
        reply(at).setInnerHTML(RungMarkup.reply(true, words));
    }

    private void explained(int at) {
        Step step = exercise.working().steps().get(at);
        filled.explained[at] = true;
        more(at).setInnerHTML(RungMarkup.worked(step, at) + RungMarkup.because(step.why()));
        for (int next : blanks) {
            if (!filled.right[next] || !filled.explained[next]) {
                say.say("Right.");
                Dom.goTo(filled.right[next] ? more(next).querySelector("input") : box(next));
                return;
            }
        }
        finished.finished(!filled.helped);
    }

    /** A choice is filled in once every blank before it is. */
    private void openChoices() {
        List<Step> steps = exercise.working().steps();
        for (int at = 0; at < steps.size(); at++) {
            if (blanks.contains(at) && !filled.right[at]) {
                return;
            }
            if (steps.get(at) instanceof ChoiceStep) {
                step(at).setInnerHTML(RungMarkup.shown(place, steps.get(at), at));
            }
        }
    }

    private HTMLElement step(int at) {
        return panel.querySelector("[data-step='" + at + "']");
    }

    private HTMLElement reply(int at) {
        return step(at).querySelector(".yours .reply");
    }

    private HTMLElement more(int at) {
        return step(at).querySelector(".more");
    }

    private HTMLInputElement box(int at) {
        return (HTMLInputElement) step(at).querySelector(".yours input");
    }
}
