package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of outlets. */
final class OutletsProgram {
    private OutletsProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.outlets());
    }
}
