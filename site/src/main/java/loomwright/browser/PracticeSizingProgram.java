package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of sizing. */
final class PracticeSizingProgram {
    private PracticeSizingProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.sizing());
    }
}
