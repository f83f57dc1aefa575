package loomwright.generator.drawing;

import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.worked.ChoiceField;

/** The values a lesson gives to a drawing. */
final class Given {
    private final String name;
    private final Map<String, String> values;

    /**
     * Checks that the values are those the drawing takes.
     *
     * @throws IllegalArgumentException if one is missing or unknown
     */
    Given(Drawing drawing, Map<String, String> values) {
        this.name = drawing.name();
        this.values = values;
        for (String key : values.keySet()) {
            if (!drawing.takes().contains(key)) {
                throw new IllegalArgumentException(
                        "The drawing " + name + " has no value called \u201c" + key + "\u201d; " + listed(drawing.takes()) + ".");
            }
        }
        for (String key : drawing.takes()) {
            if (!values.containsKey(key) || values.get(key).isBlank()) {
                throw new IllegalArgumentException("The drawing " + name + " needs a value called \u201c" + key + "\u201d.");
            }
        }
    }

    /** The value as it was written. */
    String text(String key) {
        return values.get(key).strip();
    }

    /** The value as a label: its parts stay on one line. */
    String label(String key) {
        return text(key).replace(' ', '\u00a0');
    }

    /** The value as a quantity of the same kind as {@code unit}, in {@code unit}. */
    Quantity quantity(String key, Unit unit) {
        QuantityText.Reading reading = QuantityText.read(text(key), null);
        if (reading.quantity() == null) {
            throw fault(key, reading.fault());
        }
        if (!reading.quantity().dimension().equals(unit.dimension())) {
            throw fault(key, "is not in " + unit.symbol() + " or another unit of that kind");
        }
        return reading.quantity().in(unit);
    }

    /** The number of a quantity above zero, in {@code unit}. */
    double number(String key, Unit unit) {
        double number = quantity(key, unit).value();
        if (!(number > 0)) {
            throw fault(key, "must be above zero");
        }
        return number;
    }

    /** A number above zero that has no unit, such as an exponent. */
    double bareNumber(String key) {
        QuantityText.Reading reading = QuantityText.read(text(key), Units.ONE);
        if (reading.quantity() == null) {
            throw fault(key, reading.fault());
        }
        if (!reading.quantity().dimension().equals(Units.ONE.dimension()) || !(reading.quantity().value() > 0)) {
            throw fault(key, "must be a bare number above zero");
        }
        return reading.quantity().value();
    }

    /** The value as the key of one of the options of a calculator. */
    String option(String key, String calculator) {
        ChoiceField field = (ChoiceField) Catalogue.find(calculator).description().field(key);
        if (field.option(text(key)) == null) {
            throw fault(key, "is not one of the options of the calculator " + calculator);
        }
        return text(key);
    }

    /** Checks that each of the values is above the one before it. */
    void rising(Unit unit, String... keys) {
        for (int i = 1; i < keys.length; i++) {
            if (!(quantity(keys[i], unit).value() > quantity(keys[i - 1], unit).value())) {
                throw fault(keys[i], "must be above " + keys[i - 1] + ", " + text(keys[i - 1]));
            }
        }
    }

    /** A fault of one value, to be thrown. */
    IllegalArgumentException fault(String key, String what) {
        return new IllegalArgumentException("In the drawing " + name + ", " + key + " \u201c" + text(key) + "\u201d " + what + ".");
    }

    private static String listed(List<String> keys) {
        if (keys.isEmpty()) {
            return "it takes no values";
        }
        StringBuilder text = new StringBuilder("it takes ");
        for (int i = 0; i < keys.size(); i++) {
            text.append(i == 0 ? "" : i == keys.size() - 1 ? " and " : ", ").append(keys.get(i));
        }
        return text.toString();
    }
}
