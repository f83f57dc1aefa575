package loomwright.supply;

import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.Row;
import loomwright.worked.Comparison;
import loomwright.worked.Finding;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/** Findings and known mistakes of Peukert's law. */
final class PeukertChecks {
    private PeukertChecks() {}

    static void addFindings(WorkingBuilder working, Values values, Quantity delivered, Quantity share) {
        Row row = Chemistry.limit("peukert-exponent");
        Quantity low = row.quantity("value", Units.ONE);
        Quantity high = row.quantity("value-to", Units.ONE);
        Quantity exponent = values.of(PeukertFormulas.EXPONENT);
        boolean below = !Comparison.atLeast(exponent, low);
        Comparison range = Comparison.of("The exponent", exponent);
        working.finding((below
                        ? range.atLeast(low, "the least usual for lead-acid", row.source())
                        : range.atMost(high, "the greatest usual for lead-acid", row.source()))
                .exact()
                .otherwise(Verdict.CAUTION, "Take it from the data sheet of your battery.")
                .finding());
        if (share.base() > 1 + 1e-9) {
            working.finding(new Finding(
                    Verdict.CAUTION,
                    "At this small current the law promises " + delivered.text(3) + ", more than the printed capacity.", delivered, null,
                    SupplyFields.computed(), "Plan with no more than the printed capacity."));
        }
    }

    static void addSlips(WorkingBuilder working, Values values, boolean atOneAmpere) {
        if (atOneAmpere) {
            working.slip(
                    "rated-form-for-one-ampere-capacity", "run-time", "The capacity at 1 A put into the form for a rating in hours",
                    "That form needs the capacity and the hours that are printed together.", PeukertFormulas.AS_TIME, values);
            working.slip(
                    "exponent-left-out", "run-time", "The exponent left out", "Without it every current would get the same ampere-hours.",
                    PeukertFormulas.ONE_AMPERE_WITHOUT_EXPONENT, values);
            working.slip(
                    "divided-by-the-exponent", "run-time", "Divided by the exponent", "The exponent is a power, not a factor.",
                    PeukertFormulas.ONE_AMPERE_DIVIDED_BY_EXPONENT, values);
        } else {
            working.slip(
                    "rating-in-the-one-ampere-form", "run-time", "The rating in hours put into the 1 A form",
                    "The form t = C ÷ I to the power k needs the capacity at 1 A, which is larger.", PeukertFormulas.AS_TIME, values);
            working.slip(
                    "exponent-left-out", "run-time", "The exponent left out", "Without it every current would get the same ampere-hours.",
                    PeukertFormulas.EXPONENT_LEFT_OUT, values);
            working.slip(
                    "ratio-turned-over", "run-time", "The ratio divided the wrong way round", "A larger current makes the time shorter.",
                    PeukertFormulas.RATIO_TURNED_OVER, values);
            working.slip(
                    "multiplied-by-the-exponent", "run-time", "Multiplied by the exponent", "The exponent is a power, not a factor.",
                    PeukertFormulas.MULTIPLIED_BY_EXPONENT, values);
        }
        working.slip(
                "depth-left-out", "planning-time", "The usable depth left out", "This empties the battery, which wears it out.",
                PeukertFormulas.DEPTH_LEFT_OUT, values);
    }
}
