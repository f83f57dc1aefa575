package loomwright.browser;

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
    private final CircuitEntries entries;
    private final CircuitMoves moves;
    private final Pause pause = new Pause();
    /** What is done with the entry that is being typed once it is finished. */
    private Runnable finishing;

    CircuitInputs(CircuitDesk desk, HTMLDocument document) {
        this.desk = desk;
        this.document = document;
        this.entries = new CircuitEntries(desk);
        this.moves = new CircuitMoves(desk, document);
    }

    void listen() {
        document.querySelector("main").addEventListener("click", event -> clicked((HTMLElement) event.getTarget()));
        document.addEventListener("keydown", this::key);
        HTMLElement form = document.querySelector("#circuit-form form");
        listen(form, "[data-input]", this::part);
        form.addEventListener("focusout", event -> Window.setTimeout(() -> desk.form().fillUp(), 0));
        listen(desk.drilling().element(), "[data-input]", this::panel);
        HTMLInputElement name = desk.nameBox().box();
        name.addEventListener("input", event -> entries.name(name.getValue()));
        name.addEventListener("change", event -> desk.leaveField());
        HTMLElement sheets = document.getElementById("circuit-sheets");
        listen(sheets, "[data-reading]", (box, left) -> reading(box));
        sheets.addEventListener("change", event -> desk.leaveField());
        document.addEventListener(UnitChoice.EVENT, event -> desk.form().show(desk.now(), desk.chosen(), desk.drafts()));
        Window.current().addEventListener("pagehide", event -> finish());
    }

    /** An entry, and whether it is done. */
    private interface Entered {
        void enter(HTMLElement control, boolean left);
    }

    /** Half a number is no entry: it counts after a pause, or when its field is left. What is chosen from a list counts at once. */
    private void listen(HTMLElement form, String fields, Entered entered) {
        form.addEventListener("input", event -> {
            HTMLElement control = (HTMLElement) event.getTarget();
            if (control.getTagName().equals("INPUT") && Dom.closest(control, fields) != null) {
                desk.typing();
                finishing = () -> entered.enter(control, false);
                pause.begin(finishing);
            }
        });
        form.addEventListener("change", event -> left((HTMLElement) event.getTarget(), fields, entered));
        form.addEventListener("submit", event -> event.preventDefault());
        Dom.onEnter(form, () -> left(focused(), fields, entered));
    }

    private void left(HTMLElement control, String fields, Entered entered) {
        if (Dom.closest(control, fields) != null) {
            pause.end();
            entered.enter(control, true);
        }
    }

    /** Takes what is being typed as it stands. */
    private void finish() {
        pause.finish(finishing);
    }

    @JSBody(script = "return document.activeElement;")
    private static native HTMLElement focused();

    private void part(HTMLElement control, boolean left) {
        HTMLElement field = Dom.closest(control, "[data-input]");
        String key = field == null ? "" : field.getAttribute("data-input");
        if (key.equals("fed-by") || key.equals("triggered-from")) {
            if (left) {
                entries.connected(key, ((HTMLSelectElement) control).getValue());
            }
        } else if (!key.isEmpty()) {
            entries.part(key, control.getId().endsWith("-unit"), left);
        }
    }

    private void panel(HTMLElement control, boolean left) {
        HTMLElement field = Dom.closest(control, "[data-input]");
        if (field != null) {
            entries.panel(field.getAttribute("data-input"), control.getId().endsWith("-unit"), left);
        }
    }

    private void reading(HTMLElement box) {
        String id = box.getAttribute("data-reading");
        if (id != null) {
            entries.reading(id, ((HTMLInputElement) box).getValue());
        }
    }

    private void clicked(HTMLElement target) {
        finish();
        HTMLElement row = Dom.closest(target, ".plan [data-part]");
        HTMLElement button = Dom.closest(target, "button");
        if (row != null) {
            moves.goTo(row.getAttribute("data-part"), null);
        } else if (button != null && button.getAttribute("data-go") != null) {
            moves.goTo(button.getAttribute("data-go"), button.getAttribute("data-field"));
        } else if (button != null && button.getAttribute("data-smallest") != null) {
            moves.smallest(button.getAttribute("data-smallest"));
        } else if (button != null && button.getAttribute("data-does") != null) {
            moves.act(button.getAttribute("data-does"), button.getAttribute("data-at"));
        }
        if (Focus.isLost() && button != null) {
            Window.setTimeout(desk.panes()::part, 0);
        }
    }

    private void key(Event event) {
        String pressed = pressed(event);
        HTMLElement target = (HTMLElement) event.getTarget();
        if (pressed.equals("back")) {
            event.preventDefault();
            finish();
            desk.steps().back();
        } else if (pressed.equals("forward")) {
            event.preventDefault();
            desk.steps().forward();
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
