package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of loads. */
final class LoadsProgram {
    private LoadsProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.loads());
    }
}
