package loomwright.protection;

import loomwright.conductor.CarryingCapacity;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.Sentence;
import loomwright.worked.Verdict;

/**
 * A device guards everything behind it, up to the next device: each thing there must stand what the device lets pass, its rating.
 *
 * <p>Rating ≤ what the thing may carry; for a conductor its ampacity, corrected for warmth and bundle. Only the rule of 33 CFR 183.455(c)
 * lets the rating be 150 % of an ampacity, and only of one from its own Table 5.
 *
 * @source 33 CFR 183.455(c) where it was chosen; else common practice, the figure of the thing guarded
 */
public final class DeviceRule {
    private final String device;
    private final Quantity rating;

    private DeviceRule(String device, Quantity rating) {
        this.device = device;
        this.rating = rating;
    }

    /**
     * The rule for one device.
     *
     * @param device its name as the start of a sentence, such as {@code Feed fuse F3}
     * @param rating the current it lets pass for as long as it likes
     */
    public static DeviceRule of(String device, Quantity rating) {
        return new DeviceRule(device, rating);
    }

    /**
     * Held against what a thing behind it may carry.
     *
     * @param name the thing, in the middle of a sentence, such as {@code panel P1}
     * @param mayCarry the current it may carry where it is
     * @param source where that comes from
     */
    public Comparison guards(Guarded kind, String name, Quantity mayCarry, Source source) {
        return Comparison.of(device, rating)
                .atMost(mayCarry, "what " + name + " behind it may carry", source)
                .exact()
                .settledBy(kind.missing())
                .otherwise(Verdict.STOP, kind.remedy(name));
    }

    /**
     * Held against a conductor as it lies, by the rule that the reader chose.
     *
     * @param remedy what to do if it does not guard it
     */
    public Finding guardsConductor(String name, CarryingCapacity capacity, RuleSet rule, Sentence remedy) {
        if (rule.shareOf(capacity.isByTableFive()).base() <= 1) {
            return capacity.judgeRating(device + ", before " + name + ": its rating", rating, remedy);
        }
        Comparison held = guardsConductor(name, capacity.value(), capacity.source(), rule, true);
        return (capacity.assumed().isEmpty() ? held : held.assuming(capacity.assumed())).finding();
    }

    /** The most that a device may be rated at before a conductor, by the rule that the reader chose. */
    public static Quantity most(CarryingCapacity capacity, RuleSet rule) {
        return Quantity.ofBase(rule.shareOf(capacity.isByTableFive()).base() * capacity.value().base(), capacity.value().unit());
    }

    /**
     * Held against an ampacity that somebody gives.
     *
     * @param ampacity what it may carry, corrected for warmth and bundle
     * @param table where that comes from
     * @param ownTable whether it was read in Table 5 of 33 CFR, which the share of that rule belongs to
     */
    public Comparison guardsConductor(String name, Quantity ampacity, Source table, RuleSet rule, boolean ownTable) {
        Quantity share = rule.shareOf(ownTable);
        if (share.base() <= 1) {
            return guards(Guarded.CONDUCTOR, name, ampacity, table);
        }
        Quantity most = Quantity.of(share.base() * ampacity.base(), Units.AMPERE);
        return Comparison.of(device, rating)
                .atMost(most, share.text() + " of what " + name + " behind it may carry", rule.source())
                .restingOn(table)
                .exact()
                .otherwise(Verdict.STOP, Guarded.CONDUCTOR.remedy(name));
    }

    /**
     * Not held against a thing, since nobody gave what it may carry.
     *
     * @param key the field that takes the figure
     */
    public Finding unknown(Guarded kind, String name, String key, Source source) {
        return Finding.notKnown(
                device + ", " + rating.text() + ", guards " + name + ", and what that may carry is not given.", rating, source,
                new MissingFigure(key, kind.figure(), kind.where()));
    }
}
