package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of panels. */
final class PracticePanelsProgram {
    private PracticePanelsProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.panels());
    }
}
