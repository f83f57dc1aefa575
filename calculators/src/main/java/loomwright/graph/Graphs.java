package loomwright.graph;

import java.util.List;
import java.util.Map;
import loomwright.picture.Picture;
import loomwright.worked.Outcome;

/**
 * Graphs of calculators. Each set is compiled into a page program of its own, so that a page loads no more than it needs.
 *
 * @param program the name of that page program
 */
public record Graphs(String program, List<CalculatorGraph> graphs) {

    /** The graph of voltage drop, which brings the tables of conductors along. */
    public static Graphs ofRuns() {
        return new Graphs("graph-runs", List.of(new DropGraph()));
    }

    /** All the others. */
    public static Graphs others() {
        return new Graphs("graph-others", List.of(new OpeningWindow(), new RunTimeGraph(), new DayBars(), new JunctionGraph()));
    }

    /** The set that has a graph for the calculator of that key, or null. */
    public static Graphs withGraphFor(String calculatorKey) {
        for (Graphs set : List.of(ofRuns(), others())) {
            if (set.find(calculatorKey) != null) {
                return set;
            }
        }
        return null;
    }

    /**
     * The graph of a calculator round what was typed.
     *
     * @param typed text by field key; a missing or blank text is an empty field
     * @return null if the calculator has no graph here, or cannot answer what was typed
     */
    public Picture draw(String calculatorKey, Map<String, String> typed) {
        CalculatorGraph graph = find(calculatorKey);
        if (graph == null) {
            return null;
        }
        Outcome outcome = Outcome.of(graph.calculator(), typed);
        return outcome.working() == null ? null : graph.draw(new Rerun(graph.calculator(), typed, outcome.working()));
    }

    private CalculatorGraph find(String calculatorKey) {
        for (CalculatorGraph graph : graphs) {
            if (graph.calculator().description().key().equals(calculatorKey)) {
                return graph;
            }
        }
        return null;
    }
}
