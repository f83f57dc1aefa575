package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of runs of conductor. */
final class SizingProgram {
    private SizingProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.sizing());
    }
}
