package loomwright.generator.problem;

import java.util.List;
import java.util.TreeSet;

/** Collects the problems of one run. Several threads may report at once; the order of reporting does not show. */
public final class Problems {
    /** More than this nobody reads; most of them follow from one mistake. */
    private static final int MOST_PRINTED = 200;

    private final TreeSet<Problem> found = new TreeSet<>();

    public synchronized void add(Problem problem) {
        found.add(problem);
    }

    public synchronized boolean isEmpty() {
        return found.isEmpty();
    }

    /** Drops what a check of finished pages found where an author's file has a problem: it follows from that one. */
    public synchronized void dropEchoes() {
        if (found.stream().anyMatch(problem -> !problem.isOfPage())) {
            found.removeIf(Problem::isOfPage);
        }
    }

    /** How many there are. */
    public synchronized int count() {
        return found.size();
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

    /** The problems, then their count. */
    public String text() {
        StringBuilder text = new StringBuilder();
        List<Problem> problems = sorted();
        for (Problem problem : problems.subList(0, Math.min(MOST_PRINTED, problems.size()))) {
            text.append(problem.text()).append('\n');
        }
        if (problems.size() > MOST_PRINTED) {
            text.append("The other ").append(problems.size() - MOST_PRINTED).append(" are not printed.\n");
        }
        return text.append(problems.size()).append(problems.size() == 1 ? " mistake\n" : " mistakes\n").toString();
    }
}
