package loomwright.placing;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Comparison;
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
        atLeast("The material left at the " + which + " edge", left, wanted, "what is wanted", "Move the row, or take fewer cut-outs.");
    }

    void web(Quantity left) {
        Quantity wanted = entered(CutOutFields.WEB);
        atLeast("The material left between two cut-outs", left, wanted, "what is wanted", "Set the centres further apart.");
    }

    void frames(Row row, double first, double nearest) {
        int number = 1;
        for (Row.Frame frame : row.frames()) {
            int meets = row.meets(frame, first);
            Quantity from = millimetres(frame.from());
            String words = meets == 0
                    ? "Frame " + number + ", which begins at " + from.text(4) + ", is clear of every cut-out and the room behind it."
                    : "Frame " + number + ", which begins at " + from.text(4) + ", is in the way of cut-out " + meets + ".";
            working.finding(new Finding(
                    meets == 0 ? Verdict.PASSED : Verdict.STOP, words, millimetres(first), from, Source.commonPractice(),
                    meets == 0 ? "" : remedy(nearest)));
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
        atLeast(
                "The clear depth behind the panel", clear, needed, "what the part needs",
                "Take a shallower part, a spacer in front, or another place. Never force it against what is behind.");
    }

    private void atLeast(String subject, Quantity left, Quantity wanted, String name, String remedy) {
        working.finding(Comparison.of(subject, left).atLeast(wanted, name, GEOMETRY).exact().otherwise(Verdict.STOP, remedy).finding());
    }

    private Quantity entered(QuantityField field) {
        return entries.quantity(field.key()).in(Units.MILLIMETRE);
    }

    private static Quantity millimetres(double value) {
        return Quantity.of(value, Units.MILLIMETRE);
    }
}
