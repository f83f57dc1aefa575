package loomwright.browser;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.markup.Links;
import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;
import loomwright.worked.EntryFault;
import loomwright.worked.Finding;
import loomwright.worked.Outcome;
import loomwright.worked.Result;
import loomwright.worked.Slip;
import loomwright.worked.Step;
import loomwright.worked.Working;

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
        for (Result result : results(outcome)) {
            out.append("raw ").append(result.output().key()).append(' ').append(exact.text(result.quantity().value())).append('\n');
        }
        for (EntryFault fault : outcome.faults()) {
            out.append("fault ").append(fault.fieldKey()).append(' ').append(fault.message()).append('\n');
        }
        if (outcome.working() != null) {
            out.append(OutcomeMarkup.printed(new Place("example", new Links("../"), List.of()), outcome.working(), ""));
        }
        return out.toString();
    }

    /**
     * The same in short: the raw values on the first line, then the faults, or the words and figures of steps, results, checks and
     * mistakes, without the formulas and without HTML.
     */
    public static String brief(String calculator, String entries, Exact exact) {
        Outcome outcome = Outcome.of(Catalogue.find(calculator), entries(entries));
        StringBuilder out = new StringBuilder(2000);
        for (Result result : results(outcome)) {
            out.append(exact.text(result.quantity().value())).append(' ');
        }
        out.append('\n');
        for (EntryFault fault : outcome.faults()) {
            out.append(fault.fieldKey()).append(' ').append(fault.message()).append('\n');
        }
        Working working = outcome.working();
        if (working == null) {
            return out.toString();
        }
        for (Step step : working.steps()) {
            out.append(step.words()).append(' ');
            if (step.result() != null) {
                out.append(step.result().text());
            }
        }
        for (Result result : working.results()) {
            out.append('\n').append(result.quantity().text());
        }
        for (Finding finding : working.findings()) {
            out.append('\n').append(finding.verdict().name()).append(finding.words()).append(finding.remedy());
        }
        for (Slip slip : working.slips()) {
            out.append('\n').append(slip.name()).append(slip.value().text());
        }
        return out.toString();
    }

    private static List<Result> results(Outcome outcome) {
        return outcome.working() == null ? List.of() : outcome.working().results();
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
