package loomwright.browser;

import java.util.Map;
import java.util.function.Supplier;
import loomwright.markup.LadderMarkup;
import loomwright.markup.Place;
import loomwright.worked.Calculator;
import loomwright.worked.Working;
import org.teavm.jso.dom.html.HTMLElement;

/** The row of rungs of one example. The exercises behind it are made when a rung is asked for. */
final class Ladder {
    private final Supplier<Climb> exercises;
    private Climb climb;

    private Ladder(HTMLElement ladder, Supplier<Climb> exercises) {
        this.exercises = exercises;
        ladder.querySelector(".rungs").addEventListener("click", event -> open(RungRow.pressed((HTMLElement) event.getTarget())));
    }

    /**
     * Puts the row in.
     *
     * @param given what the example starts from
     * @param printed its working, asked for at the first rung
     */
    static void mount(HTMLElement section, Place place, Calculator calculator, Map<String, String> given, Supplier<Working> printed) {
        HTMLElement story = section.querySelector(".story");
        Dom.insertAfter(story == null ? section.querySelector(".title") : story, LadderMarkup.row(place.key()));
        HTMLElement ladder = section.querySelector(".ladder");
        RungRow row = new RungRow(ladder, place.key());
        row.paint();
        new Ladder(ladder, () -> new Climb(section, ladder.querySelector(".rung"), row, place, calculator, given, printed.get()));
    }

    private void open(int rung) {
        if (rung == 0) {
            return;
        }
        if (climb == null) {
            climb = exercises.get();
        }
        climb.open(rung);
    }
}
