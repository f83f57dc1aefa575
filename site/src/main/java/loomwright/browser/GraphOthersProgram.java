package loomwright.browser;

import loomwright.graph.Graphs;

/** The page program of {@link Graphs#others}. */
public final class GraphOthersProgram {
    private GraphOthersProgram() {}

    public static void main(String[] arguments) {
        GraphProgram.start(Graphs.others());
    }
}
