package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of the supply. */
final class SupplyProgram {
    private SupplyProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.supply());
    }
}
