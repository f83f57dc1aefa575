package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.worked.MissingFigure;

/**
 * A figure that checks need and nobody gave. What several parts lack alike stands in one line.
 *
 * @param fieldKey the field that takes it; empty if no field does and the reader must compare sheets
 * @param name what it is
 * @param where where it is printed, or how it is measured
 * @param instead what stands in its place and passes nothing; empty if nothing does
 * @param partIds the parts whose checks wait for it, in the order of the circuit's findings
 */
public record FigureToGet(String fieldKey, String name, String where, String instead, List<String> partIds) {
    /** The figures that an examination lacks, those that most checks wait for first. */
    public static List<FigureToGet> of(Examination examination) {
        Map<String, FigureToGet> byName = new LinkedHashMap<>();
        for (CircuitFinding finding : examination.findings()) {
            MissingFigure missing = finding.finding().missing();
            if (missing != null) {
                String name = missing.name();
                FigureToGet known = byName.get(name);
                List<String> parts = new ArrayList<>(known == null ? List.of() : known.partIds());
                if (!parts.contains(finding.partId())) {
                    parts.add(finding.partId());
                }
                byName.put(name, new FigureToGet(missing.key(), name, missing.where(), missing.instead(), List.copyOf(parts)));
            }
        }
        List<FigureToGet> figures = new ArrayList<>(byName.values());
        figures.sort((one, other) -> Integer.compare(other.partIds().size(), one.partIds().size()));
        return List.copyOf(figures);
    }
}
