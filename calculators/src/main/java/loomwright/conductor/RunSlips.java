package loomwright.conductor;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.worked.Entries;
import loomwright.worked.WorkingBuilder;

/** The known mistakes in choosing a size for a run, with the present numbers. */
final class RunSlips {
    private static final String ONE_WAY = "The current comes back through a second conductor, which loses as much again.";
    private static final String TWICE = "The length was already out and back when it was doubled.";

    /** The checks as a hasty reader makes them. */
    private interface Passing {
        boolean passes(RunSize size);
    }

    private RunSlips() {}

    static void add(WorkingBuilder working, Entries entries, List<RunSize> series, RunSize chosen, RunChecks checks) {
        RunNeed need = checks.need();
        limit(working, need, "one-way-length", "The return conductor left out", ONE_WAY, 0.5);
        limit(working, need, "return-counted-twice", "The return conductor counted twice", TWICE, 2);
        feet(working, entries, need);
        size(
                working, series, "one-way-length", "Chosen with the length one way", ONE_WAY,
                size -> need.isMetBy(size, 0.5) && checks.carries(size));
        size(
                working, series, "return-counted-twice", "Chosen with the return counted twice", TWICE,
                size -> need.isMetBy(size, 2) && checks.carries(size));
        if (checks.rules() != null) {
            size(
                    working, series, "ampacity-left-out", "Chosen by drop alone",
                    "The conductor must carry the current and suit its fuse-link as well.",
                    size -> need.isMetBy(size, 1));
            size(
                    working, series, "drop-left-out", "Chosen by ampacity alone",
                    "At 12 V the drop asks for more copper than the ampacity, but for very short runs.", checks::carries);
        }
        if (chosen != null) {
            thinner(working, series, chosen);
        }
    }

    private static void limit(WorkingBuilder working, RunNeed need, String key, String name, String words, double times) {
        if (need.byArea()) {
            working.slip(key, "least-area", name, words, RunFormulas.leastArea(times), need.values());
        } else {
            working.slip(key, "highest-resistance-per-metre", name, words, RunFormulas.highestPerMetre(times), need.values());
        }
    }

    private static void feet(WorkingBuilder working, Entries entries, RunNeed need) {
        boolean feet = entries.quantity("route-length").unit() == Units.FEET;
        Quantity length = need.values().of(Symbols.CIRCUIT_LENGTH);
        double factor = feet ? 1 / 0.3048 : 0.3048;
        Values misread = need.values().with(Symbols.CIRCUIT_LENGTH, Quantity.of(length.value() * factor, length.unit()));
        String output = need.byArea() ? "least-area" : "highest-resistance-per-metre";
        Formula formula = need.byArea() ? RunFormulas.LEAST_AREA : RunFormulas.HIGHEST_PER_METRE;
        working.slip(
                "feet-for-metres", output, feet ? "Feet taken as metres" : "Metres taken as feet",
                "A foot is 0.3048 m, so the two differ by more than three times.", formula, misread);
    }

    /** The first size that would pass by mistake. */
    private static void size(
            WorkingBuilder working, List<RunSize> series, String key, String name, String words, Passing mistaken) {
        for (RunSize size : series) {
            if (mistaken.passes(size)) {
                taken(working, key, name, words, size);
                return;
            }
        }
    }

    private static void thinner(WorkingBuilder working, List<RunSize> series, RunSize chosen) {
        int at = series.indexOf(chosen);
        if (at > 0) {
            taken(
                    working, "rounded-down", "The next thinner size taken", "A size may be rounded up only: the thinner one fails a check.",
                    series.get(at - 1));
        }
    }

    private static void taken(WorkingBuilder working, String key, String name, String words, RunSize size) {
        working.slip(key, size.output(), name, words, RunFormulas.OTHER_SIZE, Values.of(RunFormulas.CHOSEN, size.answer()));
    }
}
