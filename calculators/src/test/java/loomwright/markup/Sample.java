package loomwright.markup;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.worked.Outcome;
import loomwright.worked.Working;

/** The sample calculator and where its example stands. */
final class Sample {
    static final SampleCalculator CALCULATOR = new SampleCalculator();
    static final Place PLACE = new Place("bench", new Links("../"), List.of("drop"));

    private Sample() {}

    static Map<String, String> entries(String current, String size) {
        Map<String, String> entries = new HashMap<>();
        entries.put("current", current);
        entries.put("size", size);
        return entries;
    }

    static Working working(String current) {
        Outcome outcome = Outcome.of(CALCULATOR, entries(current, "2.5 mm2"));
        if (outcome.working() == null) {
            throw new AssertionError(outcome.faults().toString());
        }
        return outcome.working();
    }
}
