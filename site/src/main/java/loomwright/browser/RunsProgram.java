package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of runs of conductor. */
final class RunsProgram {
    private RunsProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.runs());
    }
}
