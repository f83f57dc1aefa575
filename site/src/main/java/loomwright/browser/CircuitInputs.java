package loomwright.browser;

import java.util.HashMap;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.PartKind;
import loomwright.circuit.check.SmallestThatPasses;
import loomwright.circuit.check.Suggestion;
import loomwright.circuit.file.StartingCircuits;
import org.teavm.jso.JSBody;
import org.teavm.jso.browser.Window;
import org.teavm.jso.dom.events.Event;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** What a reader does on the page: keys, buttons, entries. */
final class CircuitInputs {
    private final CircuitDesk desk;
    private final HTMLDocument document;

    CircuitInputs(CircuitDesk desk, HTMLDocument document) {
        this.desk = desk;
        this.document = document;
    }

    void listen() {
        HTMLElement main = document.querySelector("main");
        main.addEventListener("click", event -> clicked((HTMLElement) event.getTarget()));
        document.addEventListener("keydown", this::key);
        HTMLElement form = document.querySelector("#circuit-form form");
        form.addEventListener("input", event -> entered((HTMLElement) event.getTarget(), false));
        form.addEventListener("change", event -> entered((HTMLElement) event.getTarget(), true));
        form.addEventListener("submit", event -> event.preventDefault());
        Dom.onEnter(form, () -> entered(focused(), true));
        HTMLInputElement name = (HTMLInputElement) document.getElementById("circuit-name");
        name.addEventListener("input", event -> desk.rename(name.getValue()));
        name.addEventListener("change", event -> desk.leaveField());
        HTMLElement sheets = document.getElementById("circuit-sheets");
        sheets.addEventListener("input", event -> reading((HTMLElement) event.getTarget()));
    }

    @JSBody(script = "return document.activeElement;")
    private static native HTMLElement focused();

    private void entered(HTMLElement control, boolean left) {
        HTMLElement field = Dom.closest(control, "[data-input]");
        if (field == null) {
            return;
        }
        String key = field.getAttribute("data-input");
        if (key.equals("fed-by") || key.equals("triggered-from")) {
            if (left) {
                connected(key, ((HTMLSelectElement) control).getValue());
            }
            return;
        }
        desk.form().followUnits(key, control.getId().endsWith("-unit"));
        desk.entered(key, desk.form().text(key), left);
    }

    private void connected(String key, String to) {
        desk.tryTo(() -> desk.change(
                key.equals("fed-by") ? CircuitEdits.moved(desk.now(), desk.chosen(), to) : CircuitEdits.triggered(desk.now(), desk.chosen(), to),
                desk.chosen()));
    }

    private void reading(HTMLElement box) {
        String id = box.getAttribute("data-reading");
        if (id == null) {
            return;
        }
        String text = ((HTMLInputElement) box).getValue();
        if (text.isBlank()) {
            desk.readings().remove(id);
        } else {
            desk.readings().put(id, text);
        }
        desk.show(true, true);
        desk.store().keep();
    }

    private void clicked(HTMLElement target) {
        HTMLElement row = Dom.closest(target, ".plan [data-part]");
        HTMLElement button = Dom.closest(target, "button");
        if (row != null) {
            goTo(row.getAttribute("data-part"));
        } else if (button != null && button.getAttribute("data-go") != null) {
            goTo(button.getAttribute("data-go"));
        } else if (button != null && button.getAttribute("data-smallest") != null) {
            smallest(button.getAttribute("data-smallest"));
        } else if (button != null && button.getAttribute("data-does") != null) {
            does(button.getAttribute("data-does"));
        }
        if (Focus.isLost() && button != null) {
            Window.setTimeout(() -> Focus.go(document.getElementById("part-title")), 0);
        }
    }

    private void goTo(String id) {
        desk.choose(id);
        Focus.go(document.getElementById("part-title"));
    }

    private void smallest(String id) {
        if (desk.form().hasDrafts()) {
            desk.say("First correct what needs another look: the checks need every entry.");
            return;
        }
        Suggestion suggestion = SmallestThatPasses.of(desk.now(), id);
        if (suggestion.circuit() != null) {
            desk.change(suggestion.circuit(), id);
        }
        desk.say(suggestion.words());
    }

    private void does(String what) {
        switch (what) {
            case "undo" -> desk.step(true);
            case "redo" -> desk.step(false);
            case "print" -> Dom.print();
            case "hush" -> desk.hush();
            case "trailer" -> begin(StartingCircuits.reedmereTrailer());
            case "punt" -> begin(StartingCircuits.punt());
            case "empty" -> begin(StartingCircuits.empty());
            case "download" -> desk.store().download();
            case "link" -> desk.store().makeLink();
            default -> desk.tryTo(() -> edit(what));
        }
    }

    private void begin(Circuit circuit) {
        desk.change(circuit, circuit.supply().id(), new HashMap<>());
        desk.say("A new circuit stands here. Undo brings back the one before.");
    }

    private void edit(String what) {
        Circuit before = desk.now();
        String id = desk.chosen();
        switch (what) {
            case "add" -> addedPart(before, CircuitEdits.added(before, kind(), id));
            case "insert" -> addedPart(before, CircuitEdits.insertedBefore(before, kind(), id));
            case "remove" -> gone(before, CircuitEdits.without(before, id), id);
            case "prune" -> gone(before, CircuitEdits.withoutBranch(before, id), id);
            default -> { }
        }
    }

    private PartKind kind() {
        return PartKind.of(((HTMLSelectElement) document.getElementById("part-kind")).getValue());
    }

    private void addedPart(Circuit before, Circuit after) {
        for (int i = 0; i < after.parts().size(); i++) {
            String id = after.parts().get(i).id();
            if (before.part(id) == null) {
                desk.change(after, id);
                desk.say(after.part(id).kind().label() + " was added. Put in its figures.");
                Focus.go(document.getElementById("part-title"));
                return;
            }
        }
    }

    private void gone(Circuit before, Circuit after, String id) {
        desk.change(after, before.part(id).fedBy());
        int parts = before.parts().size() - after.parts().size();
        desk.say((parts == 1 ? "One part was" : parts + " parts were") + " taken out. Undo brings back what is gone.");
        Focus.go(document.getElementById("part-title"));
    }

    private void key(Event event) {
        String pressed = pressed(event);
        HTMLElement target = (HTMLElement) event.getTarget();
        boolean reading = target.getAttribute("data-reading") != null;
        if (!reading && (pressed.equals("back") || pressed.equals("forward"))) {
            event.preventDefault();
            desk.step(pressed.equals("back"));
        } else if (Dom.closest(target, ".plan .pick") != null && !pressed.isEmpty()) {
            walk(event, pressed);
        }
    }

    /** Undo, redo, or a key that walks through the drawing; else empty. */
    @JSBody(
            params = "event",
            script = "var key = event.key.toLowerCase();"
                    + " if (event.ctrlKey || event.metaKey) { return event.altKey ? '' : key === 'y' || key === 'z' && event.shiftKey ? 'forward' : key === 'z' ? 'back' : ''; }"
                    + " return ['arrowup', 'arrowdown', 'home', 'end'].indexOf(key) < 0 || event.altKey || event.shiftKey ? '' : key;")
    private static native String pressed(Event event);

    private void walk(Event event, String pressed) {
        HTMLElement row = nextRow(event, pressed);
        if (row != null && !pressed.equals("back") && !pressed.equals("forward")) {
            event.preventDefault();
            String id = row.getAttribute("data-part");
            desk.choose(id);
            Focus.go(desk.view().row(id));
        }
    }

    @JSBody(
            params = {"event", "pressed"},
            script = "var row = event.target.closest('[data-part]');"
                    + " return pressed === 'arrowup' ? row.previousElementSibling : pressed === 'arrowdown' ? row.nextElementSibling"
                    + " : pressed === 'home' ? row.parentElement.firstElementChild : row.parentElement.lastElementChild;")
    private static native HTMLElement nextRow(Event event, String pressed);
}
