package loomwright.browser;

import loomwright.circuit.Circuit;
import loomwright.circuit.CircuitEdits;
import loomwright.circuit.CircuitRefusal;
import loomwright.circuit.Edit;
import loomwright.circuit.PartUnits;
import loomwright.markup.Words;

/** What is typed and chosen: figures of parts, names, the panel to be drilled, readings. */
final class CircuitEntries {
    private final CircuitDesk desk;

    CircuitEntries(CircuitDesk desk) {
        this.desk = desk;
    }

    /**
     * An entry into a field of the part shown.
     *
     * @param left whether the field has been left
     */
    void part(String key, boolean unitChosen, boolean left) {
        PartForm form = desk.form();
        form.fields().followUnits(key, unitChosen);
        String text = form.fields().text(key);
        Circuit kind = unitChosen ? PartUnits.withKindFor(desk.now(), desk.chosen(), key, text) : desk.now();
        boolean otherKind = kind != desk.now();
        Edit edit = Drafts.edit(kind, desk.chosen(), key, text);
        desk.drafts().typed(desk.chosen(), key, text, edit);
        if (edit.circuit() != null) {
            desk.record(edit.circuit(), desk.chosen() + "/" + key);
        }
        if (left && (form.isChoice(key) || otherKind)) {
            form.show(desk.now(), desk.chosen(), desk.drafts());
        } else {
            form.follow(desk.now());
        }
        settle(left);
        said(left, edit.circuit() == null ? edit.faults().get(0).message() : "");
    }

    /** What an entry brought; a fault when its field is left. */
    private void said(boolean left, String fault) {
        if (fault.isEmpty()) {
            desk.said().saySoon(desk::brought);
        } else if (left) {
            desk.said().saySoon(() -> "Look again: " + Words.sentence(fault));
        }
    }

    /** What feeds the part shown, or where its trigger is taken from. */
    void connected(String key, String to) {
        desk.tryTo(() -> desk.change(
                key.equals("fed-by") ? CircuitEdits.moved(desk.now(), desk.chosen(), to) : CircuitEdits.triggered(desk.now(), desk.chosen(), to),
                desk.chosen()));
        desk.form().show(desk.now(), desk.chosen(), desk.drafts());
        desk.said().saySoon(desk::brought);
    }

    /** An entry for the panel to be drilled. */
    void panel(String key, boolean unitChosen, boolean left) {
        TypedFields fields = desk.drilling().fields();
        fields.followUnits(key, unitChosen);
        try {
            Circuit circuit = desk.now().in(desk.now().panel().with(key, fields.text(key)));
            desk.record(circuit, "panel/" + key);
            desk.drilling().typed(circuit.panel());
        } catch (CircuitRefusal refusal) {
            desk.said().say(refusal.getMessage() + ".");
        }
        settle(left);
    }

    void name(String text) {
        try {
            Circuit renamed = CircuitEdits.renamed(desk.now(), text.strip());
            desk.nameBox().accept();
            desk.record(renamed, "name of the circuit");
            desk.show(false);
            desk.store().keep();
        } catch (CircuitRefusal refusal) {
            desk.nameBox().refuse(refusal.getMessage());
        }
    }

    /** What a meter reads behind a part. Any text is kept; whether it is a voltage is for the comparison to say. */
    void reading(String id, String text) {
        Edit edit = CircuitEdits.read(desk.now(), id, text);
        if (edit.circuit() == null) {
            desk.said().say(edit.faults().get(0).message() + ".");
            return;
        }
        desk.record(edit.circuit(), id + "/reading");
        desk.show(true);
        desk.store().keep();
    }

    private void settle(boolean left) {
        if (left) {
            desk.leaveField();
        }
        desk.show(left);
        desk.store().keep();
    }
}
