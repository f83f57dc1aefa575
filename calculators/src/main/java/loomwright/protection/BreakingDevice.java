package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.MissingFigure;
import loomwright.worked.WorkingBuilder;

/**
 * A device that has to break a fault current.
 *
 * @param words what it is, in the middle of a sentence
 * @param capacity the current it can break
 * @param voltage up to what voltage
 * @param source where both come from
 */
record BreakingDevice(String words, Quantity capacity, Quantity voltage, Source source) {
    static BreakingDevice of(Entries entries, WorkingBuilder working) {
        DeviceKind kind = DeviceKind.CHOICES.find(entries.option("device"));
        if (kind == null) {
            Quantity capacity = working.convert(
                    "Turn the breaking capacity into amperes", entries.required(BreakingFields.CAPACITY), Units.AMPERE,
                    "The current is in amperes.");
            return new BreakingDevice(
                    "the device entered", capacity, entries.required(BreakingFields.RATED_VOLTAGE),
                    Source.of(Document.COMPUTED, "from the figures entered"));
        }
        Row row = kind.breakingRow();
        Quantity capacity = working.lookUp(
                "Read the breaking capacity of the device", BreakingFormulas.CAPACITY, row, "breaking-capacity",
                "More current than that may go on as an arc inside the device, or burst it.");
        return new BreakingDevice("a " + kind.words(), capacity, row.quantity("voltage"), row.source());
    }

    /** The figure that settles whether it can break the current. */
    MissingFigure missingCapacity() {
        return new MissingFigure(
                BreakingFields.CAPACITY.key(), "breaking capacity of " + words,
                "its data sheet, as breaking capacity, interrupting rating or AIC for direct current");
    }

    /** The figure that settles whether the voltage suits it. */
    MissingFigure missingVoltage() {
        return new MissingFigure(BreakingFields.RATED_VOLTAGE.key(), "direct voltage of " + words, "its data sheet, beside the breaking capacity");
    }
}
