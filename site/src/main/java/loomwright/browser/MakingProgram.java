package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of cut-outs, joints and proving. */
final class MakingProgram {
    private MakingProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.making());
    }
}
