package loomwright.generator.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.Circuit;
import loomwright.circuit.PartFault;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FigureToGet;
import loomwright.circuit.check.FindingGroup;
import loomwright.circuit.sheet.Comparison;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Meter;
import loomwright.circuit.sheet.ReadingFinding;
import loomwright.markup.Words;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** What was found in one circuit file, for people: how many of each, then what to change, what to decide and which figures to get, worst first. */
public final class CircuitReport {
    private static final int TITLE = 2;
    private static final int PART = 4;
    private static final int BODY = 6;

    private final Paragraphs text = new Paragraphs();
    private final ExaminedFile file;

    private CircuitReport(ExaminedFile file) {
        this.file = file;
    }

    /**
     * The lines on one file.
     *
     * @param withPassed whether the checks that passed are listed too
     */
    public static String of(ExaminedFile file, boolean withPassed) {
        CircuitReport report = new CircuitReport(file);
        report.write(withPassed);
        return report.text.written();
    }

    /** The last line, on all files together. */
    public static String last(List<ExaminedFile> files) {
        long refused = files.stream().filter(ExaminedFile::isRefused).count();
        long faulty = files.stream().filter(ExaminedFile::isFaulty).count();
        long stops = files.stream().filter(ExaminedFile::hasStop).count();
        Paragraphs last = new Paragraphs();
        last.add(0, files.size() + (files.size() == 1 ? " file: " : " files: ") + refused + " refused, " + faulty
                + " with figures that do not go together, " + stops
                + " with something to change. A check that passed is one comparison by its source; it does not say that a circuit is free of danger.");
        return last.written();
    }

    private void write(boolean withPassed) {
        if (file.isRefused()) {
            text.add(0, file.file() + ": refused");
            file.refusals().forEach(reason -> text.add(TITLE, Words.sentence(reason)));
            return;
        }
        Examination examination = file.examination();
        String name = examination.circuit().name();
        text.add(0, file.file() + ": " + (name.isEmpty() ? "circuit without a name" : name));
        if (file.isFaulty()) {
            text.add(TITLE, FindingGroup.counted(examination.faults().size(), "fault") + ", nothing checked");
            faults(List.of(), examination.faults());
            return;
        }
        text.add(TITLE, FindingGroup.counted(examination));
        group(FindingGroup.CHANGE);
        group(FindingGroup.DECIDE);
        figures();
        readings(withPassed);
        if (withPassed) {
            group(FindingGroup.PASSED);
        }
    }

    private void group(FindingGroup group) {
        Examination examination = file.examination();
        if (examination.count(group.verdict()) > 0) {
            title(group.title());
            for (CircuitFinding found : examination.findings()) {
                if (found.finding().verdict() == group.verdict()) {
                    finding(designations().titled(found.partId()) + ": " + Words.small(found.check().label()), found.finding());
                }
            }
        }
    }

    /** All that nobody gave in one paragraph, and all that was entered as a guess or invented in another: what several parts lack alike is said once. */
    private void figures() {
        List<FigureToGet> figures = FigureToGet.of(file.examination());
        if (figures.isEmpty()) {
            return;
        }
        title(FindingGroup.FIGURES.title());
        StringBuilder paragraph = new StringBuilder();
        Map<String, List<String>> inPlace = new LinkedHashMap<>();
        for (FigureToGet figure : figures) {
            List<String> parts = new ArrayList<>();
            figure.partIds().forEach(id -> parts.add(designations().of(id)));
            String named = figure.name() + " (" + String.join(", ", parts) + ")";
            if (figure.instead().isEmpty()) {
                paragraph.append(' ').append(Words.capital(named)).append(": ").append(Words.sentence(figure.where()));
            } else {
                inPlace.computeIfAbsent(figure.instead(), instead -> new ArrayList<>()).add(named);
            }
        }
        if (paragraph.length() > 0) {
            text.add(PART, "No fault, but not shown either way." + paragraph);
        }
        inPlace.forEach((instead, named) -> text.add(
                PART, "Within its limit by a figure that is " + instead + ", which passes nothing: " + String.join("; ", named) + "."));
    }

    /** What was read with a meter and typed into the file, held against what should be read. */
    private void readings(boolean withPassed) {
        if (!Comparison.isAsked(file.examination().circuit())) {
            return;
        }
        Comparison comparison = Comparison.of(file.examination(), Meter.USUAL);
        title("Meter readings");
        faults(List.of("Reading"), comparison.faults());
        for (ReadingFinding reading : comparison.findings()) {
            if (withPassed || reading.finding().verdict() != Verdict.PASSED) {
                finding(designations().titled(reading.partId()) + ": reading, " + Words.small(reading.finding().verdict().words()), reading.finding());
            }
        }
    }

    private void faults(List<String> before, List<PartFault> faults) {
        Circuit circuit = file.examination().circuit();
        for (PartFault fault : faults) {
            List<String> place = new ArrayList<>(before);
            if (circuit.part(fault.partId()) != null) {
                place.add(designations().titled(fault.partId()));
            }
            if (!fault.fieldKey().isEmpty()) {
                place.add(fault.fieldKey());
            }
            text.add(PART, String.join(", ", place) + ": " + Words.sentence(fault.message()));
        }
    }

    private void finding(String title, Finding finding) {
        text.add(PART, title);
        text.add(BODY, Words.sentence(finding.words()));
        if (!finding.remedy().isEmpty()) {
            text.add(BODY, "What to do: " + Words.sentence(Words.small(finding.remedy())));
        }
        text.add(BODY, "Source: " + Words.sentence(finding.source().text()));
    }

    private void title(String words) {
        text.gap();
        text.add(TITLE, words);
    }

    private Designations designations() {
        return Designations.of(file.examination().circuit());
    }
}
