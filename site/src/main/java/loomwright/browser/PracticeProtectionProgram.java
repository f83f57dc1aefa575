package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of protection. */
final class PracticeProtectionProgram {
    private PracticeProtectionProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.protection());
    }
}
