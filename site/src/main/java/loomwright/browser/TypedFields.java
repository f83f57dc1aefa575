package loomwright.browser;

import loomwright.markup.Place;
import loomwright.markup.TypedQuantity;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.units.Converted;
import org.teavm.jso.dom.html.HTMLDocument;
import org.teavm.jso.dom.html.HTMLElement;
import org.teavm.jso.dom.html.HTMLInputElement;
import org.teavm.jso.dom.html.HTMLSelectElement;

/** What stands in the fields of a form, each box together with the unit beside it. */
final class TypedFields {
    /** The unit that was chosen before another was. */
    private static final String BEFORE = "data-before";
    private static final String TYPED = "data-typed";
    private static final String CONVERTED = "data-converted";

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
        if (units == null) {
            return text;
        }
        units.setAttribute(BEFORE, units.getValue());
        return TypedQuantity.joined(text, units.getValue());
    }

    /**
     * Keeps box and unit together: a unit typed into the box wins; choosing another converts what the box holds.
     *
     * @return what stood there before it was converted, or null
     */
    String followUnits(String key, boolean unitChosen) {
        HTMLSelectElement units = units(key);
        if (units == null) {
            return null;
        }
        if (unitChosen) {
            return convert(key, units, null);
        }
        TypedQuantity typed = TypedQuantity.of(box(key).getValue());
        if (typed.unit() == null) {
            return null;
        }
        String symbol = typed.unit().symbol();
        units.setValue(symbol);
        if (!symbol.equals(units.getValue())) {
            units.appendChild(document.createElement("option").withText(symbol));
            units.setValue(symbol);
        }
        return null;
    }

    /**
     * What a box held is written in the unit chosen now. A figure that was converted once goes back to what was typed.
     *
     * @param settled what becomes of it; null for the same figure, or the first sold size
     */
    private String convert(String key, HTMLSelectElement units, String settled) {
        HTMLInputElement box = box(key);
        String before = TypedQuantity.joined(box.getValue(), units.getAttribute(BEFORE));
        boolean untouched = box.getValue().equals(box.getAttribute(CONVERTED));
        String typed = untouched ? box.getAttribute(TYPED) : before;
        Quantity from = QuantityText.read(typed, null).quantity();
        Unit to = TypedQuantity.of("1 " + units.getValue()).unit();
        if (from == null || to == null) {
            return null;
        }
        String text = from.unit() == to ? typed : settled != null ? settled : Converted.text(from, to);
        box.setValue(text == null ? "" : TypedQuantity.of(text).number());
        box.setAttribute(TYPED, typed);
        box.setAttribute(CONVERTED, box.getValue());
        units.setAttribute(BEFORE, units.getValue());
        return before;
    }

    /** Shows what a field holds in a unit that it offers, as that text. */
    void showIn(String key, Unit unit, String text) {
        units(key).setValue(unit.symbol());
        convert(key, units(key), text);
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
