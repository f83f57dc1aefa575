package loomwright.browser;

import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;
import loomwright.markup.UpshotMarkup;
import loomwright.worked.Working;
import org.teavm.jso.dom.html.HTMLElement;

/** Everything computed of one example: its upshot beside the figures, and the way to it. */
final class OutcomeView {
    private final HTMLElement upshot;
    private final HTMLElement outcome;
    private final Place place;
    private final OldMark oldUpshot;
    private final OldMark oldOutcome;

    OutcomeView(HTMLElement section, Place place) {
        this.upshot = section.querySelector(".upshot");
        this.outcome = section.querySelector(".outcome");
        this.place = place;
        this.oldUpshot = new OldMark(upshot);
        this.oldOutcome = new OldMark(outcome);
    }

    /** Shows a working: the printed one itself, or one with own figures beside it. */
    void show(Working working, Working printed) {
        boolean isPrinted = working == printed;
        oldUpshot.clear();
        oldOutcome.clear();
        Repaint.inside(upshot, isPrinted ? UpshotMarkup.printed(place, working) : UpshotMarkup.own(place, working, printed));
        Repaint.inside(outcome, isPrinted ? OutcomeMarkup.printed(place, working) : OutcomeMarkup.own(place, working, printed));
    }

    /** An entry is being typed: what stands here is from before it. */
    void typing() {
        oldUpshot.typing();
        oldOutcome.typing();
    }

    /** An entry cannot be used: what stands here is from the last one that could. */
    void refused() {
        oldUpshot.refused();
        oldOutcome.refused();
    }
}
