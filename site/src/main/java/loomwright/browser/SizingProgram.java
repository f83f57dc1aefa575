package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of choosing a size for a run. */
final class SizingProgram {
    private SizingProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.sizing());
    }
}
