package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.quantity.Quantity;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** Gathers what the checks find, and brings it into order: worst first, then what matters more, then the way from the battery. */
final class Findings {
    private static final String MEMORY = "A figure from memory decides nothing here: look it up. ";

    private final Circuit circuit;
    private final List<CircuitFinding> found = new ArrayList<>();

    Findings(Circuit circuit) {
        this.circuit = circuit;
    }

    void add(Check check, Node node, Finding finding) {
        found.add(new CircuitFinding(check, node.id(), finding));
    }

    /** A figure held against its limit: verdict, words, limit and source come together. */
    void add(Check check, Node node, Comparison comparison) {
        add(check, node, comparison.finding());
    }

    /** A check of a figure against a limit. If the source is from memory, it only cautions. */
    void add(Check check, Node node, boolean passed, Verdict otherwise, String words, Quantity figure, Quantity limit, Source source, String remedy) {
        boolean memory = !source.standing().mayPass();
        Verdict verdict = memory ? Verdict.CAUTION : passed ? Verdict.PASSED : otherwise;
        String todo = passed ? "" : remedy;
        add(check, node, new Finding(verdict, words, figure, limit, source, memory ? (MEMORY + todo).strip() : todo));
    }

    void caution(Check check, Node node, String words, Quantity figure, Source source, String remedy) {
        add(check, node, new Finding(Verdict.CAUTION, words, figure, null, source, remedy));
    }

    /** Whether a figure keeps within a limit; a hair of rounding is let through. */
    static boolean within(Quantity figure, Quantity limit) {
        return Comparison.atMost(figure, limit);
    }

    /** A figure in words, with as many digits as it takes to tell it from its limit. */
    static String told(Quantity figure, Quantity limit) {
        String short3 = figure.text(3);
        return short3.equals(limit.in(figure.unit()).text(3)) ? figure.text(5) : short3;
    }

    static String withinOrAbove(boolean passed) {
        return passed ? "within" : "above";
    }

    static Source entered() {
        return Source.of(Document.COMPUTED, "held against the limit you entered");
    }

    static Source computed() {
        return Source.of(Document.COMPUTED, "");
    }

    /** The source that decides least: the first from memory, or else the first. */
    static Source weaker(Source first, Source second) {
        return Comparison.weaker(first, second);
    }

    List<CircuitFinding> inOrder() {
        int[] ranks = new int[found.size()];
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < ranks.length; i++) {
            ranks[i] = rank(found.get(i));
            order.add(i);
        }
        order.sort((one, other) -> Integer.compare(ranks[one], ranks[other]));
        List<CircuitFinding> sorted = new ArrayList<>();
        for (int i : order) {
            sorted.add(found.get(i));
        }
        return List.copyOf(sorted);
    }

    private int rank(CircuitFinding one) {
        int kind = one.finding().verdict().ordinal() * Check.values().length + one.check().ordinal();
        return kind * circuit.nodes().size() + circuit.node(one.partId()).order();
    }
}
