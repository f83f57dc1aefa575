package loomwright.browser;

import java.util.Map;
import loomwright.markup.Absent;
import loomwright.markup.AnswerMarkup;
import loomwright.markup.Assumed;
import loomwright.markup.FormMarkup;
import loomwright.markup.Links;
import loomwright.markup.Place;
import loomwright.markup.StatusText;
import loomwright.units.Shown;
import loomwright.units.UnitSystem;
import loomwright.worked.Calculator;
import loomwright.worked.Field;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.Working;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLFormElement;

/** One worked example that works itself out again at every change. */
final class LiveExample {
    /** Stories are told in metric units; a figure that is told in American ones stays as it is when those are chosen. */
    private static final UnitSystem TOLD = UnitSystem.METRIC;

    private final Calculator calculator;
    private final EntryForm form;
    private final FaultNotes notes;
    private final FieldsShown shown;
    private final OutcomeView outcome;
    private final GraphView graph;
    private final GivenList given;
    private final AnswerForm answer;
    private final StatusLine status;
    private final Place place;
    private final boolean ownStory;
    private UnitSystem units;
    private Map<String, String> printedEntries;
    /** Worked out when it is first needed: the page shows it already. */
    private Working printed;
    private Working shownPrinted;
    private UnitSystem shownIn;

    private final Pause pause = new Pause();

    private LiveExample(
            HTMLElement section, Calculator calculator, Place place, GivenList given, Assumed assumed, Output asked) {
        this.calculator = calculator;
        this.place = place;
        this.given = given;
        HTMLElement formElement = section.querySelector("form.try");
        this.form = new EntryForm(formElement, place, calculator, assumed, given.said());
        this.notes = new FaultNotes(formElement, place);
        this.shown = new FieldsShown(formElement, calculator.description());
        this.outcome = new OutcomeView(section, place);
        this.graph = new GraphView(section.querySelector(".graph"), calculator);
        this.answer = new AnswerForm(section.querySelector("form.check"), place, asked);
        this.status = new StatusLine(formElement.querySelector(".unseen[role=status]"));
        this.ownStory = assumed == Assumed.OWN_STORY;
        this.units = TOLD;
        this.printedEntries = form.entries();
        inUnits(UnitChoice.now());
        answer.show(this::printed);
        OwnFigures.mount(formElement, place, calculator.description(), this::fill, ((HTMLFormElement) formElement)::reset);
        TurnedForm.mount(formElement, calculator, place, asked, form::entries, this::fill);
        Ladder.mount(section, place, calculator, given.printed(), this::printed);
        listen(formElement);
    }

    /** Puts the rungs and the forms in; the outcome stays as it was printed until something changes. */
    static LiveExample takeOver(HTMLElement section, Calculator calculator, Links links) {
        Place place = new Place(section.getAttribute("data-key"), links, ShownFirst.of(section));
        String lender = section.getAttribute("data-lender");
        Assumed assumed = lender == null ? Assumed.OWN_STORY : new Assumed(lender);
        GivenList given = new GivenList(section.querySelector(".figures > .given"), calculator.description(), assumed);
        Output asked = calculator.description().output(section.getAttribute("data-check"));
        given.hide();
        String absent = section.getAttribute("data-absent");
        Dom.insertAfter(given.element(), FormMarkup.of(
                place, calculator.description(), given.said(), assumed, absent == null ? Absent.NONE : new Absent(" " + absent + " ")));
        InSight.keep(section.querySelector(".figures"));
        Dom.insertBefore(section.querySelector("#" + place.id("end")), AnswerMarkup.form(place, asked));
        return new LiveExample(section, calculator, place, given, assumed, asked);
    }

    private Working printed() {
        if (printed == null) {
            printed = Outcome.of(calculator, given.said()).working();
        }
        return printed;
    }

    /** Puts figures from elsewhere into the fields, and says at once if they cannot be used. */
    void fill(Map<String, String> entries) {
        if (form.fill(entries)) {
            shown.unfold(entries);
            work(true);
        }
    }

    /** Fields and results in other units; figures are converted, and none of them changes hands. */
    void inUnits(UnitSystem chosen) {
        if (chosen == units) {
            return;
        }
        units = chosen;
        if (isPrinted(form.entries())) {
            asPrintedInUnits();
            outcome.show(shownPrinted(), shownPrinted());
        } else {
            form.inUnits(units, !ownStory);
            work(true);
        }
    }

    private void asPrintedInUnits() {
        form.inUnits(units, !ownStory);
        printedEntries = form.entries();
    }

    private Working shownPrinted() {
        return shownPrinted == null || shownIn != units ? rememberShown() : shownPrinted;
    }

    private Working rememberShown() {
        shownIn = units;
        shownPrinted = Shown.in(units, printed());
        return shownPrinted;
    }

    private void listen(HTMLElement element) {
        element.addEventListener("input", event -> {
            form.changed((HTMLElement) event.getTarget());
            typing();
        });
        element.addEventListener("change", event -> work(true));
        element.addEventListener("focusout", event -> pause.finish(() -> work(true)));
        element.querySelector("[data-empties]").addEventListener("click", event -> {
            form.emptyAssumed();
            lookAgain();
        });
        element.addEventListener("submit", event -> {
            event.preventDefault();
            lookAgain();
        });
        Dom.onEnter(element, this::lookAgain);
        element.addEventListener("reset", event -> Window.setTimeout(() -> {
            form.asPrinted();
            if (units != TOLD) {
                asPrintedInUnits();
            }
            work(true);
        }, 0));
    }

    /** A key was pressed in a field. What the page shows is from before, and says so; the entry counts once it is finished. */
    private void typing() {
        outcome.typing();
        graph.typing();
        answer.clear();
        status.hush();
        pause.begin(() -> work(false));
    }

    private void lookAgain() {
        work(true);
        notes.goToSummary();
    }

    /**
     * Works the example out with what the fields hold.
     *
     * @param leftField whether the reader has left the field: after a pause in typing, no new complaint is made
     */
    private void work(boolean leftField) {
        pause.end();
        Map<String, String> entries = form.entries();
        Outcome worked = Outcome.of(calculator, entries);
        Working own = worked.working();
        if (own == null) {
            outcome.refused();
            graph.refused();
            answer.showFaults();
            shown.reveal(worked.faults());
            notes.show(worked.faults(), leftField);
            say(notes.spoken(), leftField);
            return;
        }
        notes.clear();
        Absent absent = Absent.of(calculator.description(), own.entries());
        shown.without(absent);
        boolean isPrinted = isPrinted(entries);
        outcome.show(isPrinted ? shownPrinted() : Shown.in(units, own), shownPrinted());
        graph.show(entries, own);
        given.show(entries, form.own(entries), absent, isPrinted);
        answer.show(() -> own);
        say(StatusText.of(place, own), leftField);
    }

    private void say(String words, boolean leftField) {
        if (leftField) {
            status.sayNow(words);
        } else {
            status.saySoon(words);
        }
    }

    private boolean isPrinted(Map<String, String> entries) {
        for (Field field : calculator.description().fields()) {
            if (!entries.get(field.key()).equals(printedEntries.get(field.key()))) {
                return false;
            }
        }
        return true;
    }
}
