package loomwright.protection;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.WorkingBuilder;

/**
 * Whether the device nearer to the load opens first, at one current.
 *
 * <p>Shown if the latest opening time of the downstream device lies below the earliest of the upstream device. Gates that overlap show
 * nothing, either way.
 *
 * @source tables fuse-gates and marine-breaker-trip, row by row
 */
public final class Selectivity implements Calculator {
    private static final Description DESCRIPTION = new Description(
            "selectivity",
            "Which device opens first",
            "Will the fuse-link near the load open before the device near the battery?",
            List.of(
                    "The same current flows through both devices, and through nothing else.",
                    "One current at a time: what is shown at one is not shown at another.",
                    "Both start at room temperature. The upstream device is not warm from other loads."),
            List.of(
                    TimeFields.CURRENT,
                    TimeFields.device("downstream-type", "Downstream device, near the load"),
                    TimeFields.rating("downstream-rating", "Rating of the downstream device"),
                    TimeFields.device("upstream-type", "Upstream device, near the battery"),
                    TimeFields.rating("upstream-rating", "Rating of the upstream device")),
            List.of(
                    new Output("downstream-latest", "Latest opening time of the downstream device", Units.SECOND),
                    new Output("upstream-earliest", "Earliest opening time of the upstream device", Units.SECOND),
                    new Output("downstream-share", "Current as a share of the downstream rating", Units.PERCENT),
                    new Output("upstream-share", "Current as a share of the upstream rating", Units.PERCENT)),
            List.of(new NamedFormula("share", TimeSymbols.SHARE_OF_RATING)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity current = working.convert("Turn the current into amperes", entries.quantity("current"), Units.AMPERE,
                "Ratings are in amperes.");
        TimeBracket downstream = bracket(entries, working, "downstream", current);
        downstream.showLatest(working, "the downstream device");
        TimeBracket upstream = bracket(entries, working, "upstream", current);
        upstream.showEarliest(working, "the upstream device");
        if (downstream.latest() != null) {
            working.result("downstream-latest", downstream.latestTime());
        }
        if (upstream.earliest() != null) {
            working.result("upstream-earliest", upstream.earliestTime());
        }
        working.result("downstream-share", downstream.share());
        working.result("upstream-share", upstream.share());
        SelectivityFindings.add(working, downstream, upstream);
        Finding wrong = RatingOrder.wrong("The downstream device", downstream.rating(), "the upstream one", upstream.rating());
        if (wrong != null) {
            working.finding(wrong);
        }
        addSlips(working, current, downstream, upstream);
    }

    private static TimeBracket bracket(Entries entries, WorkingBuilder working, String place, Quantity current) {
        DeviceKind device = DeviceKind.CHOICES.of(entries.option(place + "-type"));
        return TimeBracket.of(
                working, device, entries.quantity(place + "-rating"), place + "-rating", current, "the " + place + " device");
    }

    private static void addSlips(WorkingBuilder working, Quantity current, TimeBracket downstream, TimeBracket upstream) {
        if (downstream.latest() != null && downstream.earliest() != null) {
            working.slip(
                    "earliest-of-downstream", "downstream-latest", "The earliest time of the downstream device taken",
                    "It may be slow, so its latest time counts.", TimeSymbols.READ_AS_LATEST,
                    Values.of(TimeSymbols.LATEST, downstream.earliestTime()));
        }
        if (upstream.latest() != null && upstream.earliest() != null) {
            working.slip(
                    "latest-of-upstream", "upstream-earliest", "The latest time of the upstream device taken",
                    "It may be quick, so its earliest time counts.", TimeSymbols.READ_AS_EARLIEST,
                    Values.of(TimeSymbols.EARLIEST, upstream.latestTime()));
        }
        TimeSlips.share(working, "downstream-share", Values.of(TimeSymbols.CURRENT, current).with(TimeSymbols.RATING, downstream.rating()));
        TimeSlips.share(working, "upstream-share", Values.of(TimeSymbols.CURRENT, current).with(TimeSymbols.RATING, upstream.rating()));
        String swapped = "Each device is held against its own rating.";
        working.slip(
                "ratings-swapped", "downstream-share", "The rating of the upstream device taken", swapped, TimeSymbols.SHARE_OF_RATING,
                Values.of(TimeSymbols.CURRENT, current).with(TimeSymbols.RATING, upstream.rating()));
        working.slip(
                "ratings-swapped", "upstream-share", "The rating of the downstream device taken", swapped, TimeSymbols.SHARE_OF_RATING,
                Values.of(TimeSymbols.CURRENT, current).with(TimeSymbols.RATING, downstream.rating()));
    }
}
