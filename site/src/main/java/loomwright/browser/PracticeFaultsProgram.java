package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of short circuits. */
final class PracticeFaultsProgram {
    private PracticeFaultsProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.faults());
    }
}
