package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of panels. */
final class PanelsProgram {
    private PanelsProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.panels());
    }
}
