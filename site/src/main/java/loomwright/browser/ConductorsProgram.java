package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of conductors. */
final class ConductorsProgram {
    private ConductorsProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.conductors());
    }
}
