package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.markup.Place;
import loomwright.markup.TypedQuantity;
import loomwright.quantity.Unit;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import org.teavm.jso.dom.events.EventTarget;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** The fields of one example: what they hold, and which unit belongs to it. */
final class EntryForm {
    private final HTMLElement form;
    private final Place place;
    private final Description description;

    EntryForm(HTMLElement form, Place place, Description description) {
        this.form = form;
        this.place = place;
        this.description = description;
    }

    /** What the fields hold, with the unit beside the box added where the box has none. */
    Map<String, String> entries() {
        Map<String, String> entries = new HashMap<>();
        for (Field field : description.fields()) {
            if (field instanceof ChoiceField) {
                entries.put(field.key(), select(field).getValue());
            } else {
                HTMLSelectElement units = units(field);
                String text = box(field).getValue();
                entries.put(field.key(), units == null ? text : TypedQuantity.joined(text, units.getValue()));
            }
        }
        return entries;
    }

    /** Puts texts into the fields they name; says whether there was any. */
    boolean fill(Map<String, String> entries) {
        boolean any = false;
        for (Field field : description.fields()) {
            String text = entries.get(field.key());
            if (text != null && field instanceof ChoiceField choice) {
                any = true;
                if (choice.option(text) != null) {
                    select(field).setValue(text);
                }
            } else if (text != null) {
                any = true;
                box(field).setValue(text);
                unitFollowsBox(field);
            }
        }
        return any;
    }

    /** Keeps box and unit together after a change: a unit typed into the box wins; choosing another takes it out of the box. */
    void followUnits(EventTarget changed) {
        for (Field field : description.fields()) {
            HTMLSelectElement units = units(field);
            if (units != null && units == changed) {
                HTMLInputElement box = box(field);
                TypedQuantity typed = TypedQuantity.of(box.getValue());
                if (typed.unit() != null) {
                    box.setValue(typed.number());
                }
            } else if (units != null && box(field) == changed) {
                unitFollowsBox(field);
            }
        }
    }

    private void unitFollowsBox(Field field) {
        Unit typed = TypedQuantity.of(box(field).getValue()).unit();
        HTMLSelectElement units = units(field);
        if (typed == null || units == null) {
            return;
        }
        units.setValue(typed.symbol());
        if (!typed.symbol().equals(units.getValue())) {
            units.appendChild(form.getOwnerDocument().createElement("option").withText(typed.symbol()));
            units.setValue(typed.symbol());
        }
    }

    private HTMLInputElement box(Field field) {
        return (HTMLInputElement) element(field.key());
    }

    private HTMLSelectElement select(Field field) {
        return (HTMLSelectElement) element(field.key());
    }

    private HTMLSelectElement units(Field field) {
        return (HTMLSelectElement) element(field.key() + "-unit");
    }

    private HTMLElement element(String part) {
        return form.getOwnerDocument().getElementById(place.key() + "-" + part);
    }
}
