package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
        Map<String, MissingFigure> missing = new LinkedHashMap<>();
        Map<String, Set<String>> waiting = new HashMap<>();
        for (CircuitFinding finding : examination.findings()) {
            MissingFigure each = finding.finding().missing();
            if (each != null) {
                if (!waiting.containsKey(each.name())) {
                    waiting.put(each.name(), new LinkedHashSet<>());
                }
                missing.put(each.name(), each);
                waiting.get(each.name()).add(finding.partId());
            }
        }
        List<FigureToGet> figures = new ArrayList<>();
        for (MissingFigure each : missing.values()) {
            figures.add(new FigureToGet(each.key(), each.name(), each.where(), each.instead(), List.copyOf(waiting.get(each.name()))));
        }
        figures.sort((one, other) -> Integer.compare(other.partIds().size(), one.partIds().size()));
        return List.copyOf(figures);
    }
}
