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

    /** Whether a file has a problem. */
    public synchronized boolean areIn(String file) {
        return found.stream().anyMatch(problem -> problem.file().equals(file));
    }

    /** Takes over the problems another part of the run found. */
    public void addAll(Problems others) {
        others.sorted().forEach(this::add);
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
