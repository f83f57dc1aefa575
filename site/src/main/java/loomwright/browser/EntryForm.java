package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.markup.Place;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import org.teavm.jso.dom.events.EventTarget;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** The fields of one example: what they hold, and which unit belongs to it. */
final class EntryForm {
    private final TypedFields fields;
    private final Description description;

    EntryForm(HTMLElement form, Place place, Description description) {
        this.fields = new TypedFields(form.getOwnerDocument(), place);
        this.description = description;
    }

    /** What the fields hold, with the unit beside the box added where the box has none. */
    Map<String, String> entries() {
        Map<String, String> entries = new HashMap<>();
        for (Field field : description.fields()) {
            entries.put(field.key(), fields.text(field.key()));
        }
        return entries;
    }

    /** Puts texts into the fields they name; says whether there was any. */
    boolean fill(Map<String, String> entries) {
        boolean any = false;
        for (Field field : description.fields()) {
            String text = entries.get(field.key());
            if (text != null) {
                any = true;
                fill(field, text);
            }
        }
        return any;
    }

    private void fill(Field field, String text) {
        if (!(field instanceof ChoiceField choice)) {
            fields.box(field.key()).setValue(text);
            fields.followUnits(field.key(), false);
        } else if (choice.option(text) != null) {
            fields.select(field.key()).setValue(text);
        }
    }

    /** Keeps box and unit together after a change. */
    void followUnits(EventTarget changed) {
        for (Field field : description.fields()) {
            HTMLSelectElement units = fields.units(field.key());
            if (units != null && (units == changed || fields.box(field.key()) == changed)) {
                fields.followUnits(field.key(), units == changed);
            }
        }
    }
}
