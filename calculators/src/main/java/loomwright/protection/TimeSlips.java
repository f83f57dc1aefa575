package loomwright.protection;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.worked.WorkingBuilder;

/** The known mistakes with opening times, with the present numbers. */
final class TimeSlips {
    private TimeSlips() {}

    static void add(WorkingBuilder working, TimeBracket bracket, Quantity current) {
        share(working, "share-percent", Values.of(TimeSymbols.CURRENT, current).with(TimeSymbols.RATING, bracket.rating()));
        Gate above = bracket.gates().wrongForLatest(bracket.share());
        if (above != null && !bracket.latestIsExact()) {
            working.slip(
                    "gate-above-for-latest", "latest", "The latest time read from the gate above",
                    "At less current than at that gate it may take longer: only a gate at or below the current gives a latest time.",
                    TimeSymbols.READ_AS_LATEST, Values.of(TimeSymbols.LATEST, above.longest()));
        }
        Gate below = bracket.gates().wrongForEarliest(bracket.share());
        if (below != null && !bracket.earliestIsExact()) {
            working.slip(
                    "gate-below-for-earliest", "earliest", "The earliest time read from the gate below",
                    "At more current than at that gate it may open sooner: only a gate at or above the current gives an earliest time.",
                    TimeSymbols.READ_AS_EARLIEST, Values.of(TimeSymbols.EARLIEST, below.shortest()));
        }
        if (bracket.earliest() != null && bracket.latest() != null) {
            String words = "A gate has two times: before the first it must hold, by the second it must have opened.";
            working.slip(
                    "times-swapped", "latest", "The earliest time used in place of the latest", words, TimeSymbols.READ_AS_LATEST,
                    Values.of(TimeSymbols.LATEST, bracket.earliestTime()));
            working.slip(
                    "times-swapped", "earliest", "The latest time used in place of the earliest", words, TimeSymbols.READ_AS_EARLIEST,
                    Values.of(TimeSymbols.EARLIEST, bracket.latestTime()));
        }
    }

    static void share(WorkingBuilder working, String output, Values values) {
        working.slip(
                "share-turned-over", output, "Divided the wrong way round", "It is the current that is held against the rating.",
                TimeSymbols.TURNED_OVER, values);
        if (values.of(TimeSymbols.CURRENT).base() > values.of(TimeSymbols.RATING).base()) {
            working.slip(
                    "excess-only", output, "Only what is above the rating counted",
                    "The gates are printed by the whole current, so 135 % is 35 % too much.", TimeSymbols.EXCESS_ONLY, values);
        }
    }
}
