package loomwright.conductor;

import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.WorkingBuilder;

/** What is said of a resistance that no one could look up. */
final class ConductorFindings {
    private ConductorFindings() {}

    /** The figure that would settle it. */
    static MissingFigure resistance(String size) {
        return new MissingFigure(
                "resistance-per-length", "resistance of one metre of " + size, "the data sheet of the cable, \u201cresistance\u201d in mΩ/m or Ω/km");
    }

    /** Says so, if the resistance of a row is from memory: then what is worked out with it is not known. */
    static void sayIfFromMemory(WorkingBuilder working, ConductorKind kind, Quantity size, Quantity figure) {
        if (kind.table() == null) {
            return;
        }
        Source source = SizeRow.of(kind.table(), size, kind.sizesIn()).source();
        if (!source.standing().mayPass()) {
            working.finding(Finding.notKnown(
                    "The resistance of " + size.text() + " is " + source.standing().words() + ": no one could look it up.", figure, source,
                    resistance(size.text())));
        }
    }
}
