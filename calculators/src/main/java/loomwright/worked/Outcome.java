package loomwright.worked;

import java.util.List;
import java.util.Map;
import loomwright.quantity.Quantity;

/**
 * What came of running a calculator: a working, or the faults that stand in its way.
 *
 * @param working the working, or null if there are faults
 * @param faults the faults; empty if there is a working
 */
public record Outcome(Working working, List<EntryFault> faults) {

    /**
     * Runs a calculator on what was typed.
     *
     * @param typed text by field key; a missing or blank text is an empty field
     */
    public static Outcome of(Calculator calculator, Map<String, String> typed) {
        EntryReader reader = new EntryReader();
        reader.read(calculator.description(), typed);
        return of(calculator, reader);
    }

    /** The same with a figure of full precision in one field, in place of what was typed there. */
    public static Outcome with(Calculator calculator, Map<String, String> typed, QuantityField field, Quantity figure) {
        EntryReader reader = new EntryReader();
        for (Field each : calculator.description().fields()) {
            if (each.key().equals(field.key())) {
                reader.take(field, figure);
            } else {
                reader.read(each, typed.get(each.key()));
            }
        }
        return of(calculator, reader);
    }

    private static Outcome of(Calculator calculator, EntryReader reader) {
        if (!reader.faults().isEmpty()) {
            return new Outcome(null, List.copyOf(reader.faults()));
        }
        WorkingBuilder builder = new WorkingBuilder(calculator.description());
        try {
            calculator.work(reader.entries(), builder);
        } catch (Refusal refusal) {
            return new Outcome(null, List.of(refusal.fault()));
        }
        return new Outcome(builder.finish(reader.entries()), List.of());
    }
}
