package loomwright.supply;

import loomwright.formula.Values;
import loomwright.protection.DeviceRule;
import loomwright.protection.Guarded;
import loomwright.protection.Holding;
import loomwright.protection.RuleSet;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.worked.Comparison;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
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
                    working, after, fuseLimit, hours ? "what the feed's device may carry for 3 h or more" : "the rating of the feed's device",
                    hours ? Holding.row(HeadroomFields.device(entries)).source() : SupplyFields.entered());
            guards(working, entries);
        } else {
            working.finding(Finding.notKnown(
                    "What protects the feed is not given, so nothing says that it guards feed and panel.", after, SupplyFields.entered(),
                    new MissingFigure("feed-fuse", "rating of the feed\u2019s device", "the fuse-link or breaker between battery and panel")));
        }
        if (entries.has("feed-ampacity")) {
            against(working, after, entries.quantity("feed-ampacity"), "the ampacity of the feed", SupplyFields.entered());
        }
        if (entries.has("starting-extra")) {
            addStart(working, values);
        }
    }

    private static void against(WorkingBuilder working, Quantity after, Quantity limit, String name, Source source) {
        working.finding(Comparison.of("What the feed would carry", after)
                .atMost(limit, name, source)
                .otherwise(Verdict.STOP, OWN_FEED)
                .finding());
    }

    /** The feed fuse guards the feed and the panel behind it. */
    private static void guards(WorkingBuilder working, Entries entries) {
        DeviceRule fuse = DeviceRule.of("The feed's device", entries.quantity("feed-fuse").in(Units.AMPERE));
        working.finding(fuse.guards(Guarded.PANEL, "the panel", entries.quantity("panel-limit").in(Units.AMPERE), SupplyFields.entered()).finding());
        if (!entries.has("feed-ampacity")) {
            working.finding(fuse.unknown(Guarded.CONDUCTOR, "the feed", "feed-ampacity", SupplyFields.entered()));
            return;
        }
        RuleSet rule = RuleSet.of(entries.option("fuse-rule"));
        Comparison feed = fuse.guardsConductor("the feed", entries.quantity("feed-ampacity").in(Units.AMPERE), SupplyFields.entered(), rule, true);
        working.finding((rule == RuleSet.US_33_CFR ? feed.assuming("an ampacity that was read in Table 5 of 33 CFR") : feed).finding());
    }

    private static void addStart(WorkingBuilder working, Values values) {
        working.finding(Comparison.of("What the feed carries for a moment at a start", values.of(HeadroomFormulas.AT_START))
                .atMost(values.of(HeadroomFormulas.LIMIT), "the tightest limit", SupplyFields.computed())
                .exact()
                .otherwise(Verdict.CAUTION, "Compare the moment with the opening time of the feed's device at that current.")
                .finding());
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
                "share-turned-over", "share-of-limit", "Divided the wrong way round", "What flows is divided by what may flow.",
                HeadroomFormulas.SHARE_TURNED_OVER, values);
    }
}
