package loomwright.browser;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.check.SmallestThatPasses;
import loomwright.circuit.check.Suggestion;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** What the buttons of the page do. */
final class CircuitMoves {
    private final CircuitDesk desk;
    private final HTMLDocument document;
    private final SheetPrinting printing;

    CircuitMoves(CircuitDesk desk, HTMLDocument document) {
        this.desk = desk;
        this.document = document;
        this.printing = new SheetPrinting(document);
    }

    /** Shows the figures of a part and goes there. */
    void goTo(String id) {
        desk.choose(id);
        goToForm();
    }

    private void goToForm() {
        Focus.go(document.getElementById("part-title"));
    }

    void smallest(String id) {
        if (!desk.drafts().isEmpty()) {
            desk.said().say("First correct what needs another look: the checks need every entry.");
            return;
        }
        Suggestion suggestion = SmallestThatPasses.of(desk.now(), id);
        if (suggestion.circuit() != null) {
            desk.change(suggestion.circuit(), id);
        }
        desk.said().say(suggestion.words());
    }

    void act(String what) {
        switch (what) {
            case "undo" -> desk.steps().back();
            case "redo" -> desk.steps().forward();
            case "print" -> printing.print(((HTMLSelectElement) document.getElementById("circuit-print")).getValue());
            case "hush" -> desk.said().hush();
            case "trailer" -> begin(StartingCircuits.reedmereTrailer());
            case "punt" -> begin(StartingCircuits.punt());
            case "empty" -> begin(StartingCircuits.empty());
            case "download" -> desk.exchange().download();
            case "link" -> desk.exchange().makeLink();
            case "beside" -> desk.beside().copy();
            case "discard" -> desk.beside().discard();
            default -> desk.tryTo(() -> edit(what));
        }
    }

    private void begin(Circuit circuit) {
        desk.change(circuit);
        desk.said().say("A new circuit stands here. Undo brings back the one before.");
        goToForm();
    }

    private void edit(String what) {
        Circuit before = desk.now();
        String id = desk.chosen();
        switch (what) {
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
    private void added(Circuit before, Circuit after) {
        for (int i = 0; i < after.parts().size(); i++) {
            String id = after.parts().get(i).id();
            if (before.part(id) == null) {
                desk.change(after, id);
                int parts = after.parts().size() - before.parts().size();
                desk.said().say(parts == 1 ? after.part(id).kind().label() + " was added. Put in its figures." : parts + " parts were added. Put in their figures.");
                goToForm();
                return;
            }
        }
    }

    private void gone(Circuit before, Circuit after, String id) {
        desk.change(after, before.part(id).fedBy());
        int parts = before.parts().size() - after.parts().size();
        desk.said().say((parts == 1 ? "One part was" : parts + " parts were") + " taken out. Undo brings back what is gone.");
        goToForm();
    }
}
