package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of conductors. */
final class PracticeConductorsProgram {
    private PracticeConductorsProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.conductors());
    }
}
