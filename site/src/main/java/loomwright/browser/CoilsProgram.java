package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of coils and triggers. */
final class CoilsProgram {
    private CoilsProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.coils());
    }
}
