package loomwright.generator.preview;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import loomwright.generator.build.SiteBuild;

/** The site in memory, as it was built last. */
final class LiveSite {
    private static final int WARM_UP_BUILDS = 4;

    private final SiteBuild build;
    private volatile State state = new State(Map.of(), "The site has not been built yet.");

    /**
     * What came of a build.
     *
     * @param files the files by address
     * @param problems the problems as they are printed; empty if there are none
     */
    private record State(Map<String, byte[]> files, String problems) {}

    LiveSite(SiteBuild build) {
        this.build = build;
    }

    /**
     * Builds the whole site a few times over, while the author still reads: the first builds of a program are slow. From then on a
     * build does only what has changed.
     *
     * @param wanted whether there is something better to do
     */
    void warmUp(BooleanSupplier wanted) {
        for (int i = 0; i < WARM_UP_BUILDS && !wanted.getAsBoolean(); i++) {
            rebuild();
        }
        build.again();
    }

    /** Builds anew. A fault of ours is shown like a problem, so that the author need not start the preview again. */
    void rebuild() {
        Map<String, byte[]> files = new ConcurrentHashMap<>();
        String problems;
        try {
            SiteBuild.Outcome outcome = build.run(files::put);
            problems = outcome.problems().isEmpty() ? "" : outcome.problems().text();
        } catch (RuntimeException e) {
            StringWriter trace = new StringWriter();
            e.printStackTrace(new PrintWriter(trace));
            problems = "This is a fault of the generator, not of your text.\n" + trace;
        }
        state = new State(files, problems);
    }

    /** The problems of the last build; empty if there are none. */
    String problems() {
        return state.problems();
    }

    /** A file of the last build, or null. */
    byte[] file(String address) {
        return state.files().get(address);
    }
}
