package loomwright.browser;

import loomwright.graph.Graphs;

/** The page program of {@link Graphs#ofRuns}. */
public final class GraphRunsProgram {
    private GraphRunsProgram() {}

    public static void main(String[] arguments) {
        GraphProgram.start(Graphs.ofRuns());
    }
}
