package loomwright.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;

/** Reads what was typed into the fields of a calculator; every fault is collected. */
final class EntryReader {
    private static final double TOO_LARGE_TO_SHOW = 1e12;
    /** As many as were typed, so that what lies a hair beyond a limit does not look like the limit. */
    private static final int DIGITS_TYPED = 9;

    private final Entries entries = new Entries();
    private final List<EntryFault> faults = new ArrayList<>();

    Entries entries() {
        return entries;
    }

    List<EntryFault> faults() {
        return faults;
    }

    void read(Description description, Map<String, String> typed) {
        for (Field field : description.fields()) {
            read(field, typed.get(field.key()));
        }
    }

    void read(Field field, String text) {
        boolean empty = text == null || text.isBlank();
        String taken = empty ? field.usual() : text;
        if (empty && taken != null && !taken.isEmpty()) {
            entries.assume(field.key());
        }
        if (taken == null) {
            fault(field, "is empty: enter " + wanted(field));
        } else if (field instanceof ChoiceField choice) {
            readChoice(choice, taken.strip());
        } else if (field instanceof QuantityField quantity && !taken.isEmpty()) {
            readQuantity(quantity, taken);
        }
    }

    private void readChoice(ChoiceField field, String text) {
        Option option = field.option(text);
        if (option == null) {
            fault(field, "has no choice \u201c" + shortened(text) + "\u201d: choose one of " + listed(field));
        } else {
            entries.put(field.key(), option);
        }
    }

    private void readQuantity(QuantityField field, String text) {
        QuantityText.Reading reading = QuantityText.read(text, field.units().get(0));
        if (reading.quantity() == null) {
            fault(field, reading.fault() + ". Enter " + wanted(field));
            return;
        }
        take(field, reading.quantity(), text);
    }

    void take(QuantityField field, Quantity quantity) {
        take(field, quantity, quantity.text());
    }

    private void take(QuantityField field, Quantity quantity, String text) {
        // Any unit of the right kind is taken, offered or not, so that a label can be copied as it stands.
        Limits limits = field.limits(quantity.unit());
        if (limits != null && Gauges.isNone(quantity)) {
            fault(field, "is " + shortened(text.strip()) + ": " + Gauges.WORDS + ". Enter one of these, or an area in mm²");
        } else if (limits == null) {
            fault(field, "cannot be in " + quantity.unit().symbol() + ". Enter " + wanted(field));
        } else if (!limits.hold(quantity)) {
            fault(field, "must be between " + limits.text(quantity.unit()) + ", but is " + written(quantity));
        } else {
            entries.put(field.key(), quantity);
        }
    }

    private static String written(Quantity quantity) {
        return Math.abs(quantity.value()) < TOO_LARGE_TO_SHOW ? quantity.text(DIGITS_TYPED) : quantity.value() > 0 ? "too large" : "too far below nought";
    }

    private static String wanted(Field field) {
        if (field instanceof QuantityField quantity) {
            StringBuilder text = new StringBuilder();
            for (Limits limits : quantity.limits()) {
                text.append(text.length() == 0 ? "a number between " : ", or between ").append(limits.text(limits.least().unit()));
            }
            return text.toString();
        }
        return "one of " + listed((ChoiceField) field);
    }

    private static String listed(ChoiceField field) {
        StringBuilder text = new StringBuilder();
        for (Option option : field.options()) {
            text.append(text.length() == 0 ? "" : ", ").append(option.key());
        }
        return text.toString();
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "\u2026";
    }

    private void fault(Field field, String message) {
        faults.add(new EntryFault(field.key(), field.label() + " " + message));
    }
}
