package loomwright.browser;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.markup.Links;
import loomwright.markup.OutcomeMarkup;
import loomwright.markup.Place;
import loomwright.markup.UpshotMarkup;
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
            Place place = new Place("example", new Links("../"), List.of());
            out.append(UpshotMarkup.printed(place, outcome.working())).append(OutcomeMarkup.printed(place, outcome.working()));
        }
        return out.toString();
    }

    /**
     * The same in short: a check number of the faults, or of the words and figures of steps, results, checks and mistakes, without the
     * formulas and without HTML; then the raw values, with blanks between. Answers that differ and share a check number are too
     * rare for a test to meet.
     */
    public static String brief(String calculator, String entries, Exact exact) {
        Outcome outcome = Outcome.of(Catalogue.find(calculator), entries(entries));
        CheckNumber text = new CheckNumber();
        for (EntryFault fault : outcome.faults()) {
            text.add(fault.fieldKey()).add(fault.message());
        }
        Working working = outcome.working();
        if (working == null) {
            return text.toString();
        }
        for (Step step : working.steps()) {
            text.add(step.words());
            if (step.result() != null) {
                text.add(step.result().text());
            }
        }
        StringBuilder raw = new StringBuilder();
        for (Result result : working.results()) {
            text.add(result.quantity().text());
            raw.append(' ').append(exact.text(result.quantity().value()));
        }
        for (Finding finding : working.findings()) {
            text.add(finding.verdict().name()).add(finding.words()).add(finding.remedy());
        }
        for (Slip slip : working.slips()) {
            text.add(slip.name()).add(slip.value().text());
        }
        return text.toString() + raw;
    }

    /** Two numbers that follow from every letter that was added, in order. */
    private static final class CheckNumber {
        private int one;
        private int two;

        CheckNumber add(String text) {
            for (int i = 0; i < text.length(); i++) {
                one = one * 31 + text.charAt(i);
                two = (two ^ text.charAt(i)) * 16_777_619;
            }
            one = one * 31 + '\n';
            return this;
        }

        @Override
        public String toString() {
            return one + "/" + two;
        }
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
