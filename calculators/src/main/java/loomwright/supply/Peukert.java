package loomwright.supply;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.WorkingBuilder;

/**
 * Peukert's law: a lead-acid battery gives fewer ampere-hours the faster it is emptied.
 *
 * <p>t = H × (C ÷ (I × H))^k with C given for H hours, or t = C1 ÷ I^k with C1 given at 1 A, in h. The two agree when C1 is the capacity at
 * 1 A; they differ widely when the 20 h rating is put in its place. Holds for a steady current at one temperature.
 *
 * @source Peukert's law (Doerffel and Sharkh 2006 review it); exponents from the table battery-limits
 */
public final class Peukert implements Calculator {
    private static final ChoiceField CAPACITY_IS = ChoiceField.of(
            "capacity-is",
            "The capacity is given",
            "The label of a 12 V battery names its hours: 100 Ah (20 h) or C20. A capacity at 1 A is rarely printed.",
            new Option("rated-hours", "for the hours below"),
            new Option("one-ampere", "at 1 A"));

    private static final QuantityField RATED_TIME = QuantityField.of(
                    "rated-time", "Hours of the rating", "20 h for most lead-acid batteries.", 0.5, 240, Units.HOUR)
            .usually("20 h");

    private static final QuantityField EXPONENT = QuantityField.of(
            "exponent", "Peukert exponent", "From the data sheet. Lead-acid usually has 1.1 to 1.3.", 1, 2, Units.ONE);

    private static final Description DESCRIPTION = new Description(
            "peukert",
            "Peukert's law",
            "How long does a lead-acid battery really last at this current?",
            List.of(
                    "A lead-acid battery, full at the start, emptied at one steady current and at the temperature of its rating.",
                    "The exponent is the same at every current.",
                    "The time is until the battery is empty; a plan uses a part of it."),
            List.of(CAPACITY_IS, SupplyFields.CAPACITY, RATED_TIME, EXPONENT, SupplyFields.LOAD_CURRENT, UsableDepth.FIELD),
            List.of(
                    new Output("run-time", "Time until it is empty", Units.HOUR),
                    new Output("other-form-time", "Time by the other form, which does not fit this capacity", Units.HOUR),
                    new Output("delivered-charge", "Ampere-hours delivered", Units.AMPERE_HOUR),
                    new Output("delivered-share", "Share of the printed capacity", Units.PERCENT),
                    new Output("planning-time", "Time to the usable depth", Units.HOUR),
                    new Output("rated-current", "Current of the rating", Units.AMPERE),
                    new Output("one-ampere-capacity", "Capacity at 1 A", Units.AMPERE_HOUR)),
            List.of(
                    new NamedFormula("rated-hours", PeukertFormulas.BY_RATED_HOURS),
                    new NamedFormula("one-ampere", PeukertFormulas.BY_ONE_AMPERE),
                    new NamedFormula("one-ampere-misused", PeukertFormulas.ONE_AMPERE_MISUSED),
                    new NamedFormula("one-ampere-capacity", PeukertFormulas.TO_ONE_AMPERE),
                    new NamedFormula("delivered-charge", PeukertFormulas.DELIVERED_CHARGE),
                    new NamedFormula("planning-time", PeukertFormulas.PLANNED_TIME)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity current = working.convert(
                "Turn the current into amperes", entries.quantity("load-current"), Units.AMPERE, "Ampere-hours are amperes times hours.");
        boolean atOneAmpere = entries.choice("capacity-is").equals("one-ampere");
        Values values = Values.of(PeukertFormulas.EXPONENT, entries.quantity("exponent"))
                .with(Symbols.CURRENT, current)
                .with(PeukertFormulas.RATED_TIME, entries.quantity("rated-time"))
                .with(atOneAmpere ? PeukertFormulas.ONE_AMPERE_CAPACITY : Symbols.CAPACITY, entries.quantity("capacity"));
        values = atOneAmpere ? byOneAmpere(working, values) : byRatedHours(working, values);
        Quantity delivered = working.compute(
                "Multiply current and time", PeukertFormulas.DELIVERED_CHARGE, values, Units.AMPERE_HOUR,
                "These ampere-hours come out; the rest of the printed capacity stays behind at this current.");
        Quantity share = working.compute(
                "Compare with the printed capacity",
                atOneAmpere ? PeukertFormulas.SHARE_OF_ONE_AMPERE : PeukertFormulas.SHARE_OF_RATING,
                values.with(PeukertFormulas.DELIVERED, delivered), Units.PERCENT, "At the rated current this is 100 %.");
        values = values.with(Symbols.DEPTH, UsableDepth.of(entries, working, Chemistry.LEAD_ACID));
        Quantity planned = working.compute(
                "Take the usable part of the time", PeukertFormulas.PLANNED_TIME, values, Units.HOUR,
                "At a steady current, half of the time takes half of what the battery gives.");
        working.result("run-time", values.of(PeukertFormulas.TIME));
        working.result("other-form-time", values.of(PeukertFormulas.OTHER_TIME));
        working.result("delivered-charge", delivered);
        working.result("delivered-share", share);
        working.result("planning-time", planned);
        if (!atOneAmpere) {
            working.result("rated-current", values.of(PeukertFormulas.RATED_CURRENT));
        }
        working.result("one-ampere-capacity", values.of(PeukertFormulas.ONE_AMPERE_CAPACITY));
        PeukertChecks.addFindings(working, values, delivered, share);
        PeukertChecks.addSlips(working, values, atOneAmpere);
        working.next(
                "panel-yield", "How long does my panel need to put it back?", "deficit", delivered.text(), "chemistry", "lead-acid");
    }

    private static Values byRatedHours(WorkingBuilder working, Values given) {
        Quantity rated = working.compute(
                "Find the current of the rating", PeukertFormulas.CURRENT_OF_RATING, given, Units.AMPERE,
                "At this current the battery gives its printed capacity.");
        Values values = given.with(PeukertFormulas.RATED_CURRENT, rated);
        Quantity time = working.compute(
                "Put the numbers into the form for a rating in hours", PeukertFormulas.BY_RATED_HOURS, values, Units.HOUR,
                "This form takes the capacity and the hours that are printed together.", source());
        Quantity oneAmpere = working.compute(
                "Find the capacity at 1 A", PeukertFormulas.TO_ONE_AMPERE, values, Units.AMPERE_HOUR,
                "The other form, t = C ÷ I to the power k, needs this capacity and no other.");
        working.compute(
                "Put that capacity into the 1 A form", PeukertFormulas.BY_ONE_AMPERE,
                values.with(PeukertFormulas.ONE_AMPERE_CAPACITY, oneAmpere), Units.HOUR,
                "The two forms agree, as they must: they say the same of two different capacities.");
        Quantity other = working.compute(
                "See what the 1 A form makes of the printed capacity", PeukertFormulas.ONE_AMPERE_MISUSED, values, Units.HOUR,
                "Most printed examples do this. It fails even at the rated current, where the answer must be the rated hours.");
        return values.with(PeukertFormulas.TIME, time)
                .with(PeukertFormulas.OTHER_TIME, other)
                .with(PeukertFormulas.ONE_AMPERE_CAPACITY, oneAmpere);
    }

    private static Values byOneAmpere(WorkingBuilder working, Values values) {
        Quantity time = working.compute(
                "Put the numbers into the 1 A form", PeukertFormulas.BY_ONE_AMPERE, values, Units.HOUR,
                "This form takes the capacity at 1 A. With a 20 h rating it would be wrong.");
        Quantity other = working.compute(
                "See what the form for a rating in hours makes of it", PeukertFormulas.RATED_HOURS_MISUSED, values, Units.HOUR,
                "It would take the capacity at 1 A for one given over those hours.");
        return values.with(PeukertFormulas.TIME, time).with(PeukertFormulas.OTHER_TIME, other);
    }

    private static Source source() {
        return Source.of(Documents.doerffelSharkh2006(), "");
    }
}
