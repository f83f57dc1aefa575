package loomwright.worked;

import java.util.List;
import java.util.Map;

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
        Description description = calculator.description();
        EntryReader reader = new EntryReader();
        reader.read(description, typed);
        if (!reader.faults().isEmpty()) {
            return new Outcome(null, List.copyOf(reader.faults()));
        }
        WorkingBuilder builder = new WorkingBuilder(description);
        try {
            calculator.work(reader.entries(), builder);
        } catch (Refusal refusal) {
            return new Outcome(null, List.of(refusal.fault()));
        }
        return new Outcome(builder.finish(reader.entries()), List.of());
    }
}
