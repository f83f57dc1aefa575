package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of loads. */
final class PracticeLoadsProgram {
    private PracticeLoadsProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.loads());
    }
}
