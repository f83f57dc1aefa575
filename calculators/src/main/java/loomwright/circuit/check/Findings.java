package loomwright.circuit.check;

import java.util.ArrayList;
import java.util.List;
import loomwright.circuit.Installation;
import loomwright.quantity.Quantity;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.source.Standing;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;

/** Gathers what the checks find, and brings it into order: worst first, then what matters more, then the way from the battery. */
final class Findings {
    private static final double HAIR = 1e-9;
    private static final String MEMORY = "A figure from memory decides nothing here: look it up. ";

    private final Installation installation;
    private final List<CircuitFinding> found = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();

    Findings(Installation installation) {
        this.installation = installation;
    }

    void add(Check check, int part, Finding finding) {
        found.add(new CircuitFinding(check, installation.part(part).id(), finding));
        places.add(part);
    }

    /** A check of a figure against a limit. If the source is from memory, it only cautions. */
    void add(Check check, int part, boolean passed, Verdict otherwise, String words, Quantity figure, Quantity limit, Source source, String remedy) {
        boolean memory = source.standing() == Standing.FROM_MEMORY;
        Verdict verdict = memory ? Verdict.CAUTION : passed ? Verdict.PASSED : otherwise;
        String todo = passed ? "" : remedy;
        add(check, part, new Finding(verdict, words, figure, limit, source, memory ? (MEMORY + todo).strip() : todo));
    }

    void caution(Check check, int part, String words, Quantity figure, Source source, String remedy) {
        add(check, part, new Finding(Verdict.CAUTION, words, figure, null, source, remedy));
    }

    /** Whether a figure keeps within a limit; a hair of rounding is let through. */
    static boolean within(Quantity figure, Quantity limit) {
        return figure.base() <= limit.base() * (1 + HAIR);
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
        return first.standing() != Standing.FROM_MEMORY && second.standing() == Standing.FROM_MEMORY ? second : first;
    }

    String title(int part) {
        return installation.part(part).title();
    }

    List<CircuitFinding> inOrder() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            order.add(i);
        }
        order.sort((one, other) -> Integer.compare(rank(one), rank(other)));
        List<CircuitFinding> sorted = new ArrayList<>();
        for (int i : order) {
            sorted.add(found.get(i));
        }
        return List.copyOf(sorted);
    }

    private int rank(int i) {
        CircuitFinding one = found.get(i);
        return (one.finding().verdict().ordinal() * Check.values().length + one.check().ordinal()) * installation.size() + places.get(i);
    }
}
