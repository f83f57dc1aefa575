package loomwright.browser;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;
import loomwright.circuit.PartUnits;
import loomwright.circuit.check.SmallestThatPasses;
import loomwright.circuit.check.Suggestion;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.page.PartFormMarkup;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** What the buttons of the page do. */
final class CircuitMoves {
    private final CircuitDesk desk;
    private final HTMLDocument document;
    private final CircuitPrinting printing;

    CircuitMoves(CircuitDesk desk, HTMLDocument document) {
        this.desk = desk;
        this.document = document;
        this.printing = new CircuitPrinting(document, desk.view());
    }

    /** Shows the figures of a part and goes there, to one field if it is named. */
    void goTo(String id, String field) {
        desk.choose(id);
        desk.view().follow(id);
        if (field == null) {
            desk.panes().part();
        } else {
            desk.panes().field(field);
        }
    }

    void smallest(String id) {
        if (!desk.drafts().isEmpty()) {
            desk.said().say("First correct what needs another look: the checks need every entry.");
            return;
        }
        Suggestion suggestion = SmallestThatPasses.of(desk.now(), id);
        if (suggestion.circuit() != null) {
            desk.change(suggestion.circuit(), id);
            desk.said().say(suggestion.words() + " " + desk.brought());
        } else {
            desk.said().say(suggestion.words());
        }
    }

    /** @param at the part it is done at; null for the part shown */
    void act(String what, String at) {
        switch (what) {
            case "undo" -> desk.steps().back();
            case "redo" -> desk.steps().forward();
            case "drawing", "back" -> desk.panes().drawing(desk.view().row(desk.chosen()));
            case "part" -> desk.panes().part();
            case "verdict" -> desk.panes().verdict();
            case "print" -> printing.print();
            case "tick-all" -> printing.tick(true);
            case "tick-none" -> printing.tick(false);
            case "trailer" -> begin(StartingCircuits.reedmereTrailer());
            case "punt" -> begin(StartingCircuits.punt());
            case "empty" -> begin(StartingCircuits.empty());
            case "download" -> desk.exchange().download();
            case "link" -> desk.exchange().makeLink();
            case "beside" -> desk.beside().copy();
            case "discard" -> desk.beside().discard();
            default -> desk.tryTo(() -> edit(what, at == null ? desk.chosen() : at));
        }
    }

    private void begin(Circuit circuit) {
        desk.change(circuit);
        desk.said().say("A new circuit stands here. Undo brings back the one before.");
        shown();
    }

    private void edit(String what, String id) {
        Circuit before = desk.now();
        switch (what) {
            case "next" -> added(before, CircuitEdits.added(before, PartFormMarkup.usualBehind(before, id), id));
            case "add" -> added(before, CircuitEdits.added(before, kind(), id));
            case "branch" -> added(before, CircuitEdits.branched(before, id));
            case "insert" -> added(before, CircuitEdits.insertedBefore(before, kind(), id));
            case "remove" -> gone(before, CircuitEdits.without(before, id), id);
            case "prune" -> gone(before, CircuitEdits.withoutBranch(before, id), id);
            default -> { }
        }
    }

    private PartKind kind() {
        return PartKind.of(((HTMLSelectElement) document.getElementById("part-kind")).getValue());
    }

    /** Goes to the first part that was not there before. */
    private void added(Circuit before, Circuit grown) {
        Circuit after = PartUnits.ofNew(UnitChoice.now(), before, grown);
        for (int i = 0; i < after.parts().size(); i++) {
            String id = after.parts().get(i).id();
            if (before.part(id) == null) {
                desk.change(after, id);
                int parts = after.parts().size() - before.parts().size();
                desk.said().say((parts == 1 ? after.part(id).kind().label() + " was added. Put in its figures. " : parts + " parts were added. Put in their figures. ")
                        + desk.brought());
                shown();
                return;
            }
        }
    }

    private void gone(Circuit before, Circuit after, String id) {
        desk.change(after, before.part(id).fedBy());
        int parts = before.parts().size() - after.parts().size();
        desk.said().say((parts == 1 ? "One part was" : parts + " parts were") + " taken out. Undo brings back what is gone. " + desk.brought());
        shown();
    }

    private void shown() {
        desk.view().follow(desk.chosen());
        desk.panes().part();
    }
}
