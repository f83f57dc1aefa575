package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of protection. */
final class ProtectionProgram {
    private ProtectionProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.protection());
    }
}
