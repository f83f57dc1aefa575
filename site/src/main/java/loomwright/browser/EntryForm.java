package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.markup.Assumed;
import loomwright.markup.Place;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import org.teavm.jso.dom.html.HTMLElement;

/** The fields of one example: what they hold, and which unit belongs to it. */
final class EntryForm {
    private final TypedFields fields;
    private final Description description;
    private final AssumedEntries assumed;

    /** @param said what the story gave, or an example lent */
    EntryForm(HTMLElement form, Place place, Description description, Assumed assumed, Map<String, String> said) {
        this.assumed = new AssumedEntries(form.getOwnerDocument(), place, description, assumed, said);
        this.fields = new TypedFields(form.getOwnerDocument(), place);
        this.description = description;
    }

    /** What the fields hold, with the unit beside the box added where the box has none; nothing where only what is usual stands. */
    Map<String, String> entries() {
        Map<String, String> entries = new HashMap<>();
        for (Field field : description.fields()) {
            entries.put(field.key(), assumed.read(field, fields.text(field.key())));
        }
        return entries;
    }

    /** The reader's own of these entries. */
    Map<String, String> own(Map<String, String> entries) {
        return assumed.own(entries);
    }

    /** Empties every field that neither story nor reader filled; a choice becomes the one taken unasked. */
    void emptyAssumed() {
        for (Field field : description.fields()) {
            if (assumed.isAssumed(field)) {
                if (field instanceof ChoiceField) {
                    fields.select(field.key()).setValue(field.usual());
                } else {
                    fields.box(field.key()).setValue("");
                }
                assumed.emptied(field, fields.text(field.key()));
            }
        }
    }

    /** The fields hold again what was printed. */
    void asPrinted() {
        Map<String, String> texts = new HashMap<>();
        for (Field field : description.fields()) {
            texts.put(field.key(), fields.text(field.key()));
        }
        assumed.asPrinted(texts);
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
        assumed.typed(field, fields.text(field.key()));
    }

    /** Keeps box and unit together after a change; the entry is the reader's from now on. */
    void changed(HTMLElement changed) {
        HTMLElement holder = Dom.closest(changed, "[data-input]");
        for (Field field : description.fields()) {
            if (holder != null && field.key().equals(holder.getAttribute("data-input"))) {
                fields.followUnits(field.key(), changed.getId().endsWith("-unit"));
                assumed.typed(field, fields.text(field.key()));
            }
        }
    }
}
