package loomwright.browser;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.CircuitRefusal;
import loomwright.circuit.Edit;
import loomwright.circuit.check.Examination;
import loomwright.circuit.file.StartingCircuits;
import loomwright.circuit.page.CircuitMarkup;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;

/** The circuit on the desk: what it is now, which part is shown, and every way to change it. */
final class CircuitDesk {
    private final HTMLDocument document;
    private CircuitHistory history = new CircuitHistory(StartingCircuits.reedmereTrailer());
    private final CircuitView view;
    private final PartForm form;
    private final CircuitStore store;
    private final HTMLInputElement name;
    private final HTMLElement said;
    private final StatusLine spoken;
    private Map<String, String> readings = new HashMap<>();
    private Examination examination;
    private String chosen = "battery";

    CircuitDesk(HTMLDocument document) {
        this.document = document;
        this.view = new CircuitView(document);
        this.form = new PartForm(document.querySelector("#circuit-form form"));
        this.store = new CircuitStore(this, document);
        this.name = (HTMLInputElement) document.getElementById("circuit-name");
        this.said = document.getElementById("circuit-said");
        this.spoken = new StatusLine(said.querySelector("p"));
    }

    void start() {
        said.setHidden(true);
        store.open();
        new CircuitInputs(this, document).listen();
        showAll();
    }

    Circuit now() {
        return history.now();
    }

    String chosen() {
        return chosen;
    }

    Map<String, String> readings() {
        return readings;
    }

    PartForm form() {
        return form;
    }

    CircuitView view() {
        return view;
    }

    CircuitStore store() {
        return store;
    }

    /** A change that is a step of its own; everything is shown anew. */
    void change(Circuit circuit, String chosenThen) {
        if (!circuit.equals(history.now())) {
            history.put(circuit);
        }
        if (circuit.part(chosenThen) != null) {
            chosen = chosenThen;
        }
        showAll();
        store.keep();
    }

    /** The circuit kept from last time: there is no way back before it. */
    void begin(Circuit circuit, Map<String, String> itsReadings) {
        readings = itsReadings;
        history = new CircuitHistory(circuit);
        chosen = circuit.supply().id();
    }

    /** Another circuit, with the readings that belong to it. */
    void change(Circuit circuit, String chosenThen, Map<String, String> itsReadings) {
        readings = itsReadings;
        form.dropDrafts();
        change(circuit, chosenThen);
    }

    /** A change that may be refused by the circuit. */
    void tryTo(CircuitChange change) {
        try {
            change.run();
        } catch (CircuitRefusal refusal) {
            say(refusal.getMessage() + ". Nothing was changed.");
        }
    }

    /** Something that may be refused. */
    interface CircuitChange {
        void run();
    }

    /** An entry into a field of the part shown. */
    void entered(String key, String text, boolean left) {
        Edit edit = key.equals("name")
                ? CircuitEdits.named(now(), chosen, text.strip())
                : CircuitEdits.changed(now(), chosen, key, text);
        if (edit.circuit() == null) {
            form.refuse(key, text, edit.faults());
        } else {
            form.accept(key);
            if (!edit.circuit().equals(now())) {
                history.put(edit.circuit(), chosen + "/" + key);
                hush();
            }
        }
        if (left) {
            history.leaveField();
        }
        boolean anew = left && (form.isChoice(key) || form.isFilledAnew(key));
        if (anew) {
            form.show(now(), chosen);
        } else {
            form.follow(now());
        }
        show(!left, left);
        store.keep();
    }

    void rename(String text) {
        HTMLElement fault = document.getElementById("circuit-name-fault");
        try {
            Circuit renamed = CircuitEdits.renamed(now(), text.strip());
            fault.setHidden(true);
            name.removeAttribute("aria-invalid");
            if (!renamed.equals(now())) {
                history.put(renamed, "name of the circuit");
                show(true, false);
                store.keep();
            }
        } catch (CircuitRefusal refusal) {
            fault.setTextContent("Look again: " + refusal.getMessage() + ".");
            fault.setHidden(false);
            name.setAttribute("aria-invalid", "true");
        }
    }

    void leaveField() {
        history.leaveField();
    }

    void choose(String id) {
        if (now().part(id) != null) {
            history.leaveField();
            chosen = id;
            form.show(now(), chosen);
            show(false, true);
        }
    }

    /** One step back or forward; what could not be used is put back first. */
    void step(boolean back) {
        if (back && form.hasDrafts()) {
            form.dropDrafts();
            say("What could not be used was put back.");
        } else if (back ? history.canGoBack() : history.canGoForward()) {
            Circuit before = now();
            if (back) {
                history.back();
            } else {
                history.forward();
            }
            form.dropDrafts();
            chooseWhatDiffers(before);
            say((back ? "Undone. " : "Done again. ") + history.steps() + (history.steps() == 1 ? " step" : " steps") + " can be undone.");
        } else {
            say(back ? "There is nothing to undo." : "There is nothing to do again.");
            return;
        }
        showAll();
        store.keep();
    }

    private void chooseWhatDiffers(Circuit before) {
        for (int i = 0; i < now().parts().size(); i++) {
            if (!now().parts().get(i).equals(before.part(now().parts().get(i).id()))) {
                chosen = now().parts().get(i).id();
                return;
            }
        }
    }

    /** Shows everything, the form too. */
    private void showAll() {
        form.dropDraftsOfMissing(now());
        if (now().part(chosen) == null) {
            chosen = now().supply().id();
        }
        form.show(now(), chosen);
        show(false, true);
    }

    void show(boolean soon, boolean newFaults) {
        if (examination == null || examination.circuit() != now()) {
            examination = Examination.of(now());
        }
        view.show(now(), examination, form.refused(), readings, chosen, soon);
        form.showFaults(examination.faults(), newFaults);
        if (!document.getElementById("circuit-name-fault").isHidden() || !name.getValue().strip().equals(now().name())) {
            name.setValue(now().name());
        }
        disable("undo", !history.canGoBack() && !form.hasDrafts());
        disable("redo", !history.canGoForward());
    }

    private void disable(String does, boolean off) {
        document.querySelector("#circuit-tools [data-does=" + does + "]").setAttribute("aria-disabled", off ? "true" : "false");
    }

    /** Says what was done, in sight and aloud. */
    void say(String words) {
        said.setHidden(false);
        spoken.say(words);
        said.querySelector("p").setTextContent(words);
    }

    void hush() {
        said.setHidden(true);
    }

    /** What was found, for a reader who cannot see it. */
    String found() {
        return CircuitMarkup.spoken(examination);
    }
}
