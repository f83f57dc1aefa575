package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of cut-outs, joints and proving. */
final class PracticeMakingProgram {
    private PracticeMakingProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.making());
    }
}
