package loomwright.proving;

import java.util.List;
import loomwright.conductor.CapacitySteps;
import loomwright.conductor.ConductorKind;
import loomwright.conductor.ConductorRun;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Document;
import loomwright.source.Source;
import loomwright.worked.Calculator;
import loomwright.worked.Comparison;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * What the meter should read at a point while the load is on, and whether a reading agrees within what the meter may be wrong by.
 *
 * <p>U_e = U_s − I × (R_c + R_p). Holds for steady current; the supply voltage is read at the battery terminals with the same load on.
 *
 * @source Ohm's law; table of the kind of conductor chosen; accuracy of the meter from its data sheet
 */
public final class ExpectedReading implements Calculator {
    private static final ConductorRun RUN = ConductorRun.only();
    private static final QuantityField AT_SUPPLY = QuantityField.of(
            "voltage-at-supply", "Voltage at the battery, load on", "Read it at the battery terminals while the load runs.", 5, 60, Units.VOLT);
    private static final QuantityField CURRENT = QuantityField.of(
            "current", "Current while measuring", "From a clamp meter, or from the load's label if it is steady.", 0.01, 500, Units.AMPERE,
            Units.MILLIAMPERE);
    private static final QuantityField PARTS = QuantityField.of(
                    "parts-resistance",
                    "Fuse-links, switches and joints on the way",
                    "All together, from their data sheets. A sound blade fuse-link of 40 A has 1.4 mΩ cold, a small one more.",
                    0, 1000, Units.MILLIOHM)
            .usually("0 mΩ");
    private static final QuantityField MEASURED = QuantityField.of(
                    "measured", "What the meter read", "At the point, with the load on. Leave it empty to see what to expect.", 0, 60, Units.VOLT)
            .optional();
    private static final QuantityField ACCURACY = QuantityField.of(
                    "meter-accuracy", "Accuracy of the meter", "The share of the reading in its data sheet: 0.5 % is usual.", 0, 10, Units.PERCENT)
            .usually("0.5 %");
    private static final QuantityField RESOLUTION = QuantityField.of(
                    "meter-digits", "Digits the meter may be out by", "Last digit times the number in its data sheet, such as 2 × 0.01 V.", 0, 1,
                    Units.VOLT, Units.MILLIVOLT)
            .usually("0.02 V");

    /** As cold as a test finds it: colder copper lets a higher reading be expected, so that a bad joint shows. */
    private static final QuantityField COPPER = ConductorRun.temperatureField().usually("20 °C");

    private static final Description DESCRIPTION = new Description(
            "expected-reading",
            "What the meter should read",
            "What should my meter read here with the load on?",
            List.of(
                    "The load is on and steady, and both voltages are read while it runs.",
                    "The tables give the highest resistance allowed, so a sound run reads a little higher than expected."),
            List.of(
                    AT_SUPPLY,
                    CURRENT,
                    ConductorRun.conductorField(),
                    RUN.sizeField(),
                    RUN.routeLengthField(),
                    COPPER,
                    PARTS,
                    MEASURED,
                    ACCURACY,
                    RESOLUTION),
            List.of(
                    new Output("expected", "Expected reading", Units.VOLT),
                    new Output("uncertainty", "What the meter may be wrong by", Units.VOLT),
                    new Output("difference", "Expected less measured", Units.VOLT),
                    new Output("hidden-resistance", "Resistance that would explain it", Units.MILLIOHM)),
            List.of(
                    new NamedFormula("expected", ReadingSymbols.EXPECTED_READING),
                    new NamedFormula("uncertainty", ReadingSymbols.METER_UNCERTAINTY),
                    new NamedFormula("hidden-resistance", ReadingSymbols.HIDDEN_FROM_DIFFERENCE)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity conductors = RUN.resistance(entries, working, RUN.perMetre(entries, working));
        Values values = Values.of(ReadingSymbols.AT_SUPPLY, entries.quantity(AT_SUPPLY.key()))
                .with(ReadingSymbols.CURRENT, working.convert(
                        "Turn the current into amperes", entries.quantity(CURRENT.key()), Units.AMPERE, "Volts are amperes times ohms."))
                .with(ReadingSymbols.CONDUCTORS, conductors)
                .with(ReadingSymbols.PARTS, entries.quantity(PARTS.key()))
                .with(ReadingSymbols.ACCURACY, entries.quantity(ACCURACY.key()))
                .with(ReadingSymbols.RESOLUTION, entries.quantity(RESOLUTION.key()).in(Units.VOLT));
        Quantity expected = working.compute(
                "Take what is lost on the way from the voltage at the battery", ReadingSymbols.EXPECTED_READING, values, Units.VOLT,
                "The meter sees what is left.");
        if (expected.base() <= 0) {
            throw new Refusal(
                    CURRENT.key(),
                    "Current while measuring cannot flow through this run: it would lose more than the battery has. Check current, size and "
                            + "length");
        }
        values = values.with(ReadingSymbols.EXPECTED, expected);
        Quantity uncertainty = working.compute(
                "See what the meter itself may be wrong by", ReadingSymbols.METER_UNCERTAINTY, values, Units.VOLT,
                "Two readings that differ by less than this are the same.");
        CapacitySteps.overload(
                working, ConductorKind.of(entries.option(ConductorRun.conductorField().key())), entries.quantity(RUN.sizeField().key()), values.of(ReadingSymbols.CURRENT));
        working.result("expected", expected);
        working.result("uncertainty", uncertainty);
        if (entries.has(MEASURED.key())) {
            compare(working, values.with(ReadingSymbols.UNCERTAINTY, uncertainty), entries.quantity(MEASURED.key()));
        }
        working.slip(
                "forgot-the-return", "expected", "The return conductor left out",
                "The current also comes back, through a conductor that loses as much again.", ReadingSymbols.SLIP_ONE_WAY, values);
        working.slip(
                "parts-forgotten", "expected", "Fuse-links, switches and joints left out",
                "Each of them takes a little of the voltage.", ReadingSymbols.SLIP_PARTS_FORGOTTEN, values);
        working.slip(
                "drop-added", "expected", "The drop added instead of taken away",
                "A reading at the far end is lower than at the battery.", ReadingSymbols.SLIP_DROP_ADDED, values);
    }

    private static void compare(WorkingBuilder working, Values values, Quantity measured) {
        Values both = values.with(ReadingSymbols.MEASURED, measured);
        Quantity difference = working.compute(
                "Take the reading from the expected one", ReadingSymbols.READING_DIFFERENCE, both, Units.VOLT,
                "What is missing was lost somewhere.");
        Quantity hidden = working.compute(
                "Divide by the current", ReadingSymbols.HIDDEN_FROM_DIFFERENCE, both.with(ReadingSymbols.DIFFERENCE, difference),
                Units.MILLIOHM, "Ohm's law gives the resistance that would explain the difference.");
        working.result("difference", difference);
        working.result("hidden-resistance", hidden);
        Quantity uncertainty = values.of(ReadingSymbols.UNCERTAINTY);
        boolean low = difference.base() > 0;
        Comparison comparison = Comparison.of(
                        low ? "What the reading is too low by" : "What the reading is higher by than it can be",
                        Quantity.ofBase(Math.abs(difference.base()), Units.VOLT))
                .atMost(uncertainty, "what the meter may be wrong by", Source.of(Document.COMPUTED, ""))
                .exact()
                .otherwise(
                        Verdict.CAUTION,
                        low
                                ? "Go along the circuit joint by joint with the load on; the one with the most millivolts is the fault."
                                : "Less current flows than you think, or a figure entered is not that of this run: measure the current, and check size and length.");
        working.finding(comparison.finding());
        boolean agrees = comparison.holds();
        if (!agrees && low) {
            working.next(
                    "joint-heat", "How warm would one joint with that resistance get?",
                    "reading", Quantity.of(difference.value(), Units.VOLT).text(4), "test-current",
                            values.of(ReadingSymbols.CURRENT).text());
        }
    }
}
