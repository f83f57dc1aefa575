package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of outlets. */
final class PracticeOutletsProgram {
    private PracticeOutletsProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.outlets());
    }
}
