package loomwright.generator.problem;

import java.util.List;
import java.util.TreeSet;

/** Collects the problems of one run. Several threads may report at once; the order of reporting does not show. */
public final class Problems {
    private final TreeSet<Problem> found = new TreeSet<>();

    public synchronized void add(Problem problem) {
        found.add(problem);
    }

    public synchronized boolean isEmpty() {
        return found.isEmpty();
    }

    /** The problems by file, line and column, each once. */
    public synchronized List<Problem> sorted() {
        return List.copyOf(found);
    }

    /** Every problem, then their count. */
    public String text() {
        StringBuilder text = new StringBuilder();
        List<Problem> problems = sorted();
        for (Problem problem : problems) {
            text.append(problem.text()).append('\n');
        }
        return text.append(problems.size()).append(problems.size() == 1 ? " problem\n" : " problems\n").toString();
    }
}
