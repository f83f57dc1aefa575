package loomwright.protection;

import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Choices;
import loomwright.worked.Finding;
import loomwright.worked.Refusal;
import loomwright.worked.WorkingBuilder;

/** Between which times one device of a circuit opens at one current, by the gates in print. Nothing is read between gates. */
public final class OpeningTimes {
    private static final Choices<DeviceKind> TIMED = DeviceKind.withTimes();

    private final TimeBracket bracket;

    private OpeningTimes(TimeBracket bracket) {
        this.bracket = bracket;
    }

    /**
     * The times of a device at a current.
     *
     * @param kind the kind of device by its key, such as {@code blade}
     * @return null if print gives no times for this kind and rating
     */
    public static OpeningTimes of(String kind, Quantity rating, Quantity current) {
        DeviceKind device = TIMED.named(kind);
        if (device == null) {
            return null;
        }
        try {
            WorkingBuilder aside = WorkingBuilder.aside(TimeFields.TIME_CURRENT);
            return new OpeningTimes(TimeBracket.of(aside, device, rating, "rating", current, "it"));
        } catch (Refusal noGates) {
            return null;
        }
    }

    /** The time before which it does not open; null if print gives none. */
    public Quantity earliest() {
        return bracket.earliestTime();
    }

    /** The time by which it has opened; null if print gives none. */
    public Quantity latest() {
        return bracket.latestTime();
    }

    /** The time by which it has opened if what is only remembered counts as well: it may stop a design and never pass one; null if there is none. */
    public Quantity soonest() {
        Gate gate = bracket.gates().soonest(bracket.share());
        return gate == null ? null : gate.longest();
    }

    /** Where {@link #soonest} comes from. */
    public Source soonestSource() {
        return bracket.gates().soonest(bracket.share()).basis();
    }

    /** Whether the earliest time decides nothing: from memory, or of one device. */
    public boolean earliestIsWeak() {
        return bracket.earliest() != null && bracket.earliest().isWeak();
    }

    /** Whether the latest time decides nothing: from memory, or of one device. */
    public boolean latestIsWeak() {
        return bracket.latest() != null && bracket.latest().isWeak();
    }

    /** The current as a share of the rating. */
    public Quantity share() {
        return bracket.share();
    }

    /** Where the latest time comes from, or the earliest if there is no latest. */
    public Source source() {
        return bracket.source();
    }

    /** Where the earliest time comes from; null if there is none. */
    public Source earliestSource() {
        return bracket.earliest() == null ? null : bracket.earliest().row().source();
    }

    /** Which of two devices opens first at their current, as far as the gates show it. */
    public static Finding selectivity(OpeningTimes downstream, OpeningTimes upstream) {
        return SelectivityFindings.of(downstream.bracket, upstream.bracket);
    }

    /** A time in words, long ones in hours. */
    public static String words(Quantity time) {
        return TimeFindings.time(time);
    }
}
