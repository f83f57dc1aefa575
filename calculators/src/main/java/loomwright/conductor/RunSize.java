package loomwright.conductor;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;

/**
 * One standard size that a run might take.
 *
 * @param row its row in the table of its kind
 * @param name what it is called
 * @param perMetre the resistance of one metre at the temperature of the run
 * @param area its area of copper, in circular mils
 */
public record RunSize(Row row, String name, Quantity perMetre, Quantity area) {

    /** The answer that it is: SAE gauge by its area, since its number means another area as AWG. */
    String output() {
        return isSae(row) ? "chosen-sae-area" : size().unit() == Units.AWG ? "chosen-gauge" : "chosen-size";
    }

    /** The figure of {@link #output}. */
    Quantity answer() {
        return isSae(row) ? row.quantity("sae-cross-section") : size();
    }

    /** By what size its ampacity is looked up: SAE gauge by its area. */
    Quantity ampacitySize() {
        return isSae(row) ? row.quantity("sae-cross-section") : size();
    }

    /** What its current is called beside its ampacity, where SAE gauge stands by its area: there its number is said. */
    String loadedBy() {
        return "The design current" + (isSae(row) ? " through " + name : "");
    }

    /** What it is called where a size has to stand on its own: SAE gauge by its area, since its number would be taken for AWG. */
    String carriedText() {
        return (isSae(row) ? area : size()).text();
    }

    private static boolean isSae(Row row) {
        return row.table() == ConductorKind.SAE_BY_AREA.table();
    }

    /** The sizes of a kind, thinnest first. */
    public static List<RunSize> series(ConductorKind kind, Quantity temperature) {
        List<RunSize> sizes = new ArrayList<>();
        for (Row row : kind.table().rows()) {
            if (isCable(kind, row)) {
                sizes.add(new RunSize(row, name(row), ResistancePerMetre.of(kind, row, temperature), area(kind, row)));
            }
        }
        sizes.sort((one, other) -> Double.compare(one.size().base(), other.size().base()));
        return sizes;
    }

    /** The size as its cable is marked. */
    public Quantity size() {
        return row.quantity("size");
    }

    /** The wire table lists every gauge; cable comes in those that the ampacity table lists. */
    private static boolean isCable(ConductorKind kind, Row row) {
        return kind != ConductorKind.SOLID_COPPER || PublishedTables.no33Cfr183425Table5().find("size", row.quantity("size")) != null;
    }

    private static String name(Row row) {
        return isSae(row) ? row.name().replace("AWG", "SAE") : row.name();
    }

    /** As printed for solid wire and SAE gauge; by the size itself otherwise. */
    private static Quantity area(ConductorKind kind, Row row) {
        return switch (kind) {
            case SAE_BY_AREA -> row.quantity("sae-area");
            case SOLID_COPPER -> row.quantity("area");
            default -> row.quantity("size").in(Units.CIRCULAR_MIL);
        };
    }
}
