package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of coils and triggers. */
final class PracticeCoilsProgram {
    private PracticeCoilsProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.coils());
    }
}
