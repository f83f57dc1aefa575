package loomwright.browser;

import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import loomwright.markup.Place;
import loomwright.markup.TurnedMarkup;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.turned.TurnedRound;
import loomwright.turned.Wish;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.Pairs;
import loomwright.worked.QuantityField;
import loomwright.worked.Working;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** Asks the question of an example the other way round, with the figures that its fields hold. */
final class TurnedForm {
    private final Calculator calculator;
    private final Place place;
    private final Supplier<Map<String, String>> entries;
    private final HTMLElement fold;
    private final HTMLElement answer;
    private final HTMLSelectElement find;
    private final HTMLSelectElement result;
    private final HTMLSelectElement sense;
    private final HTMLInputElement limit;

    private TurnedForm(HTMLElement fold, Calculator calculator, Place place, Supplier<Map<String, String>> entries) {
        this.fold = fold;
        this.calculator = calculator;
        this.place = place;
        this.entries = entries;
        HTMLDocument document = fold.getOwnerDocument();
        this.answer = fold.querySelector(".turned-answer");
        this.find = (HTMLSelectElement) document.getElementById(place.id("turn-find"));
        this.result = (HTMLSelectElement) document.getElementById(place.id("turn-result"));
        this.sense = (HTMLSelectElement) document.getElementById(place.id("turn-sense"));
        this.limit = (HTMLInputElement) document.getElementById(place.id("turn-limit"));
    }

    /**
     * Puts the fold behind an element.
     *
     * @param entries what the fields hold now
     * @param take puts figures into the fields
     */
    static void mount(
            HTMLElement behind, Calculator calculator, Place place, Output first, Supplier<Map<String, String>> entries,
            Consumer<Map<String, String>> take) {
        Dom.insertAfter(behind, TurnedMarkup.fold(place, calculator.description(), first));
        TurnedForm form = new TurnedForm((HTMLElement) behind.getNextSibling(), calculator, place, entries);
        form.fold.addEventListener("toggle", event -> {
            // What was typed before it was folded stays.
            if (form.limit.getValue().isEmpty()) {
                form.suggest();
            }
        });
        form.result.addEventListener("change", event -> form.suggest());
        form.fold.querySelector("form").addEventListener("submit", event -> {
            event.preventDefault();
            form.ask();
        });
        form.answer.addEventListener("click", event -> {
            HTMLElement button = Dom.closest((HTMLElement) event.getTarget(), "[data-take]");
            if (button != null) {
                take.accept(Pairs.of(form.find.getValue(), button.getAttribute("data-figure")));
            }
        });
    }

    private Description description() {
        return calculator.description();
    }

    /** The limit that a check of the working holds the result against, or what the result is now. */
    private void suggest() {
        Output output = description().output(result.getValue());
        Dom.mark(fold, "without-limit", output == null);
        Working now = Outcome.of(calculator, entries.get()).working();
        if (output != null && now != null) {
            Wish wish = Wish.suggested(now, output);
            limit.setValue(TurnedMarkup.limit(wish));
            sense.setValue(wish.atMost() ? "at-most" : "at-least");
        }
    }

    private void ask() {
        Output output = description().output(result.getValue());
        QuantityText.Reading reading = output == null ? null : QuantityText.read(limit.getValue(), output.unit());
        String fault = output == null ? null : fault(reading, output);
        FaultNotes.tie(limit, place.id("turn-answer"), fault != null);
        if (fault != null) {
            answer.setInnerHTML(TurnedMarkup.fault(fault));
            return;
        }
        Wish wish = output == null ? Wish.noStop() : new Wish(output, reading.quantity().in(output.unit()), sense.getValue().equals("at-most"));
        QuantityField unknown = (QuantityField) description().field(find.getValue());
        answer.setInnerHTML(TurnedMarkup.answer(place.links(), TurnedRound.of(calculator, entries.get(), unknown, wish)));
    }

    private static String fault(QuantityText.Reading reading, Output output) {
        Quantity quantity = reading.quantity();
        if (quantity == null) {
            return "The limit " + reading.fault() + ". Enter a number in " + output.unit().spoken();
        }
        return quantity.dimension().equals(output.unit().dimension())
                ? null : "The limit is in " + quantity.unit().spoken() + ", but the result is in " + output.unit().spoken();
    }
}
