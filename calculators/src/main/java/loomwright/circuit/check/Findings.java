package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Node;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;

/** Gathers what the checks find, and brings it into order: worst first, then what matters more, then the way from the battery. */
final class Findings {
    private final Circuit circuit;
    private final List<CircuitFinding> found = new ArrayList<>();

    Findings(Circuit circuit) {
        this.circuit = circuit;
    }

    void add(Check check, Node node, Finding finding) {
        found.add(new CircuitFinding(check, node.id(), finding, ""));
    }

    /** A finding about two parts; it lies at the first. */
    void add(Check check, Node node, Node other, Finding finding) {
        found.add(new CircuitFinding(check, node.id(), finding, other == node ? "" : other.id()));
    }

    /** A figure held against its limit: verdict, words, limit and source come together. */
    void add(Check check, Node node, Comparison comparison) {
        add(check, node, comparison.finding());
    }

    /** What the reader plans or wishes. */
    static Source entered() {
        return Source.of(Document.COMPUTED, "held against the limit you entered");
    }

    static Source computed() {
        return Source.of(Document.COMPUTED, "");
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
