package loomwright.browser;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitRefusal;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.Examination;
import loomwright.circuit.page.ChangeWords;
import org.teavm.jso.dom.html.HTMLDocument;

/** The circuit on the desk: what it is now, which part is shown, and all that shows it. */
final class CircuitDesk {
    private final CircuitShelf shelf = new CircuitShelf();
    private final CircuitView view;
    private final PartForm form;
    private final DrillingForm drilling;
    private final CircuitNameBox name;
    private final CircuitStore store;
    private final CircuitExchange exchange;
    private final ShelfView beside;
    private final SaidBar said;
    private final CircuitSteps steps;
    private final CircuitInputs inputs;
    private final CircuitPanes panes;
    private Examination examination;
    /** What was found before the last change. */
    private Examination before;

    CircuitDesk(HTMLDocument document) {
        this.view = new CircuitView(document);
        this.form = new PartForm(document.querySelector("#circuit-form form"), document.getElementById("part-head"));
        this.panes = new CircuitPanes(document);
        this.drilling = new DrillingForm(document);
        this.name = new CircuitNameBox(document);
        this.said = new SaidBar(document.getElementById("circuit-said"));
        CircuitNotice notice = new CircuitNotice(document.getElementById("circuit-notice"));
        this.store = new CircuitStore(this, document, notice);
        this.exchange = new CircuitExchange(this, document, notice);
        this.beside = new ShelfView(this, document, notice);
        this.steps = new CircuitSteps(this, document);
        this.inputs = new CircuitInputs(this, document);
    }

    void start() {
        store.open();
        exchange.open();
        inputs.listen();
        showAll();
    }

    Circuit now() {
        return shelf.now().now();
    }

    String chosen() {
        return shelf.now().chosen();
    }

    Drafts drafts() {
        return shelf.now().drafts();
    }

    CircuitShelf shelf() {
        return shelf;
    }

    PartForm form() {
        return form;
    }

    DrillingForm drilling() {
        return drilling;
    }

    CircuitNameBox nameBox() {
        return name;
    }

    CircuitView view() {
        return view;
    }

    CircuitStore store() {
        return store;
    }

    CircuitExchange exchange() {
        return exchange;
    }

    ShelfView beside() {
        return beside;
    }

    CircuitSteps steps() {
        return steps;
    }

    CircuitPanes panes() {
        return panes;
    }

    SaidBar said() {
        return said;
    }

    Examination examination() {
        return examination;
    }

    /** A change that is a step of its own; everything is shown anew. */
    void change(Circuit circuit, String chosenThen) {
        if (!circuit.equals(now())) {
            shelf.now().history().put(circuit);
        }
        shelf.now().choose(chosenThen);
        showAll();
        store.keep();
    }

    /** Another circuit, with what was typed for it and cannot be used. */
    void change(Circuit circuit, String chosenThen, Drafts itsDrafts) {
        shelf.now().take(itsDrafts);
        change(circuit, chosenThen);
    }

    /** Another circuit, beginning at its battery. */
    void change(Circuit circuit) {
        change(circuit, circuit.supply().id(), new Drafts());
    }

    /** A change made while typing in a field; the whole entry is one step. */
    void record(Circuit circuit, String field) {
        if (!circuit.equals(now())) {
            shelf.now().history().put(circuit, field);
        }
    }

    /** A change that may be refused by the circuit. */
    void tryTo(Runnable change) {
        try {
            change.run();
        } catch (CircuitRefusal refusal) {
            said.say(refusal.getMessage() + ". Nothing was changed.");
        }
    }

    void leaveField() {
        shelf.now().history().leaveField();
    }

    void choose(String id) {
        leaveField();
        shelf.now().choose(id);
        form.show(now(), chosen(), drafts());
        show(true);
    }

    /** What the last change brought, in words; empty if that cannot be said. */
    String brought() {
        return ChangeWords.of(before, examination);
    }

    /** A key was pressed in a field: what stands on the bench is from before it. */
    void typing() {
        said.hush();
        view.typing();
    }

    /** Shows everything, the form too. */
    void showAll() {
        drafts().dropOfMissing(now());
        form.show(now(), chosen(), drafts());
        show(true);
    }

    /**
     * Shows what follows from the circuit.
     *
     * @param newFaults whether to point out what was not pointed out before
     */
    void show(boolean newFaults) {
        if (examination == null || examination.circuit() != now()) {
            before = examination;
            examination = Examination.of(now());
        }
        List<PartFault> faults = drafts().faults();
        faults.addAll(examination.faults());
        view.show(examination, faults, chosen());
        form.showFaults(faults, newFaults);
        drilling.show(now(), newFaults);
        name.show(now().name());
        beside.show(!newFaults);
        steps.show();
    }
}
