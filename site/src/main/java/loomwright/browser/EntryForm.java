package loomwright.browser;

import java.util.HashMap;
import java.util.Map;
import loomwright.markup.Assumed;
import loomwright.markup.Place;
import loomwright.markup.TypedQuantity;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.units.Converted;
import loomwright.units.UnitSystem;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;
import org.teavm.jso.dom.html.HTMLElement;

/** The fields of one example: what they hold, and which unit belongs to it. */
final class EntryForm {
    private final TypedFields fields;
    private final Calculator calculator;
    private final Description description;
    private final AssumedEntries assumed;

    /** @param said what the story gave, or an example lent */
    EntryForm(HTMLElement form, Place place, Calculator calculator, Assumed assumed, Map<String, String> said) {
        this.calculator = calculator;
        this.description = calculator.description();
        this.assumed = new AssumedEntries(form.getOwnerDocument(), place, description, assumed, said);
        this.fields = new TypedFields(form.getOwnerDocument(), place);
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

    /**
     * Shows what the fields hold in the units of a reader, where they offer them; an entry stays whose it was.
     *
     * @param sizes whether sizes of conductor are shown in the other series too: not where a story names the cable
     */
    void inUnits(UnitSystem system, boolean sizes) {
        for (Field field : description.fields()) {
            Quantity held = field instanceof QuantityField ? QuantityText.read(fields.text(field.key()), null).quantity() : null;
            if (held == null || fields.units(field.key()) == null || !sizes && held.dimension().equals(Dimension.AREA)) {
                continue;
            }
            Unit wanted = system.inPlaceOf(held.unit(), ((QuantityField) field).units());
            String text = wanted == held.unit() ? null : Converted.taken(calculator, entries(), field.key(), held, wanted);
            if (text != null) {
                fields.showIn(field.key(), wanted, text);
                if (kindFor(field)) {
                    assumed.typed(field, fields.text(field.key()));
                }
            }
        }
    }

    /** A kind of conductor whose table lists the size: with it a gauge is looked up among gauges. Says whether it is another now. */
    private boolean kindFor(Field size) {
        if (!size.key().equals("size") || !(description.field("conductor") instanceof ChoiceField choice)) {
            return false;
        }
        String chosen = fields.text(choice.key());
        Unit unit = TypedQuantity.of(fields.text(size.key())).unit();
        String kind = unit == null ? chosen : Converted.kind(choice, chosen, unit);
        if (!kind.equals(chosen)) {
            fields.select(choice.key()).setValue(kind);
            assumed.typed(choice, kind);
        }
        return !kind.equals(chosen);
    }

    /** Keeps box and unit together after a change; the entry is the reader's from now on. */
    void changed(HTMLElement changed) {
        HTMLElement holder = Dom.closest(changed, "[data-input]");
        for (Field field : description.fields()) {
            if (holder != null && field.key().equals(holder.getAttribute("data-input"))) {
                String before = fields.followUnits(field.key(), changed.getId().endsWith("-unit"));
                if (before != null) {
                    kindFor(field);
                }
                assumed.typed(field, fields.text(field.key()));
                if (before != null) {
                    assumed.note(field, "was " + before);
                }
            }
        }
    }
}
