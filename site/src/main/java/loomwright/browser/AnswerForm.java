package loomwright.browser;

import java.util.function.Supplier;
import loomwright.markup.AnswerMarkup;
import loomwright.markup.Place;
import loomwright.markup.TypedQuantity;
import loomwright.practice.AnswerCheck;
import loomwright.worked.Output;
import loomwright.worked.Working;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** Takes the reader's own answer and replies. */
final class AnswerForm {
    private final HTMLElement reply;
    private final HTMLInputElement box;
    private final HTMLSelectElement units;
    private final Output asked;
    private Supplier<Working> working;

    AnswerForm(HTMLElement form, Place place, Output asked) {
        this.asked = asked;
        this.reply = form.querySelector(".reply");
        this.box = (HTMLInputElement) form.querySelector("input");
        this.units = (HTMLSelectElement) form.querySelector("select");
        form.addEventListener("submit", event -> {
            event.preventDefault();
            AnswerCheck answer = check();
            reply.setInnerHTML(AnswerMarkup.reply(answer));
            FaultNotes.tie(box, reply.getId(), answer.kind() == AnswerCheck.Kind.UNREADABLE);
        });
    }

    /** From now on answers are held against {@code working}, asked for at the first answer; an earlier reply goes. */
    void show(Supplier<Working> working) {
        this.working = working;
        clear();
    }

    /** From now on there is nothing to hold an answer against. */
    void showFaults() {
        show(() -> null);
    }

    /** An earlier reply goes. */
    void clear() {
        reply.setInnerHTML("");
        FaultNotes.tie(box, reply.getId(), false);
    }

    private AnswerCheck check() {
        Working held = working.get();
        if (held == null) {
            return unanswerable("There is no working to hold your answer against: mend the entry above first.");
        }
        if (held.answer(asked.key()) == null) {
            return unanswerable("With these figures there is no such result: put in other figures above.");
        }
        return AnswerCheck.of(held, asked.key(), units == null ? box.getValue() : TypedQuantity.joined(box.getValue(), units.getValue()));
    }

    private static AnswerCheck unanswerable(String words) {
        return new AnswerCheck(AnswerCheck.Kind.UNREADABLE, words, null);
    }
}
