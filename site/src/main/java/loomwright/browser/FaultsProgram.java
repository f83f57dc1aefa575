package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of short circuits. */
final class FaultsProgram {
    private FaultsProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.faults());
    }
}
