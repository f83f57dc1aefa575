package loomwright.circuit.sheet;

import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.PartKind;

/** Short designations of the parts, such as {@code W3}: a letter for the kind and a number along the way from the battery. */
public final class Designations {
    private final Circuit circuit;
    private final String[] designations;

    private Designations(Circuit circuit) {
        this.circuit = circuit;
        this.designations = new String[circuit.parts().size()];
        int[] counts = new int[PartKind.values().length];
        for (int i = 0; i < designations.length; i++) {
            Part part = circuit.parts().get(i);
            designations[i] = letter(part.kind()) + ++counts[part.kind().ordinal()];
        }
    }

    public static Designations of(Circuit circuit) {
        return new Designations(circuit);
    }

    private static String letter(PartKind kind) {
        return switch (kind) {
            case SUPPLY -> "G";
            case PANEL -> "P";
            case PROTECTION -> "F";
            case ISOLATOR -> "Q";
            case SWITCH -> "K";
            case CONDUCTOR -> "W";
            case JOINT -> "J";
            case LOAD -> "E";
        };
    }

    /** The designation of a part. */
    public String of(String partId) {
        return designations[circuit.indexOf(partId)];
    }

    /** Designation and title, such as {@code W3 Run to the bench}. */
    public String titled(String partId) {
        return of(partId) + " " + circuit.part(partId).title();
    }
}
