package loomwright.browser;

import loomwright.markup.Place;
import loomwright.markup.TypedQuantity;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** What stands in the fields of a form, each box together with the unit beside it. */
final class TypedFields {
    private final HTMLDocument document;
    private final Place place;

    TypedFields(HTMLDocument document, Place place) {
        this.document = document;
        this.place = place;
    }

    /** What the field of that key holds, with the unit beside the box added where the box has none. */
    String text(String key) {
        if (element(key).getTagName().equals("SELECT")) {
            return select(key).getValue();
        }
        HTMLSelectElement units = units(key);
        String text = box(key).getValue();
        return units == null ? text : TypedQuantity.joined(text, units.getValue());
    }

    /** Keeps box and unit together: a unit typed into the box wins; choosing another takes it out of the box. */
    void followUnits(String key, boolean unitChosen) {
        HTMLSelectElement units = units(key);
        if (units == null) {
            return;
        }
        TypedQuantity typed = TypedQuantity.of(box(key).getValue());
        if (typed.unit() == null) {
            return;
        }
        if (unitChosen) {
            box(key).setValue(typed.number());
            return;
        }
        String symbol = typed.unit().symbol();
        units.setValue(symbol);
        if (!symbol.equals(units.getValue())) {
            units.appendChild(document.createElement("option").withText(symbol));
            units.setValue(symbol);
        }
    }

    /** Shows a text in a box, its unit beside it where that can be chosen. */
    void show(String key, String text) {
        TypedQuantity typed = TypedQuantity.of(text);
        HTMLSelectElement units = units(key);
        box(key).setValue(typed.unit() == null ? text : typed.number());
        if (units != null && typed.unit() != null) {
            units.setValue(typed.unit().symbol());
        }
    }

    HTMLInputElement box(String key) {
        return (HTMLInputElement) element(key);
    }

    HTMLSelectElement select(String key) {
        return (HTMLSelectElement) element(key);
    }

    /** The choice of units beside a box, or null. */
    HTMLSelectElement units(String key) {
        return select(key + "-unit");
    }

    private HTMLElement element(String key) {
        return document.getElementById(place.id(key));
    }
}
