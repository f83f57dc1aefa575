package loomwright.generator.circuit;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.sheet.Comparison;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Meter;
import loomwright.circuit.sheet.ReadingFinding;
import loomwright.markup.Words;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** What was found in circuit files, in plain lines: one line for the whole, then fault by fault or finding by finding, worst first. */
public final class CircuitReport {
    private static final String INDENT = "           ";

    private final boolean withPassed;
    private final StringBuilder text = new StringBuilder();

    private CircuitReport(boolean withPassed) {
        this.withPassed = withPassed;
    }

    /**
     * The lines on one file.
     *
     * @param withPassed whether the checks that passed are listed too
     */
    public static String of(ExaminedFile file, boolean withPassed) {
        CircuitReport report = new CircuitReport(withPassed);
        report.line(summary(file));
        if (file.isRefused()) {
            file.refusals().forEach(reason -> report.line("  refused  " + Words.sentence(reason)));
        } else if (file.isFaulty()) {
            report.faults(file.examination());
        } else {
            report.findings(file.examination());
            report.readings(file.examination());
        }
        return report.text.toString();
    }

    /** The last line, on all files together. */
    public static String last(List<ExaminedFile> files) {
        long refused = files.stream().filter(ExaminedFile::isRefused).count();
        long faulty = files.stream().filter(ExaminedFile::isFaulty).count();
        long stops = files.stream().filter(ExaminedFile::hasStop).count();
        return counted(files.size(), "file") + ": " + refused + " refused, " + faulty + " with figures that do not go together, " + stops
                + " with a stop. A check that passed is one comparison by its source; it does not say that a circuit is free of danger.\n";
    }

    private static String summary(ExaminedFile file) {
        if (file.isRefused()) {
            return file.file() + ": refused";
        }
        Examination examination = file.examination();
        String name = examination.circuit().name().isEmpty() ? "circuit without a name" : examination.circuit().name();
        String opening = file.file() + ": " + name + ": ";
        if (file.isFaulty()) {
            return opening + counted(examination.faults().size(), "fault") + ", nothing checked";
        }
        return opening + counted(examination.count(Verdict.STOP), "stop") + ", " + counted(examination.count(Verdict.CAUTION), "caution") + ", "
                + counted(examination.count(Verdict.PASSED), "check") + " passed";
    }

    private static String counted(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    private void faults(Examination examination) {
        Circuit circuit = examination.circuit();
        for (PartFault fault : examination.faults()) {
            String part = circuit.part(fault.partId()) == null ? "" : Designations.of(circuit).titled(fault.partId()) + ", ";
            line("  fault    " + part + fault.fieldKey() + ": " + Words.sentence(fault.message()));
        }
    }

    private void findings(Examination examination) {
        Designations designations = Designations.of(examination.circuit());
        for (CircuitFinding found : examination.findings()) {
            Finding finding = found.finding();
            if (withPassed || finding.verdict() != Verdict.PASSED) {
                finding(found.check().label() + ", " + designations.titled(found.partId()), finding, "What to change: ");
            }
        }
    }

    private void finding(String title, Finding finding, String remedy) {
        line("  " + word(finding.verdict()) + title);
        line(INDENT + Words.sentence(finding.words()));
        line(INDENT + figures(finding) + "Source: " + Words.sentence(finding.source().text()));
        if (!finding.remedy().isEmpty()) {
            line(INDENT + remedy + Words.sentence(finding.remedy()));
        }
    }

    /** What was read with a meter and typed into the file, held against what should be read. */
    private void readings(Examination examination) {
        Circuit circuit = examination.circuit();
        if (!Comparison.isAsked(circuit)) {
            return;
        }
        Designations designations = Designations.of(circuit);
        Comparison comparison = Comparison.of(examination, Meter.USUAL);
        for (PartFault fault : comparison.faults()) {
            line("  fault    Reading" + (fault.partId().isEmpty() ? "" : ", " + designations.titled(fault.partId())));
            line(INDENT + Words.sentence(fault.message()));
        }
        for (ReadingFinding reading : comparison.findings()) {
            if (withPassed || reading.finding().verdict() != Verdict.PASSED) {
                finding("Reading, " + designations.titled(reading.partId()), reading.finding(), "What to do: ");
            }
        }
    }

    private static String figures(Finding finding) {
        String figure = finding.figure() == null ? "" : "Figure: " + finding.figure().text(4) + ". ";
        return figure + (finding.limit() == null ? "" : "Limit: " + finding.limit().text(4) + ". ");
    }

    private static String word(Verdict verdict) {
        return switch (verdict) {
            case STOP -> "STOP     ";
            case CAUTION -> "caution  ";
            case NOT_KNOWN -> "not known";
            case PASSED -> "passed   ";
        };
    }

    private void line(String words) {
        text.append(PlainLine.of(words)).append('\n');
    }
}
