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
 * @param holderRating what its holder may carry, or null
 * @param openingCurrent a current of its curve, or null
 * @param openingTime the time by which it has opened at that current, or null
 * @param holdingCurrent a current of its curve that it holds, or null
 * @param holdingTime how long it holds that at least, or null
 * @param figuresFrom where the figures of its data sheet come from
 * @param clearingIntegral the I²t it lets through until it has broken a short circuit, or null
 */
public record Protection(
        DeviceKind device, Quantity rating, Quantity breakingCapacity, Quantity voltage, Source breakingSource, Quantity coldResistance,
        Quantity holderRating, Quantity clearingIntegral, Quantity openingCurrent, Quantity openingTime, Quantity holdingCurrent, Quantity holdingTime,
        Source figuresFrom)
        implements Figures {

    public static Protection of(Part part) {
        Entries entries = part.entries();
        DeviceKind device = DeviceKind.CHOICES.of(entries.option("device"));
        Quantity cold = entries.quantity("cold-resistance");
        Quantity ohms = cold == null ? Quantity.of(0, Units.MILLIOHM) : cold;
        Quantity capacity = entries.quantity("breaking-capacity");
        Row row = device.breakingRow();
        boolean typed = capacity != null || row == null;
        return new Protection(
                device, entries.quantity("rating"), typed ? capacity : row.quantity("breaking-capacity"),
                typed ? entries.quantity("rated-voltage") : row.quantity("voltage"), !typed ? row.source() : capacity == null ? null : part.figuresFrom(), ohms,
                entries.quantity("holder-rating"), entries.quantity("clearing-i2t"), entries.quantity("opening-current"),
                entries.quantity("opening-time"), entries.quantity("holding-current"), entries.quantity("holding-time"), part.figuresFrom());
    }

    /** With what the data sheet of another says, if that is of the same kind and rating and this one lacks it. A sheet counts before a guess. */
    public Protection filledFrom(Protection alike) {
        if (alike.device != device || alike.rating.base() != rating.base()) {
            return this;
        }
        boolean byGuess = !figuresFrom.standing().mayPass();
        if (byGuess != !alike.figuresFrom.standing().mayPass()) {
            // What one of them is known by is not mixed with what the other is guessed by.
            return byGuess && alike.saysSomething() ? alike : this;
        }
        Protection breaking = alike.saysWhatItBreaks() && !saysWhatItBreaks() ? alike : this;
        return new Protection(
                device, rating, breaking.breakingCapacity, breaking.voltage == null ? alike.voltage : breaking.voltage, breaking.breakingSource,
                coldResistance, holderRating == null ? alike.holderRating : holderRating,
                clearingIntegral == null ? alike.clearingIntegral : clearingIntegral, openingCurrent == null ? alike.openingCurrent : openingCurrent,
                openingTime == null ? alike.openingTime : openingTime, holdingCurrent == null ? alike.holdingCurrent : holdingCurrent,
                holdingTime == null ? alike.holdingTime : holdingTime, figuresFrom);
    }

    private boolean saysWhatItBreaks() {
        return breakingSource != null && breakingSource.document() == Document.COMPUTED;
    }

    private boolean saysSomething() {
        return clearingIntegral != null || openingTime != null || holdingTime != null || saysWhatItBreaks();
    }

    /** Whether it has a figure that another of its kind and rating may lack. */
    public boolean hasFiguresToLend() {
        return saysSomething() || openingCurrent != null || holdingCurrent != null || holderRating != null;
    }

    /** Whether by the point of its curve that was entered it holds a current for a time. */
    public boolean holds(Quantity current, Quantity time) {
        boolean known = holdingCurrent != null && holdingTime != null;
        return known && current.base() <= holdingCurrent.base() && time.base() <= holdingTime.base();
    }

    /** The time by which it has opened at a current, by the point of its curve that was entered; null if none was, or the current is less. */
    public Quantity openedBy(Quantity current) {
        boolean known = openingCurrent != null && openingTime != null && current.base() >= openingCurrent.base();
        return known ? openingTime : null;
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
