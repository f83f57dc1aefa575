package loomwright.supply;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Findings and known mistakes of a panel's headroom. */
final class HeadroomChecks {
    private static final String OWN_FEED = "Give the new load its own protected feed from the battery, or take something else off the panel.";

    private HeadroomChecks() {}

    static void addFindings(WorkingBuilder working, Entries entries, Values values, Quantity fuseLimit) {
        Quantity after = values.of(HeadroomFormulas.AFTER);
        against(working, after, entries.quantity("panel-limit"), "the limit of the panel", SupplyFields.entered());
        if (fuseLimit != null) {
            boolean hours = entries.choice("continuous").equals("yes");
            against(
                    working, after, fuseLimit, hours ? "what the feed fuse may carry for 3 h or more" : "the rating of the feed fuse",
                    hours ? PanelHeadroom.loading().source() : SupplyFields.entered());
        }
        if (entries.has("feed-ampacity")) {
            against(working, after, entries.quantity("feed-ampacity"), "the ampacity of the feed", SupplyFields.entered());
        }
        if (fuseLimit != null && entries.has("feed-ampacity")) {
            addProtection(working, entries.quantity("feed-fuse"), entries.quantity("feed-ampacity"));
        }
        if (entries.has("starting-extra")) {
            addStart(working, values);
        }
    }

    private static void against(WorkingBuilder working, Quantity after, Quantity limit, String name, Source source) {
        boolean within = after.base() <= limit.base() * (1 + 1e-9);
        working.finding(new Finding(
                within ? Verdict.PASSED : Verdict.STOP,
                "The feed would carry " + after.text(3) + ", " + (within ? "not more" : "more") + " than " + name + ", " + limit.text(3) + ".",
                after, limit, source, within ? "" : OWN_FEED));
    }

    private static void addProtection(WorkingBuilder working, Quantity rating, Quantity ampacity) {
        Row row = PublishedTables.overcurrentRating().row("33-cfr-below-50-v");
        Quantity share = row.quantity("limit");
        Quantity most = Quantity.of(share.base() * ampacity.in(Units.AMPERE).value(), Units.AMPERE);
        boolean within = rating.base() <= most.base() * (1 + 1e-9);
        working.finding(new Finding(
                within ? Verdict.PASSED : Verdict.STOP,
                "The feed fuse of " + rating.text() + " is " + (within ? "not above" : "above") + " " + share.text() + " of the ampacity, "
                        + most.text(3) + ".",
                rating, most, row.source(), within ? "" : "Fit a smaller fuse or a thicker feed: a fuse protects the conductor behind it."));
    }

    private static void addStart(WorkingBuilder working, Values values) {
        Quantity start = values.of(HeadroomFormulas.AT_START);
        Quantity limit = values.of(HeadroomFormulas.LIMIT);
        boolean within = start.base() <= limit.base() * (1 + 1e-9);
        working.finding(new Finding(
                within ? Verdict.PASSED : Verdict.CAUTION,
                "At a start the feed carries " + start.text(3) + " for a moment, " + (within ? "not more" : "more") + " than the tightest limit, "
                        + limit.text(3) + ".",
                start, limit, SupplyFields.computed(),
                within ? "" : "Compare the moment with the opening time of the feed fuse at that current."));
    }

    static void addSlips(WorkingBuilder working, Entries entries, Values values) {
        boolean loaded = values.of(HeadroomFormulas.NOW).base() > 0;
        if (loaded) {
            working.slip(
                    "new-load-left-out", "current-after", "The new load left out", "The feed carries it as well.", HeadroomFormulas.NEW_LEFT_OUT,
                    values);
            working.slip(
                    "diversity-left-out", "current-after", "Every load added in full", "You said that only a share draws together.",
                    HeadroomFormulas.DIVERSITY_LEFT_OUT, values);
            working.slip(
                    "diversity-on-the-new-load", "current-after", "The share taken of the new load as well",
                    "The new load may draw all it takes at the worst moment.", HeadroomFormulas.DIVERSITY_ON_ALL, values);
            working.slip(
                    "diversity-turned-over", "current-after", "Divided by the share", "Loads that share make the sum smaller.",
                    HeadroomFormulas.DIVERSITY_TURNED_OVER, values);
        }
        if (entries.has("starting-extra")) {
            working.slip(
                    "start-for-steady", "current-after", "The current of a start taken as steady",
                    "A start lasts a moment; fuse and cable are chosen for what lasts.", HeadroomFormulas.START_FOR_STEADY, values);
        }
        working.slip(
                "headroom-before", "headroom-after", "The headroom before the new load", "The new load has used a part of it.",
                HeadroomFormulas.ROOM_BEFORE, values);
        working.slip(
                "limit-of-the-panel-only", "headroom-after", "Only the panel looked at", "The feed gives way before the panel does.",
                HeadroomFormulas.ROOM_OF_PANEL, values);
        working.slip(
                "share-turned-over", "share-of-limit", "The share turned over", "What flows is divided by what may flow.",
                HeadroomFormulas.SHARE_TURNED_OVER, values);
    }
}
