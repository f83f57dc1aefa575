package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The page program of what conductors carry. */
final class CarryingProgram {
    private CarryingProgram() {}

    public static void main(String[] arguments) {
        PageProgram.start(Catalogue.carrying());
    }
}
