package loomwright.supply;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.protection.DeviceKind;
import loomwright.protection.Holding;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Candidate;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/**
 * What a fuse panel and its feed carry now, and with a new load.
 *
 * <p>after = share × sum of the present loads + new load, in A, held against the tightest of the panel's limit, the feed fuse and the
 * ampacity of the feed. Holds for steady currents.
 *
 * @source continuous load: {@link Holding}; fuse against panel and conductor: {@link loomwright.protection.DeviceRule}
 */
public final class PanelHeadroom implements Calculator {
    @Override
    public Description description() {
        return HeadroomFields.DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity added = working.convert(
                "Turn the new current into amperes", entries.quantity("new-current"), Units.AMPERE, "Every other current is in amperes.");
        Values values = present(entries, working)
                .with(HeadroomFormulas.NEW, added)
                .with(HeadroomFormulas.PANEL, entries.quantity("panel-limit"));
        Quantity after = working.compute(
                "Add the new load", HeadroomFormulas.AFTERWARDS, values, Units.AMPERE, "The feed carries the sum of what draws together.");
        Quantity fuseLimit = fuseLimit(entries, working);
        Quantity limit = tightest(entries, working, fuseLimit);
        values = values.with(HeadroomFormulas.AFTER, after).with(HeadroomFormulas.LIMIT, limit);
        Quantity roomNow = working.compute(
                "Take the current now from the limit", HeadroomFormulas.ROOM_NOW, values, Units.AMPERE, "This much was left before.");
        Quantity room = working.compute(
                "Take the current afterwards from the limit", HeadroomFormulas.ROOM_AFTERWARDS, values, Units.AMPERE,
                "What is below zero is too much.");
        Quantity share = working.compute(
                "See what share of the limit that is", HeadroomFormulas.SHARE_IN_USE, values, Units.PERCENT, "100 % is the limit.");
        working.result("current-after", after);
        working.result("headroom-after", room);
        working.result("current-now", values.of(HeadroomFormulas.NOW));
        working.result("headroom-now", roomNow);
        working.result("tightest-limit", limit);
        working.result("share-of-limit", share);
        values = atStart(entries, working, values);
        HeadroomChecks.addFindings(working, entries, values, fuseLimit);
        HeadroomChecks.addSlips(working, entries, values);
        addNext(working, added, room);
    }

    private static Values present(Entries entries, WorkingBuilder working) {
        Values values = Values.of(HeadroomFormulas.DIVERSITY, entries.quantity("diversity"));
        List<Symbol> ways = new ArrayList<>();
        for (int number = 1; number <= HeadroomFields.WAYS; number++) {
            if (entries.has(HeadroomFields.way(number))) {
                String name = HeadroomFields.number(number);
                Symbol way = Symbol.of("I", name, "current of way " + name, Dimension.CURRENT);
                ways.add(way);
                values = values.with(way, entries.quantity(HeadroomFields.way(number)));
            }
        }
        if (ways.isEmpty()) {
            Quantity nothing = Quantity.of(0, Units.AMPERE);
            return values.with(HeadroomFormulas.PRESENT, nothing).with(HeadroomFormulas.NOW, nothing);
        }
        Quantity sum = working.compute(
                "Add up the present loads", HeadroomFormulas.sum(ways), values, Units.AMPERE, "All of them come through the one feed.");
        values = values.with(HeadroomFormulas.PRESENT, sum);
        Quantity now = working.compute(
                "Take the share that draws together", HeadroomFormulas.NOW_TOGETHER, values, Units.AMPERE,
                "Loads that are never on at the same time need not be added.");
        return values.with(HeadroomFormulas.NOW, now);
    }

    /** What the feed fuse may carry for as long as it takes, or null if no fuse was entered. */
    private static Quantity fuseLimit(Entries entries, WorkingBuilder working) {
        if (!entries.has("feed-fuse")) {
            return null;
        }
        Quantity rating = entries.quantity("feed-fuse");
        if (entries.choice("continuous").equals("no")) {
            return rating;
        }
        DeviceKind kind = HeadroomFields.device(entries);
        Row row = Holding.row(kind);
        Quantity share = working.lookUp(
                "Read how much of its rating it may carry for 3 h or more", HeadroomFormulas.LOADING, row, Holding.column(kind),
                kind.isBreaker() ? "A breaker trips where a fuse-link of the same number still holds." : "It warms for hours, and opens early.");
        Values values = Values.of(HeadroomFormulas.LOADING, share).with(HeadroomFormulas.FUSE, rating);
        return working.compute(
                "Take that share of the rating", HeadroomFormulas.FUSE_FOR_HOURS, values, Units.AMPERE,
                "More would warm it towards opening.", row.source());
    }

    private static Quantity tightest(Entries entries, WorkingBuilder working, Quantity fuseLimit) {
        Quantity panel = entries.quantity("panel-limit").in(Units.AMPERE);
        Quantity conductor = entries.has("feed-ampacity") ? entries.quantity("feed-ampacity").in(Units.AMPERE) : null;
        Quantity least = smaller(smaller(panel, fuseLimit), conductor);
        List<Candidate> candidates = new ArrayList<>();
        addCandidate(candidates, panel, "limit of the panel", least);
        addCandidate(candidates, fuseLimit, "device of the feed", least);
        addCandidate(candidates, conductor, "ampacity of the feed", least);
        return working.choose(
                "Take the tightest limit", candidates, least, "The weakest part decides.", SupplyFields.entered());
    }

    private static void addCandidate(List<Candidate> candidates, Quantity limit, String reason, Quantity least) {
        if (limit != null) {
            candidates.add(new Candidate(limit.text(), limit.base() == least.base(), reason));
        }
    }

    private static Quantity smaller(Quantity one, Quantity other) {
        if (other == null) {
            return one;
        }
        return other.base() < one.base() ? other.in(Units.AMPERE) : one;
    }

    private static Values atStart(Entries entries, WorkingBuilder working, Values values) {
        if (!entries.has("starting-extra")) {
            return values;
        }
        Values with = values.with(HeadroomFormulas.START, entries.quantity("starting-extra"));
        Quantity start = working.compute(
                "Add the extra current of a start", HeadroomFormulas.CURRENT_AT_START, with, Units.AMPERE,
                "A motor takes more at its start, while everything else may be on.");
        working.result("current-at-start", start);
        return with.with(HeadroomFormulas.AT_START, start);
    }

    private static void addNext(WorkingBuilder working, Quantity added, Quantity room) {
        String current = added.in(Units.AMPERE).text();
        working.next(
                "voltage-drop", room.value() >= 0 ? "What does the cable to the new load lose?" : "What does a feed of its own lose?",
                "current", current);
        working.next("fuse-choice", "Which fuse-link protects the new circuit?", "design-current", current);
    }
}
