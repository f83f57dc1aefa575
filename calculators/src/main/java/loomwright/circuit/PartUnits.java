package loomwright.circuit;

import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.units.Converted;
import loomwright.units.UnitSystem;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** The figures of parts in the units of a reader, stored as the reader would have typed them. */
public final class PartUnits {
    private PartUnits() {}

    /** A circuit with new parts, whose usual figures are brought to those units: a size to a gauge that is sold, its cable to the kind that lists it. */
    public static Circuit ofNew(UnitSystem system, Circuit before, Circuit after) {
        Circuit circuit = after;
        for (Part part : after.parts()) {
            if (before.part(part.id()) == null) {
                circuit = CircuitEdits.replaced(circuit, in(system, part));
            }
        }
        return circuit;
    }

    private static Part in(UnitSystem system, Part part) {
        Part changed = part;
        for (Field field : part.kind().fields()) {
            Quantity held = field instanceof QuantityField ? QuantityText.read(part.text(field.key()), null).quantity() : null;
            Unit wanted = held == null ? null : system.inPlaceOf(held.unit(), ((QuantityField) field).units());
            String text = wanted == null || wanted == held.unit() ? null : Converted.text(held, wanted);
            if (text != null) {
                changed = withKindFor(changed, field.key(), text).with(field.key(), text.replace('\u00a0', ' ')).partOrRefuse();
            }
        }
        return changed;
    }

    /** The circuit with the kind of cable that lists a size that is about to be put in; the same if the field holds no size, or the kind lists it. */
    public static Circuit withKindFor(Circuit circuit, String id, String fieldKey, String text) {
        Part part = circuit.part(id);
        Part other = part.kind().indexOf(fieldKey) < 0 ? part : withKindFor(part, fieldKey, text);
        return other == part ? circuit : CircuitEdits.replaced(circuit, other);
    }

    private static Part withKindFor(Part part, String fieldKey, String text) {
        Quantity size = QuantityText.read(text, null).quantity();
        if (size == null || !size.dimension().equals(Dimension.AREA) || !fieldKey.endsWith("size")) {
            return part;
        }
        String key = fieldKey.substring(0, fieldKey.length() - "size".length()) + "conductor";
        int at = part.kind().indexOf(key);
        if (at < 0 || !(part.kind().fields().get(at) instanceof ChoiceField kinds)) {
            return part;
        }
        String kind = Converted.kind(kinds, part.text(key), size.unit() == Units.AWG ? Units.AWG : Units.SQUARE_MILLIMETRE);
        return kind.equals(part.text(key)) ? part : part.with(key, kind).partOrRefuse();
    }
}
