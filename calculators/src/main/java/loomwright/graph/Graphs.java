package loomwright.graph;

import java.util.List;
import java.util.Map;
import loomwright.picture.Picture;
import loomwright.worked.Calculator;
import loomwright.worked.Working;

/** The graphs of calculators. */
public final class Graphs {
    private static final List<CalculatorGraph> ALL =
            List.of(new DropGraph(), new OpeningWindow(), new RunTimeGraph(), new DayBars(), new JunctionGraph());

    private Graphs() {}

    /**
     * The graph of a calculator round what was typed.
     *
     * @param typed text by field key; a missing or blank text is an empty field
     * @param working what the calculator made of it
     * @return null if the calculator has no graph, or there is nothing to draw
     */
    public static Picture draw(Calculator calculator, Map<String, String> typed, Working working) {
        for (CalculatorGraph graph : ALL) {
            if (graph.calculator().equals(calculator.description().key())) {
                return graph.draw(new Rerun(calculator, typed, working));
            }
        }
        return null;
    }

    static List<CalculatorGraph> all() {
        return ALL;
    }
}
