package loomwright.generator;

import loomwright.generator.build.SiteBuild;

/** What a run went through, in words. */
final class Counted {
    private Counted() {}

    static String of(SiteBuild.Outcome outcome) {
        return many(outcome.lessons(), "lesson") + " with " + many(outcome.examples().size(), "worked example") + " and "
                + many(outcome.pins(), "pin");
    }

    private static String many(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }
}
