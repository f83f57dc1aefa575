package loomwright.browser;

import java.util.List;
import java.util.Map;
import loomwright.markup.AnswerMarkup;
import loomwright.markup.FormMarkup;
import loomwright.markup.Fragment;
import loomwright.markup.Links;
import loomwright.markup.Place;
import loomwright.markup.StatusText;
import loomwright.worked.Calculator;
import loomwright.worked.Field;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.Working;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLElement;

/** One worked example that works itself out again at every change. */
final class LiveExample {
    private final HTMLElement graph;
    private final Calculator calculator;
    private final EntryForm form;
    private final FaultNotes notes;
    private final OutcomeView outcome;
    private final GivenList given;
    private final AnswerForm answer;
    private final StatusLine status;
    private final Place place;
    private final Map<String, String> printedEntries;
    private final Working printed;

    private LiveExample(HTMLElement section, Calculator calculator, Place place, GivenList given, Working printed) {
        this.graph = section.querySelector(".graph");
        this.calculator = calculator;
        this.place = place;
        this.printed = printed;
        this.given = given;
        HTMLElement formElement = section.querySelector("form.try");
        this.form = new EntryForm(formElement, place, calculator.description());
        this.notes = new FaultNotes(formElement, place);
        this.outcome = new OutcomeView(section.querySelector(".outcome"), place, printed);
        this.answer = new AnswerForm(section.querySelector("form.check"), place, asked(section, place, printed));
        this.status = new StatusLine(formElement.querySelector(".unseen[role=status]"));
        this.printedEntries = form.entries();
        answer.show(printed);
        listen(formElement);
    }

    /** Puts the forms in; the outcome stays as it was printed until something changes. */
    static LiveExample takeOver(HTMLElement section, Calculator calculator, Links links) {
        Place place = new Place(section.getAttribute("data-key"), links, ShownFirst.of(section));
        GivenList given = new GivenList(section.querySelector(".given"), calculator.description());
        Working printed = Outcome.of(calculator, given.printed()).working();
        if (printed == null) {
            throw new IllegalStateException("the printed example " + place.key() + " does not work out");
        }
        given.hide();
        Dom.insertAfter(given.element(), FormMarkup.of(place, calculator.description(), given.printed()));
        Dom.append(section, AnswerMarkup.form(place, asked(section, place, printed)));
        return new LiveExample(section, calculator, place, given, printed);
    }

    /** The result the reader is asked for: the one the author named, or the first shown. */
    private static Output asked(HTMLElement section, Place place, Working printed) {
        String named = section.getAttribute("data-check");
        List<String> show = place.show();
        Output output = named == null ? null : printed.description().output(named);
        if (output == null && !show.isEmpty()) {
            output = printed.description().output(show.get(0));
        }
        return output == null ? printed.results().get(0).output() : output;
    }

    /** Puts figures from elsewhere into the fields, and says at once if they cannot be used. */
    void fill(Map<String, String> entries) {
        if (form.fill(entries)) {
            work(true);
        }
    }

    private void listen(HTMLElement element) {
        element.addEventListener("input", event -> {
            form.followUnits(event.getTarget());
            work(false);
        });
        element.addEventListener("change", event -> work(true));
        element.addEventListener("submit", event -> {
            event.preventDefault();
            lookAgain();
        });
        Dom.onEnter(element, this::lookAgain);
        element.addEventListener("reset", event -> Window.setTimeout(() -> work(true), 0));
    }

    private void lookAgain() {
        work(true);
        notes.goToSummary();
    }

    /**
     * Works the example out with what the fields hold.
     *
     * @param leftField whether the reader has left the field: while typing, no new complaint is made
     */
    private void work(boolean leftField) {
        Map<String, String> entries = form.entries();
        Outcome worked = Outcome.of(calculator, entries);
        Working own = worked.working();
        if (own == null) {
            outcome.markOld();
            answer.showFaults();
            notes.show(worked.faults(), leftField);
            status.say(notes.spoken());
            return;
        }
        notes.clear();
        boolean isPrinted = isPrinted(entries);
        outcome.show(isPrinted ? printed : own, isPrinted);
        if (graph != null) {
            GraphLink.redraw(graph, place.links().root(), Fragment.write(entries));
        }
        given.show(entries, isPrinted);
        answer.show(own);
        status.say(StatusText.of(place, own));
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
