package loomwright.browser;

import loomwright.circuit.Circuit;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;

/** The steps back and forward, with their buttons. */
final class CircuitSteps {
    private final CircuitDesk desk;
    private final HTMLElement undo;
    private final HTMLElement redo;

    CircuitSteps(CircuitDesk desk, HTMLDocument document) {
        this.desk = desk;
        this.undo = document.querySelector("#circuit-bar [data-does=undo]");
        this.redo = document.querySelector("#circuit-bar [data-does=redo]");
    }

    private CircuitHistory history() {
        return desk.shelf().now().history();
    }

    /** One step back; what could not be used is put back first. */
    void back() {
        if (!desk.drafts().isEmpty()) {
            desk.drafts().drop();
            settle("What could not be used was put back.");
        } else if (history().canGoBack()) {
            Circuit before = desk.now();
            desk.shelf().now().back();
            chooseWhatDiffers(before);
            settle("Undone. " + left());
        } else {
            desk.said().say("There is nothing to undo.");
        }
    }

    /** One step forward again. */
    void forward() {
        if (history().canGoForward()) {
            Circuit before = desk.now();
            history().forward();
            desk.drafts().drop();
            chooseWhatDiffers(before);
            settle("Done again. " + left());
        } else {
            desk.said().say("There is nothing to do again.");
        }
    }

    private String left() {
        int steps = history().steps();
        return steps + (steps == 1 ? " step" : " steps") + " can be undone.";
    }

    private void settle(String words) {
        desk.showAll();
        desk.view().follow(desk.chosen());
        desk.said().say(words + " " + desk.brought());
        desk.store().keep();
    }

    private void chooseWhatDiffers(Circuit before) {
        for (int i = 0; i < desk.now().parts().size(); i++) {
            String id = desk.now().parts().get(i).id();
            if (!desk.now().parts().get(i).equals(before.part(id))) {
                desk.shelf().now().choose(id);
                return;
            }
        }
    }

    /** Buttons that would do nothing look so. */
    void show() {
        disable(undo, !history().canGoBack() && desk.drafts().isEmpty());
        disable(redo, !history().canGoForward());
    }

    private static void disable(HTMLElement button, boolean off) {
        button.setAttribute("aria-disabled", off ? "true" : "false");
    }
}
