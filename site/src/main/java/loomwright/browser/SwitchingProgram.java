package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of switching. */
final class SwitchingProgram {
    private SwitchingProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.switching());
    }
}
