package loomwright.browser;

import loomwright.markup.Place;
import loomwright.markup.TypedQuantity;
import loomwright.quantity.Unit;
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
        HTMLElement control = element(key);
        HTMLElement unit = element(key + "-unit");
        if (control.getTagName().equals("SELECT")) {
            return ((HTMLSelectElement) control).getValue();
        }
        String text = ((HTMLInputElement) control).getValue();
        return unit == null ? text : TypedQuantity.joined(text, ((HTMLSelectElement) unit).getValue());
    }

    /** Keeps box and unit together: a unit typed into the box wins; choosing another takes it out of the box. */
    void followUnits(String key, boolean unitChosen) {
        HTMLElement unitElement = element(key + "-unit");
        if (unitElement == null) {
            return;
        }
        HTMLSelectElement units = (HTMLSelectElement) unitElement;
        HTMLInputElement box = (HTMLInputElement) element(key);
        TypedQuantity typed = TypedQuantity.of(box.getValue());
        Unit unit = typed.unit();
        if (unit == null) {
            return;
        }
        if (unitChosen) {
            box.setValue(typed.number());
            return;
        }
        units.setValue(unit.symbol());
        if (!unit.symbol().equals(units.getValue())) {
            units.appendChild(document.createElement("option").withText(unit.symbol()));
            units.setValue(unit.symbol());
        }
    }

    private HTMLElement element(String key) {
        return document.getElementById(place.id(key));
    }
}
