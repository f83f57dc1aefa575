package loomwright.circuit;

import java.util.List;
import loomwright.quantity.QuantityText;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** What was typed into a field, as it is kept: the text itself, with its unit, or what is usual if nothing was typed. */
final class Typed {
    private Typed() {}

    static String settled(Field field, String text) {
        String kept = text.strip();
        if (kept.isEmpty()) {
            return field.usual() == null ? "" : field.usual();
        }
        if (field instanceof QuantityField quantity && lacksUnit(kept)) {
            String symbol = quantity.units().get(0).symbol();
            return symbol.isEmpty() ? kept : kept + " " + symbol;
        }
        return kept;
    }

    /** The place of a field among others, or −1. */
    static int indexOf(List<Field> fields, String fieldKey) {
        for (int i = 0; i < fields.size(); i++) {
            if (fields.get(i).key().equals(fieldKey)) {
                return i;
            }
        }
        return -1;
    }

    /** Whether the text is a number with nothing behind it. */
    private static boolean lacksUnit(String text) {
        char last = text.charAt(text.length() - 1);
        boolean endsInDigit = last >= '0' && last <= '9';
        return endsInDigit && QuantityText.read(text, null).quantity() == null;
    }

    /** The text behind {@code key=}, or an empty text. */
    static String among(String[] typed, String key) {
        for (String one : typed) {
            if (one.startsWith(key + "=")) {
                return one.substring(key.length() + 1);
            }
        }
        return "";
    }
}
