package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of runs of conductor. */
final class PracticeRunsProgram {
    private PracticeRunsProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.runs());
    }
}
