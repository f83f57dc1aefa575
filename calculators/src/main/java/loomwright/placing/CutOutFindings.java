package loomwright.placing;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Checks of a row of cut-outs. The limits are the reader's own, from the drawings of the parts. */
final class CutOutFindings {
    private static final Source GEOMETRY = Source.of(Document.COMPUTED, "");

    private final WorkingBuilder working;
    private final Entries entries;

    CutOutFindings(WorkingBuilder working, Entries entries) {
        this.working = working;
        this.entries = entries;
    }

    void edge(String which, Quantity left) {
        Quantity wanted = entered(CutOutFields.EDGE);
        add(left.base() >= wanted.base() - 1e-12,
                "At the " + which + " edge " + left.text(4) + " of material are left; " + wanted.text() + " are wanted.",
                left, wanted, GEOMETRY, "Move the row, take fewer cut-outs, or accept less material there.");
    }

    void web(Quantity left) {
        Quantity wanted = entered(CutOutFields.WEB);
        add(left.base() >= wanted.base() - 1e-12,
                "Between two cut-outs " + left.text(4) + " of material are left; " + wanted.text() + " are wanted.",
                left, wanted, GEOMETRY, "Set the centres further apart.");
    }

    void frames(Row row, double first, double nearest) {
        int number = 1;
        for (Row.Frame frame : row.frames()) {
            int meets = row.meets(frame, first);
            Quantity from = millimetres(frame.from());
            String words = meets == 0
                    ? "Frame " + number + ", which begins at " + from.text(4) + ", is clear of every cut-out and the room behind it."
                    : "Frame " + number + ", which begins at " + from.text(4) + ", is in the way of cut-out " + meets + ".";
            add(meets == 0, words, millimetres(first), from, Source.commonPractice(), remedy(nearest));
            number++;
        }
    }

    private static String remedy(double nearest) {
        return Double.isNaN(nearest)
                ? "The row fits nowhere on this panel: take fewer cut-outs, smaller parts or another panel."
                : "The nearest place that fits has its first centre at " + millimetres(nearest).text(4) + ".";
    }

    void depth() {
        Quantity clear = entered(CutOutFields.DEPTH);
        Quantity needed = entered(CutOutFields.NEEDED);
        add(clear.base() >= needed.base(),
                "Behind the panel " + clear.text() + " are clear; the part needs " + needed.text() + ".",
                clear, needed, GEOMETRY, "Take a shallower part, a spacer in front, or another place. Never force it against what is behind.");
    }

    private void add(boolean passed, String words, Quantity figure, Quantity limit, Source source, String remedy) {
        working.finding(new Finding(passed ? Verdict.PASSED : Verdict.STOP, words, figure, limit, source, passed ? "" : remedy));
    }

    private Quantity entered(QuantityField field) {
        return entries.quantity(field.key()).in(Units.MILLIMETRE);
    }

    private static Quantity millimetres(double value) {
        return Quantity.of(value, Units.MILLIMETRE);
    }
}
