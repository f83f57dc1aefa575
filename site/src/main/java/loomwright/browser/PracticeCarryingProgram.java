package loomwright.browser;

import loomwright.catalogue.Catalogue;

/** The exercises of what conductors carry. */
final class PracticeCarryingProgram {
    private PracticeCarryingProgram() {}

    public static void main(String[] arguments) {
        Practice.start(Catalogue.carrying());
    }
}
