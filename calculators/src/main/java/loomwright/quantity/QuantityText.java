package loomwright.quantity;

/** Reads a quantity that a person typed. */
public final class QuantityText {
    private static final int LONGEST = 60;

    private QuantityText() {}

    /**
     * What came of reading a text.
     *
     * @param quantity the quantity, or null if there is a fault
     * @param fault what is wrong, to follow a name ("... has no number"), or null
     */
    public record Reading(Quantity quantity, String fault) {
        static Reading of(double value, Unit unit) {
            return new Reading(new Quantity(value, unit), null);
        }

        static Reading fault(String fault) {
            return new Reading(null, fault);
        }
    }

    /**
     * Reads a number and its unit, such as {@code 2.5 mm2}, {@code 14 AWG}, {@code 12,8 V} or {@code 2/0 AWG}.
     *
     * @param text what was typed
     * @param assumed the unit if only a number was typed; null if the unit must be written
     */
    public static Reading read(String text, Unit assumed) {
        if (text.length() > LONGEST) {
            return Reading.fault("is longer than " + LONGEST + " characters");
        }
        Reading aught = readAught(text, assumed);
        if (aught != null) {
            return aught;
        }
        NumberText.Reading number = NumberText.read(text);
        if (number.fault() != null) {
            return Reading.fault(number.fault());
        }
        String rest = text.substring(number.end());
        Unit unit = rest.isBlank() ? assumed : UnitSpelling.find(rest);
        if (unit == null) {
            return Reading.fault(
                    rest.isBlank() ? "needs a unit after the number" : "has a unit we do not know: \u201c" + rest.strip() + "\u201d");
        }
        return Reading.of(number.value(), unit);
    }

    /** Reads gauges 1/0 to 4/0, or answers null if the text is not of that form. */
    private static Reading readAught(String text, Unit assumed) {
        String squeezed = text.strip();
        if (squeezed.length() < 3 || squeezed.charAt(1) != '/' || squeezed.charAt(2) != '0') {
            return null;
        }
        int count = squeezed.charAt(0) - '0';
        String rest = squeezed.substring(3);
        Unit unit = rest.isBlank() ? assumed : UnitSpelling.find(rest);
        if (count < 1 || count > 4 || unit != Units.AWG) {
            return null;
        }
        return Reading.of(1 - count, Units.AWG);
    }
}
