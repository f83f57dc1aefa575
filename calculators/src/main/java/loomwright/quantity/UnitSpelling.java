package loomwright.quantity;

import java.util.Locale;

/** The ways people write a unit, brought to the one we print. */
final class UnitSpelling {
    /** Pairs: what may be typed, what it means. Compared after spaces are removed. */
    private static final String[] OTHER_SPELLINGS = {
        "volt", "V", "volts", "V", "v", "V",
        "amp", "A", "amps", "A", "ampere", "A", "amperes", "A", "a", "A", "ma", "mA", "MA", "mA", "milliamps", "mA",
        "ohm", "Ω", "ohms", "Ω", "\u2126", "Ω", "mohm", "mΩ", "m\u2126", "mΩ", "milliohm", "mΩ", "milliohms", "mΩ", "kohm", "kΩ", "k\u2126", "kΩ",
        "w", "W", "watt", "W", "watts", "W", "kw", "kW",
        "metre", "m", "metres", "m", "meter", "m", "meters", "m", "M", "m",
        "foot", "ft", "feet", "ft", "'", "ft", "\u2032", "ft", "inch", "in", "inches", "in", "\"", "in", "\u2033", "in",
        "mm2", "mm²", "mm^2", "mm²", "sqmm", "mm²", "qmm", "mm²",
        "cmil", "circular mil", "circularmil", "circular mil", "circularmils", "circular mil",
        "awg", "AWG", "ga", "AWG", "gauge", "AWG",
        "ohm/m", "Ω/m", "\u2126/m", "Ω/m", "mohm/m", "mΩ/m", "m\u2126/m", "mΩ/m", "ohm/km", "Ω/km", "\u2126/km", "Ω/km",
        "ohm/ft", "Ω/ft", "\u2126/ft", "Ω/ft", "ohm/1000ft", "Ω/1000 ft", "Ω/1000ft", "Ω/1000 ft", "ohm/kft", "Ω/1000 ft",
        "C", "°C", "degC", "°C", "c", "°C", "F", "°F", "degF", "°F", "k", "K",
        "hour", "h", "hours", "h", "hr", "h", "hrs", "h", "minute", "min", "minutes", "min", "sec", "s", "seconds", "s",
        "day", "d", "days", "d",
        "ah", "Ah", "AH", "Ah", "wh", "Wh", "WH", "Wh", "kwh", "kWh",
        "lb", "lbf", "lbs", "lbf", "n", "N", "percent", "%", "pc", "%"
    };

    private static final Unit[] UNITS = Units.all().toArray(new Unit[0]);
    private static final String[] SQUEEZED = squeezedSymbols();

    private UnitSpelling() {}

    private static String[] squeezedSymbols() {
        String[] symbols = new String[UNITS.length];
        for (int i = 0; i < UNITS.length; i++) {
            symbols[i] = squeeze(UNITS[i].symbol());
        }
        return symbols;
    }

    /** The unit meant by {@code text}, or null if we know none by that name. */
    static Unit find(String text) {
        String squeezed = squeeze(text);
        Unit direct = bySymbol(squeezed);
        if (direct != null) {
            return direct;
        }
        for (int i = 0; i < OTHER_SPELLINGS.length; i += 2) {
            if (OTHER_SPELLINGS[i].equals(squeezed)) {
                return bySymbol(squeeze(OTHER_SPELLINGS[i + 1]));
            }
        }
        return null;
    }

    /** Whether the text names SAE gauge, whose numbers are those of AWG and whose copper is less. */
    static boolean isSae(String text) {
        String squeezed = squeeze(text).toLowerCase(Locale.ROOT);
        return squeezed.equals("sae") || squeezed.equals("saegauge") || squeezed.equals("gaugesae") || squeezed.equals("saeawg");
    }

    /** Whether the text names SAE gauge before its number, such as {@code SAE 12}. */
    static boolean isSaeFirst(String text) {
        if (text.indexOf('s') < 0 && text.indexOf('S') < 0) {
            return false;
        }
        String squeezed = squeeze(text).toLowerCase(Locale.ROOT);
        return squeezed.startsWith("sae") && squeezed.length() > 3 && NumberReading.isDigitAt(squeezed, 3);
    }

    private static Unit bySymbol(String squeezed) {
        for (int i = 0; i < UNITS.length; i++) {
            if (SQUEEZED[i].equals(squeezed)) {
                return UNITS[i];
            }
        }
        return null;
    }

    private static String squeeze(String text) {
        if (!hasSpace(text)) {
            return text;
        }
        StringBuilder kept = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!NumberReading.isSpace(c)) {
                kept.append(c);
            }
        }
        return kept.toString();
    }

    private static boolean hasSpace(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (NumberReading.isSpace(text.charAt(i))) {
                return true;
            }
        }
        return false;
    }
}
