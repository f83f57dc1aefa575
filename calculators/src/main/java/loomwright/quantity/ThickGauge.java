package loomwright.quantity;

/** Reads the gauges thicker than 1 AWG: {@code 1/0} to {@code 4/0}, and {@code 0} to {@code 0000}, which are the same four. */
final class ThickGauge {
    private static final int MOST = 4;

    private ThickGauge() {}

    /** The gauge; null if the text is not of that form; or a fault if it is, but there is no such gauge. */
    static QuantityText.Reading read(String text, Unit assumed) {
        String stripped = text.strip();
        int zeros = 0;
        while (zeros < stripped.length() && stripped.charAt(zeros) == '0') {
            zeros++;
        }
        if (zeros > 0) {
            String unit = stripped.substring(zeros);
            boolean gauge = unit.isBlank() ? assumed == Units.AWG : UnitSpelling.find(unit) == Units.AWG;
            return gauge ? of(zeros) : null;
        }
        boolean overNought = stripped.length() >= 3 && NumberReading.isDigitAt(stripped, 0) && stripped.charAt(1) == '/'
                && stripped.charAt(2) == '0' && !NumberReading.isDigitAt(stripped, 3);
        if (!overNought) {
            return null;
        }
        String unit = stripped.substring(3);
        if (unit.isBlank() && assumed != Units.AWG) {
            return QuantityText.Reading.fault("needs its unit: write " + stripped + " AWG");
        }
        if (!unit.isBlank() && UnitSpelling.find(unit) != Units.AWG) {
            return QuantityText.Reading.fault("divides by nought");
        }
        return of(stripped.charAt(0) - '0');
    }

    private static QuantityText.Reading of(int count) {
        if (count < 1 || count > MOST) {
            return QuantityText.Reading.fault("is no gauge: above 1 AWG come 1/0, 2/0, 3/0 and 4/0, also written 0, 00, 000 and 0000");
        }
        return QuantityText.Reading.of(1 - count, Units.AWG);
    }
}
