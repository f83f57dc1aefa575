package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of opening times. */
final class PracticeTimingProgram {
    private PracticeTimingProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.timing());
    }
}
