package loomwright.browser;

import loomwright.markup.RungMarkup;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;

/** A question with one right answer among several. It can be answered as often as it takes. */
final class Question {
    /** Judges an answer. */
    interface Judge {
        /** What is wrong with the answer chosen, or null if it is right. */
        String wrong(int chosen);
    }

    Question(HTMLElement form, BlankRung.Say say, Judge judge, Runnable answered) {
        form.addEventListener("submit", event -> {
            event.preventDefault();
            HTMLInputElement chosen = (HTMLInputElement) form.querySelector("input:checked");
            String wrong = chosen == null ? "Nothing is chosen yet. Choose one of the answers." : judge.wrong(Integer.parseInt(chosen.getValue()));
            if (wrong == null) {
                answered.run();
            } else {
                form.querySelector(".reply").setInnerHTML(RungMarkup.reply(false, wrong));
                say.say(wrong);
            }
        });
    }
}
