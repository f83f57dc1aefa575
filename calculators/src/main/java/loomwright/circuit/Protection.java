package loomwright.circuit;

import loomwright.protection.DeviceKind;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.table.Row;
import loomwright.worked.Entries;

/**
 * A fuse-link or breaker.
 *
 * @param breakingCapacity the current it can break, or null if no one says
 * @param voltage up to what direct voltage, or null
 * @param breakingSource where both come from, or null
 * @param coldResistance its resistance; 0 if none is counted
 */
public record Protection(
        DeviceKind device, Quantity rating, Quantity breakingCapacity, Quantity voltage, Source breakingSource, Quantity coldResistance)
        implements Figures {

    public static Protection of(Part part) {
        Entries entries = part.entries();
        DeviceKind device = DeviceKind.CHOICES.of(entries.option("device"));
        Quantity cold = entries.quantity("cold-resistance");
        Quantity ohms = cold == null ? Quantity.of(0, Units.MILLIOHM) : cold;
        Quantity capacity = entries.quantity("breaking-capacity");
        Row row = device.breakingRow();
        if (capacity != null || row == null) {
            return new Protection(
                    device, entries.quantity("rating"), capacity, entries.quantity("rated-voltage"),
                    capacity == null ? null : Source.of(Document.COMPUTED, "held against the figure you entered"), ohms);
        }
        return new Protection(
                device, entries.quantity("rating"), row.quantity("breaking-capacity"), row.quantity("voltage"), row.source(), ohms);
    }

    /** In the middle of a sentence, such as {@code blade fuse-link of 10 A}. */
    public String words() {
        return device.words() + " of " + rating.text();
    }

    @Override
    public double ohms() {
        return coldResistance.base();
    }

    @Override
    public double leastOhms() {
        return coldResistance.base();
    }

    @Override
    public String inPartsList() {
        return words();
    }

    @Override
    public String onLabel() {
        return rating.text();
    }
}
