package loomwright.conductor;

import java.util.ArrayList;
import java.util.List;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Candidate;
import loomwright.worked.WorkingBuilder;

/** The step that says which row was read, where it is not the row of the size itself. */
final class StandInStep {
    private static final double HAIR = 1e-6;

    private StandInStep() {}

    static void show(WorkingBuilder working, Quantity size, Row taken) {
        double area = taken.quantity("size").base();
        if (Math.abs(area - size.base()) <= HAIR * size.base()) {
            return;
        }
        boolean thinner = area < size.base();
        Source source = taken.source();
        working.choose(
                thinner ? "Take a row with less copper" : "Take the thinnest row there is", candidates(size, taken), taken.quantity("size"),
                thinner
                        ? "The table does not list this size. A thinner row stands in, which is the cautious side; a thicker one never does."
                        : "No row is as thin as this. The conductor carries less than the row says.",
                Source.of(source.document(), taken.table().source().locus()));
    }

    private static List<Candidate> candidates(Quantity size, Row taken) {
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(new Candidate(taken.name(), true, compared(taken, size)));
        Row thicker = StandIn.thicker(taken.table(), taken);
        while (thicker != null && thicker.quantity("size").base() <= size.base()) {
            candidates.add(new Candidate(
                    thicker.name(), false, area(thicker).text(3) + ": too close, for a metric size may have a little less copper than its name"));
            thicker = StandIn.thicker(taken.table(), thicker);
        }
        if (thicker != null) {
            candidates.add(new Candidate(thicker.name(), false, compared(thicker, size)));
        }
        return candidates;
    }

    private static String compared(Row row, Quantity size) {
        boolean less = row.quantity("size").base() < size.base();
        return area(row).text(3) + ", " + (less ? "less" : "more") + " copper than " + size.text();
    }

    private static Quantity area(Row row) {
        return row.quantity("size").in(Units.SQUARE_MILLIMETRE);
    }
}
