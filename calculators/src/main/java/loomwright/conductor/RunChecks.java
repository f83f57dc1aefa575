package loomwright.conductor;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Candidate;
import loomwright.worked.Entries;
import loomwright.worked.Refusal;

/**
 * The checks a size has to pass.
 *
 * @param need the check of the drop
 * @param rules the rule set on ampacity, or null if ampacity is left out
 * @param around what decides the ampacity besides the size
 * @param ownFactor a factor of the reader's own on the ampacity, or null
 * @param fuse the rating of the fuse-link, or null if none is entered
 * @param fuseShare the share of the ampacity that it may be rated at
 */
record RunChecks(RunNeed need, AmpacityRuleSet rules, Surroundings around, Quantity ownFactor, Quantity fuse, Quantity fuseShare) {
    private static final double HAIR = 1e-9;

    static RunChecks of(Entries entries, RunNeed need) {
        AmpacityRuleSet rules = AmpacityRuleSet.of(entries.option("rule-set"));
        Surroundings around = Surroundings.of(entries, entries.quantity("supply-voltage"));
        boolean allowsMore = entries.choice("fuse-rule").equals("33-cfr-183");
        Quantity fuse = entries.quantity("fuse-rating");
        check(rules, fuse, allowsMore, need.current(), around);
        Quantity share = allowsMore ? RunFindings.fuseRule().quantity("limit") : Quantity.of(100, Units.PERCENT);
        return new RunChecks(need, rules, around, entries.quantity("own-factor"), fuse, share);
    }

    private static void check(AmpacityRuleSet rules, Quantity fuse, boolean allowsMore, Quantity current, Surroundings around) {
        if (allowsMore && rules != AmpacityRuleSet.BOAT) {
            throw new Refusal(
                    "fuse-rule",
                    "Rule for the highest rating 150 % belongs to Table 5 of 33 CFR: choose that rule set on ampacity, or at most the "
                            + "ampacity");
        }
        if (allowsMore && around.voltage().base() >= 50) {
            throw new Refusal("fuse-rule", "Rule for the highest rating 150 % holds below 50 V: choose at most the ampacity");
        }
        if (fuse != null && rules == null) {
            throw new Refusal(
                    "fuse-rating", "Rating of the fuse-link or breaker cannot be held against a conductor without ampacity: choose a rule "
                            + "set on ampacity");
        }
        if (fuse != null && fuse.base() < current.base() * (1 - HAIR)) {
            throw new Refusal(
                    "fuse-rating",
                    "Rating of the fuse-link or breaker is " + fuse.text() + ", below the design current of " + current.text()
                            + ": choose the fuse-link first");
        }
    }

    /** What a size may carry. A wire thinner than the rule set lists is not for a run of its own, whatever other tables say. */
    CarryingCapacity capacity(RunSize size) {
        return CarryingCapacity.of(size.ampacitySize(), rules, around).times(ownFactor);
    }

    /** Whether the rule set has an ampacity for a size. */
    boolean isListed(RunSize size) {
        return isListed(capacity(size));
    }

    private boolean isListed(CarryingCapacity capacity) {
        return capacity.isRated() && capacity.source().document().equals(rules.table().source().document());
    }

    boolean passes(RunSize size) {
        return need.isMetBy(size, 1) && carries(size);
    }

    /** Whether a size passes all but the drop. */
    boolean carries(RunSize size) {
        if (rules == null) {
            return true;
        }
        CarryingCapacity capacity = capacity(size);
        return isListed(capacity) && reaches(capacity.value(), need.current()) && (fuse == null || reaches(fuseLimit(capacity), fuse));
    }

    /** The highest rating of a fuse-link on a conductor, without a step. */
    Quantity fuseLimit(CarryingCapacity capacity) {
        return RunFormulas.FUSE_ALLOWED.value(
                Values.of(RunFormulas.FUSE_SHARE, fuseShare).with(AmpacitySymbols.AMPACITY, capacity.value()), Units.AMPERE);
    }

    /** A size with the reason it was taken or left. */
    Candidate judged(RunSize size, boolean taken) {
        StringBuilder text = new StringBuilder();
        for (String fault : faults(size)) {
            text.append(text.length() == 0 ? "" : "; ").append(fault);
        }
        return new Candidate(size.name(), taken, taken ? "the thinnest that passes" : text.toString());
    }

    private List<String> faults(RunSize size) {
        List<String> faults = new ArrayList<>();
        if (!need.isMetBy(size, 1)) {
            faults.add("loses " + need.drop(size).text(3) + ", above " + need.limit().text(3));
        }
        if (rules == null) {
            return faults;
        }
        CarryingCapacity capacity = capacity(size);
        if (!isListed(capacity)) {
            faults.add("no ampacity for it in this rule set, only that it carries less than " + capacity.rated().value().text());
            return faults;
        }
        if (!reaches(capacity.value(), need.current())) {
            faults.add("carries " + capacity.value().text() + ", below " + need.current().text());
        }
        if (fuse != null && !reaches(fuseLimit(capacity), fuse)) {
            faults.add("allows a fuse-link of " + fuseLimit(capacity).text() + ", below " + fuse.text());
        }
        return faults;
    }

    private static boolean reaches(Quantity one, Quantity other) {
        return one.base() >= other.base() * (1 - HAIR);
    }
}
