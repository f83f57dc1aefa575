package loomwright.proving;

import java.util.List;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Calculator;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.joint.JointRule;
import loomwright.worked.Comparison;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * Resistance between supply and a point from two readings at two currents, less what ought to be there.
 *
 * <p>R = (U_1 − U_2) ÷ (I_2 − I_1). Everything between is in it: battery, conductors, joints, fuse-links. Take the readings within seconds
 * of each other, so that the battery's own voltage does not move.
 *
 * @source Ohm's law for a source with internal resistance
 */
public final class HiddenResistance implements Calculator {
    private static final QuantityField LIGHT_VOLTAGE = voltage("voltage-light", "First reading, little or no load");
    private static final QuantityField LIGHT_CURRENT = QuantityField.of(
                    "current-light", "Current of the first reading", "0 A if nothing was on.", 0, 500, Units.AMPERE, Units.MILLIAMPERE)
            .usually("0 A");
    private static final QuantityField HEAVY_VOLTAGE = voltage("voltage-heavy", "Second reading, heavy load");
    private static final QuantityField HEAVY_CURRENT = QuantityField.of(
            "current-heavy", "Current of the second reading", "From a clamp meter at the same moment.", 0.01, 1000, Units.AMPERE,
            Units.MILLIAMPERE);
    private static final QuantityField KNOWN = QuantityField.of(
                    "known-resistance",
                    "Resistance that ought to be there",
                    "Conductors out and back, fuse-links, and the battery's own resistance if you read at the far end.",
                    0, 10_000, Units.MILLIOHM, Units.OHM)
            .usually("0 mΩ");
    private static final QuantityField DESIGN = QuantityField.of(
            "design-current", "Design current", "The most that will flow for longer than a moment.", 0.01, 1000, Units.AMPERE);

    private static final Description DESCRIPTION = new Description(
            "hidden-resistance",
            "Hidden resistance from two readings",
            "Is there resistance in my circuit that should not be there?",
            List.of(
                    "Both readings are taken at the same point, within seconds, so that the battery's own voltage does not move.",
                    "What is found is the sum of everything between the battery's chemistry and the point."),
            List.of(LIGHT_VOLTAGE, LIGHT_CURRENT, HEAVY_VOLTAGE, HEAVY_CURRENT, KNOWN, DESIGN),
            List.of(
                    new Output("found-resistance", "Resistance found", Units.OHM),
                    new Output("hidden-resistance", "Hidden resistance", Units.MILLIOHM),
                    new Output("hidden-drop", "Drop it makes at the design current", Units.VOLT),
                    new Output("hidden-heat", "Heat it makes at the design current", Units.WATT)),
            List.of(
                    new NamedFormula("found-resistance", ReadingSymbols.FROM_TWO_READINGS),
                    new NamedFormula("hidden-resistance", ReadingSymbols.LESS_KNOWN),
                    new NamedFormula("hidden-heat", ReadingSymbols.HEAT)));

    private static QuantityField voltage(String key, String label) {
        return QuantityField.of(key, label, "At the same point both times.", 0, 60, Units.VOLT);
    }

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Values values = readings(entries);
        Quantity found = working.compute(
                "Divide the change of voltage by the change of current", ReadingSymbols.FROM_TWO_READINGS, values, Units.OHM,
                "The more resistance there is, the more the voltage falls for each ampere.");
        values = values.with(ReadingSymbols.FOUND, found);
        Quantity hidden = working.compute(
                "Take away what ought to be there", ReadingSymbols.LESS_KNOWN, values, Units.MILLIOHM, "What is left has no business there.");
        values = values.with(ReadingSymbols.HIDDEN, hidden);
        Quantity drop = working.compute(
                "Find its drop at the design current", ReadingSymbols.DROP, values, Units.VOLT, "That is what the load will miss.");
        Quantity heat = working.compute(
                "Find its heat at the design current", ReadingSymbols.HEAT, values, Units.WATT, "In one bad joint all of it is in one place.");
        working.result("found-resistance", found);
        working.result("hidden-resistance", hidden);
        working.result("hidden-drop", drop);
        working.result("hidden-heat", heat);
        addFindings(working, values, heat);
        working.slip(
                "first-current-ignored", "found-resistance", "The current of the first reading left out",
                "Some current may flow already at the first reading: take the change.", ReadingSymbols.SLIP_FIRST_CURRENT_IGNORED, values);
        working.slip(
                "second-reading-only", "found-resistance", "Only the second reading used",
                "That gives the resistance of the load as seen from the point, not what lies before it.",
                ReadingSymbols.SLIP_SECOND_READING_ONLY, values);
        working.slip(
                "all-taken-for-hidden", "hidden-resistance", "What ought to be there not taken away",
                "Conductors and battery have resistance of their own.", ReadingSymbols.SLIP_ALL_HIDDEN, values);
        working.slip(
                "not-squared", "hidden-heat", "The current not squared",
                "Heat grows with the square of the current.", ReadingSymbols.SLIP_NOT_SQUARED, values);
    }

    private static Values readings(Entries entries) {
        Quantity light = entries.quantity(LIGHT_CURRENT.key()).in(Units.AMPERE);
        Quantity heavy = entries.quantity(HEAVY_CURRENT.key()).in(Units.AMPERE);
        if (heavy.base() <= light.base()) {
            throw new Refusal(
                    HEAVY_CURRENT.key(),
                    "Current of the second reading must be more than that of the first, " + light.text() + ": switch on a heavier load");
        }
        Quantity first = entries.quantity(LIGHT_VOLTAGE.key());
        Quantity second = entries.quantity(HEAVY_VOLTAGE.key());
        if (second.base() > first.base()) {
            throw new Refusal(
                    HEAVY_VOLTAGE.key(),
                    "Second reading is higher than the first, " + first.text()
                            + ", although more current flows: a charger may be on, so switch it off and read both again");
        }
        return Values.of(ReadingSymbols.LIGHT_CURRENT, light)
                .with(ReadingSymbols.HEAVY_CURRENT, heavy)
                .with(ReadingSymbols.LIGHT_VOLTAGE, first)
                .with(ReadingSymbols.HEAVY_VOLTAGE, second)
                .with(ReadingSymbols.KNOWN, entries.quantity(KNOWN.key()))
                .with(ReadingSymbols.DESIGN_CURRENT, entries.quantity(DESIGN.key()));
    }

    private static void addFindings(WorkingBuilder working, Values values, Quantity heat) {
        Source readings = Source.of(Document.COMPUTED, "");
        working.finding(Comparison.of("The resistance found", values.of(ReadingSymbols.FOUND))
                .atMost(values.of(ReadingSymbols.KNOWN), "what ought to be there", readings)
                .exact()
                .otherwise(Verdict.CAUTION, "Feel along the circuit after half an hour: warm is a warning, hot is a stop. Measure across each joint.")
                .finding());
        if (heat.base() > 0 && values.of(ReadingSymbols.HIDDEN).base() > 0) {
            working.finding(JointRule.heat("The heat at the design current, if all of it is in one joint", heat).finding());
        }
    }
}
