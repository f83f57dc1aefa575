package loomwright.browser;

import loomwright.markup.FieldMarkup;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLInputElement;

/** A field that takes a whole number within limits. */
final class WholeNumber {
    private WholeNumber() {}

    /** The number; 0 if there is none within the limits, which is then said in {@code error}. */
    static int read(HTMLDocument document, String error, String id, int least, int most, String name) {
        HTMLInputElement box = (HTMLInputElement) document.getElementById(id);
        String text = box.getValue().strip();
        int number = 0;
        for (int i = 0; i < text.length() && number <= most; i++) {
            char c = text.charAt(i);
            number = c < '0' || c > '9' ? most + 1 : number * 10 + c - '0';
        }
        boolean good = number >= least && number <= most;
        FaultNotes.tie(box, id + "-error", !good);
        if (!good) {
            Dom.append(document.querySelector(error), FieldMarkup.error(id, name + " must be a whole number from " + least + " to " + most + "."));
        }
        return good ? number : 0;
    }
}
