package loomwright.quantity;

/** Reads a quantity that a person typed. */
public final class QuantityText {
    private static final int LONGEST = 60;
    private static final String SAE = "is an SAE gauge, which has less copper than AWG of the same number: enter the cable's true area, such as 2.96 mm² for 12"
            + " SAE, or the number as AWG where SAE can be chosen beside it";

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
     * Reads a number and its unit, such as {@code 2.5 mm2}, {@code 14 AWG}, {@code 12,8 V}, {@code 1 1/2 in}, {@code 2/0 AWG} or {@code 00 AWG}.
     *
     * <p>{@link NumberReading} says what is done with a number that could mean thousands.
     *
     * @param text what was typed
     * @param assumed the unit if only a number was typed; null if the unit must be written
     */
    public static Reading read(String text, Unit assumed) {
        return read(text, assumed, false);
    }

    /** The same for what was printed, as in a table or a book: a mark is a decimal mark, whatever follows it. */
    public static Reading readPrinted(String text, Unit assumed) {
        return read(text, assumed, true);
    }

    private static Reading read(String text, Unit assumed, boolean printed) {
        if (text.length() > LONGEST) {
            return Reading.fault("is longer than " + LONGEST + " characters");
        }
        String plain = Plain.of(text);
        Reading thickGauge = ThickGauge.read(plain, assumed);
        if (thickGauge != null) {
            return thickGauge;
        }
        if (UnitSpelling.isSaeFirst(plain)) {
            return Reading.fault(SAE);
        }
        NumberReading number = printed ? NumberReading.printed(plain) : NumberReading.of(plain);
        if (number.fault() != null) {
            return Reading.fault(number.fault());
        }
        Fraction fraction = Fraction.after(number, plain);
        return withUnit(
                fraction == null ? number.value() : fraction.value(), plain.substring(fraction == null ? number.end() : fraction.end()),
                assumed);
    }

    private static Reading withUnit(double value, String written, Unit assumed) {
        Unit unit = written.isBlank() ? assumed : UnitSpelling.find(written);
        if (unit != null) {
            return Reading.of(value, unit);
        }
        if (written.isBlank()) {
            return Reading.fault("needs a unit after the number");
        }
        if (UnitSpelling.isSae(written)) {
            return Reading.fault(SAE);
        }
        return Reading.fault("has a unit we do not know: \u201c" + written.strip() + "\u201d");
    }
}
