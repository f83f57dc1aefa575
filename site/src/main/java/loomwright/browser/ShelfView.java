package loomwright.browser;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.FileRead;
import loomwright.circuit.page.ShelfMarkup;
import loomwright.circuit.page.ShelfMarkup.Kept;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** The circuits of this device by name, and their main figures side by side. */
final class ShelfView {
    private static final int PAUSE_MILLISECONDS = 300;

    private final CircuitDesk desk;
    private final CircuitNotice notice;
    private final HTMLElement choice;
    private final HTMLElement table;
    private final Examination[] others = new Examination[CircuitShelf.PLACES + 1];
    private int timer;

    ShelfView(CircuitDesk desk, HTMLDocument document, CircuitNotice notice) {
        this.desk = desk;
        this.notice = notice;
        this.choice = document.getElementById("circuit-shelf");
        this.table = document.getElementById("circuit-beside");
        choice.addEventListener("change", event -> go(((HTMLSelectElement) choice).getValue()));
    }

    /** @param soon whether the reader is still typing */
    void show(boolean soon) {
        Window.clearTimeout(timer);
        if (soon) {
            timer = Window.setTimeout(this::show, PAUSE_MILLISECONDS);
        } else {
            show();
        }
    }

    private void show() {
        List<Kept> kept = new ArrayList<>();
        for (int place : desk.shelf().places()) {
            kept.add(new Kept(place, examination(place)));
        }
        int here = desk.shelf().place();
        Repaint.inside(choice, ShelfMarkup.options(kept, here));
        ((HTMLSelectElement) choice).setValue(Integer.toString(here));
        Repaint.inside(table, ShelfMarkup.table(kept, here));
    }

    /** What is found for the circuit at a place; worked out again only if it has changed. Null if it cannot be read. */
    private Examination examination(int place) {
        if (place == desk.shelf().place()) {
            return desk.examination();
        }
        Circuit circuit = desk.shelf().circuit(place);
        if (circuit == null) {
            return null;
        }
        if (others[place] == null || !others[place].circuit().equals(circuit)) {
            others[place] = Examination.of(circuit);
        }
        return others[place];
    }

    private void go(String chosen) {
        int place = chosen.length() == 1 ? chosen.charAt(0) - '0' : 10 * (chosen.charAt(0) - '0') + chosen.charAt(1) - '0';
        if (!mayLeave()) {
            show();
            return;
        }
        FileRead read = desk.shelf().go(place);
        if (read.circuit() == null) {
            show();
            notice.refuse("What is kept there cannot be read." + CircuitStore.STAYS, read.faults());
            return;
        }
        desk.showAll();
        desk.store().keep();
        desk.said().say("This is " + title() + ".");
    }

    /** A copy at a place of its own, to try something on. */
    void copy() {
        String name = (desk.now().name() + ", copy").strip();
        put(name.length() > Circuit.LONGEST_NAME ? desk.now() : CircuitEdits.renamed(desk.now(), name), "This is a copy with a place of its own.");
    }

    /** A circuit from a file at a place of its own. */
    void put(Circuit circuit) {
        put(circuit, "The file was opened at a place of its own.");
    }

    private void put(Circuit circuit, String words) {
        int place = desk.shelf().free();
        if (place == 0) {
            desk.said().say("All " + CircuitShelf.PLACES + " places are taken: download one as a file and remove it first.");
        } else if (mayLeave()) {
            desk.shelf().put(place, circuit);
            desk.showAll();
            desk.store().keep();
            desk.said().say(words + " The other circuit stays as it was; choose between them above the drawing.");
        }
    }

    void discard() {
        if (!mayLeave()) {
            return;
        }
        notice.ask(
                "Shall " + title() + " be removed from this device? Undo cannot bring it back. Download it as a file if you may need it again.",
                "Remove it", () -> {
                    String gone = title();
                    desk.shelf().discard();
                    desk.showAll();
                    desk.store().keep();
                    desk.said().say("Removed: " + gone + ". This is " + title() + ".");
                },
                "Leave it here", desk.store()::keep);
    }

    /** A question that is open concerns the circuit on the desk. */
    private boolean mayLeave() {
        if (notice.isAsking()) {
            desk.said().say("First answer the question above the drawing.");
            return false;
        }
        return true;
    }

    private String title() {
        return desk.now().name().isEmpty() ? "the circuit without a name" : "\u201c" + desk.now().name() + "\u201d";
    }
}
