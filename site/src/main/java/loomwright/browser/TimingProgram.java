package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of opening times. */
final class TimingProgram {
    private TimingProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.timing());
    }
}
