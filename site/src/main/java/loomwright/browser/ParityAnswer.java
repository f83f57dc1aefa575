package loomwright.browser;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.markup.Links;
import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;
import loomwright.worked.EntryFault;
import loomwright.worked.Outcome;
import loomwright.worked.Result;

/** What a calculator answers, written down in full; the same on the JVM and in a browser if all is well. */
public final class ParityAnswer {
    private ParityAnswer() {}

    /** Writes a double so that it can be read back without loss. */
    public interface Exact {
        String text(double value);
    }

    /**
     * The faults, one a line; or each result with its key and its raw value in the unit it is shown in, one a line, then the whole outcome as HTML.
     *
     * @param exact writes raw values, which each side does its own way
     */
    public static String of(String calculator, String entries, Exact exact) {
        Outcome outcome = Outcome.of(Catalogue.find(calculator), entries(entries));
        StringBuilder out = new StringBuilder();
        for (EntryFault fault : outcome.faults()) {
            out.append("fault ").append(fault.fieldKey()).append(' ').append(fault.message()).append('\n');
        }
        if (outcome.working() != null) {
            for (Result result : outcome.working().results()) {
                out.append("raw ").append(result.output().key()).append(' ').append(exact.text(result.quantity().value())).append('\n');
            }
            out.append(OutcomeMarkup.printed(new Place("example", new Links("../"), List.of()), outcome.working(), ""));
        }
        return out.toString();
    }

    private static Map<String, String> entries(String lines) {
        Map<String, String> entries = new HashMap<>();
        int start = 0;
        while (start < lines.length()) {
            int end = lines.indexOf('\n', start);
            end = end < 0 ? lines.length() : end;
            int equals = lines.indexOf('=', start);
            entries.put(lines.substring(start, equals), lines.substring(equals + 1, end));
            start = end + 1;
        }
        return entries;
    }
}
