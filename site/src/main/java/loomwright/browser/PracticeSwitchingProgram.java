package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of switching. */
final class PracticeSwitchingProgram {
    private PracticeSwitchingProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.switching());
    }
}
