package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of protection. */
final class TimingProgram {
    private TimingProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.timing());
    }
}
