package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of the supply. */
final class PracticeSupplyProgram {
    private PracticeSupplyProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.supply());
    }
}
