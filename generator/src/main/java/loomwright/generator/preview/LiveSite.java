package loomwright.generator.preview;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import loomwright.generator.build.SiteBuild;
import loomwright.generator.problem.Mishap;

/** The site in memory, as it was built last. */
final class LiveSite {
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
        this.build = build.again();
    }

    /**
     * Writes some lessons again, while the author still reads: the first runs of a program are slow. Each time it does what it does after
     * a save of that lesson, so a save meanwhile waits no longer than after another.
     *
     * @param builds how often at most
     * @param wanted whether there is something better to do
     */
    void warmUp(int builds, BooleanSupplier wanted) {
        for (int i = 0; i < builds && !wanted.getAsBoolean(); i++) {
            build.forgetALesson();
            rebuild();
        }
    }

    /**
     * Builds anew. Whatever fails is shown like a problem, and the next save is taken: the author need not start the preview again. So
     * nothing at all may leave this method.
     */
    void rebuild() {
        Map<String, byte[]> files = new ConcurrentHashMap<>();
        String problems;
        try {
            SiteBuild.Outcome outcome = build.run(files::put);
            problems = outcome.problems().isEmpty() ? "" : outcome.problems().text();
        } catch (Throwable thrown) {
            problems = "After this save the site could not be built. " + Mishap.words(thrown)
                    + "\nThe next save is taken. If it does not help, undo your last change.";
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
