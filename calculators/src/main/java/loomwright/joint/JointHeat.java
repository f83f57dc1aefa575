package loomwright.joint;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.source.Source;
import loomwright.table.Documents;
import loomwright.worked.Calculator;
import loomwright.worked.Comparison;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * Resistance and heat of a joint from the millivolts across it.
 *
 * <p>The reading spans the joint and a length of conductor; what that conductor drops is taken away. R = (U − I × r × l) ÷ I, and at another
 * current P = I² × R. Holds for a joint whose resistance does not change with the current; a bad joint gets worse as it warms.
 *
 * @source Ohm's law; way of measuring after SAE J163, clause 6
 */
public final class JointHeat implements Calculator {
    private static final Symbol READING = Symbol.of("U", "reading", "voltage across the joint", Dimension.VOLTAGE);
    private static final Symbol TEST_CURRENT = Symbol.of("I", "test", "current while measuring", Dimension.CURRENT);
    static final Symbol DESIGN_CURRENT = Symbol.of("I", "design current", Dimension.CURRENT);
    private static final Symbol PER_METRE =
            Symbol.of("r", "resistance of one metre of the conductor", Dimension.RESISTANCE_PER_LENGTH);
    private static final Symbol SPAN = Symbol.of("l", "length of conductor between the probes", Dimension.LENGTH);
    private static final Symbol CONDUCTOR_DROP = Symbol.of("U", "c", "drop of the conductor between the probes", Dimension.VOLTAGE);
    static final Symbol JOINT = Symbol.of("R", "j", "resistance of the joint", Dimension.RESISTANCE);
    private static final Symbol HEAT = Symbol.of("P", "heat in the joint at the design current", Dimension.POWER);
    private static final Symbol DROP = Symbol.of("U", "j", "drop of the joint at the design current", Dimension.VOLTAGE);

    private static final Formula OF_CONDUCTOR = new Formula(CONDUCTOR_DROP, TEST_CURRENT.times(PER_METRE).times(SPAN));
    private static final Formula OF_JOINT = new Formula(JOINT, READING.minus(CONDUCTOR_DROP).over(TEST_CURRENT));
    private static final Formula DESIGN_DROP = new Formula(DROP, DESIGN_CURRENT.times(JOINT));
    static final Formula DESIGN_HEAT = new Formula(HEAT, DESIGN_CURRENT.squared().times(JOINT));
    private static final Formula CONDUCTOR_FORGOTTEN = new Formula(JOINT, READING.over(TEST_CURRENT));
    private static final Formula READING_TIMES_CURRENT = new Formula(HEAT, READING.times(DESIGN_CURRENT));
    private static final Formula HEAT_AT_TEST = new Formula(HEAT, TEST_CURRENT.squared().times(JOINT));
    private static final Formula DROP_AT_TEST = new Formula(DROP, TEST_CURRENT.times(JOINT));

    private static final QuantityField READING_FIELD = QuantityField.of(
            "reading", "Voltage across the joint", "One probe on the metal before the joint, one after it, with the load on.", 0, 20_000,
            Units.MILLIVOLT, Units.VOLT);
    private static final QuantityField TEST_CURRENT_FIELD = QuantityField.of(
            "test-current", "Current while measuring", "From a clamp meter, or from the load's label if it is steady.", 0.1, 500, Units.AMPERE);
    private static final QuantityField SPAN_FIELD = QuantityField.of(
                    "span", "Conductor between the probes", "Measure it. The standard's own way spans 76.2 mm (3 in).", 0, 2000,
                    Units.MILLIMETRE, Units.INCHES)
            .usually("76.2 mm");
    private static final QuantityField PER_METRE_FIELD = QuantityField.of(
            "resistance-per-metre", "Resistance of one metre of the conductor", "From the calculator of conductor resistance.", 0.05, 500,
            Units.MILLIOHM_PER_METRE, Units.OHM_PER_KILOMETRE, Units.OHM_PER_THOUSAND_FEET);
    private static final QuantityField DESIGN_FIELD = QuantityField.of(
            "design-current", "Design current", "The most that will flow through the joint for longer than a moment.", 0.1, 500, Units.AMPERE);

    private static final Description DESCRIPTION = new Description(
            "joint-heat",
            "Heat of a joint",
            "Is this joint good, and how warm will it get?",
            List.of(
                    "The load was on and steady while you measured.",
                    "The joint keeps its resistance. A bad joint gets worse as it warms, so its true heat is at least this."),
            List.of(READING_FIELD, TEST_CURRENT_FIELD, PER_METRE_FIELD, SPAN_FIELD, DESIGN_FIELD),
            List.of(
                    new Output("joint-resistance", "Resistance of the joint", Units.MILLIOHM),
                    new Output("conductor-drop", "Drop of the conductor between the probes", Units.MILLIVOLT),
                    new Output("joint-drop", "Drop of the joint at the design current", Units.MILLIVOLT),
                    new Output("joint-heat", "Heat in the joint at the design current", Units.WATT)),
            List.of(
                    new NamedFormula("conductor-drop", OF_CONDUCTOR),
                    new NamedFormula("joint-resistance", OF_JOINT),
                    new NamedFormula("joint-drop", DESIGN_DROP),
                    new NamedFormula("joint-heat", DESIGN_HEAT)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Quantity reading = working.convert(
                "Turn the reading into volts", entries.quantity(READING_FIELD.key()), Units.VOLT, "Volts go with amperes and ohms.");
        Quantity span = working.convert(
                "Turn the span into metres", entries.quantity(SPAN_FIELD.key()), Units.METRE, "The resistance is known for one metre.");
        Values values = Values.of(READING, reading)
                .with(SPAN, span)
                .with(TEST_CURRENT, entries.quantity(TEST_CURRENT_FIELD.key()))
                .with(PER_METRE, entries.quantity(PER_METRE_FIELD.key()))
                .with(DESIGN_CURRENT, entries.quantity(DESIGN_FIELD.key()));
        Quantity conductor = working.compute(
                "Find what the conductor between the probes drops", OF_CONDUCTOR, values, Units.MILLIVOLT,
                "The probes span some conductor as well as the joint.");
        values = values.with(CONDUCTOR_DROP, conductor);
        Quantity joint = working.compute(
                "Take it away and divide by the current", OF_JOINT, values, Units.MILLIOHM,
                "What is left belongs to the joint; Ohm's law gives its resistance.", Source.of(Documents.saeJ163(), "clause 6"));
        values = values.with(JOINT, joint);
        Quantity drop = working.compute(
                "Find its drop at the design current", DESIGN_DROP, values, Units.MILLIVOLT, "The joint was measured at another current.");
        Quantity heat = working.compute(
                "Find its heat at the design current", DESIGN_HEAT, values, Units.WATT, "Twice the current means four times the heat.");
        working.result("joint-resistance", joint);
        working.result("conductor-drop", conductor);
        working.result("joint-drop", drop);
        working.result("joint-heat", heat);
        addFindings(working, joint, conductor, values);
        working.slip(
                "conductor-forgotten", "joint-resistance", "The conductor between the probes left in",
                "The probes span conductor too; its share is not the joint's fault.", CONDUCTOR_FORGOTTEN, values);
        working.slip(
                "reading-times-design-current", "joint-heat", "The reading multiplied by the design current",
                "The reading was taken at the test current; it grows with the current.", READING_TIMES_CURRENT, values);
        working.slip(
                "heat-at-the-test-current", "joint-heat", "The heat of the test current",
                "The joint will carry the design current, not the one you tested with.", HEAT_AT_TEST, values);
        working.slip(
                "drop-at-the-test-current", "joint-drop", "The drop of the test current",
                "The drop grows with the current.", DROP_AT_TEST, values);
        if (joint.value() > 0) {
            working.next(
                    "hidden-resistance", "Where else in the circuit is resistance hidden?",
                    "design-current", values.of(DESIGN_CURRENT).text());
        }
    }

    private static void addFindings(WorkingBuilder working, Quantity joint, Quantity conductor, Values values) {
        if (joint.value() < 0) {
            working.finding(new Finding(
                    Verdict.CAUTION, "The reading is less than the conductor alone must drop.", joint, null,
                    Source.of(Documents.saeJ163(), "clause 6"),
                    "Check the span, the size of conductor and the zero of the meter, and measure again."));
            return;
        }
        double jointVolts = joint.base() * values.of(TEST_CURRENT).base();
        working.finding(Comparison.of("What the joint drops of its own", Quantity.ofBase(jointVolts, Units.MILLIVOLT))
                .atMost(conductor, "what the conductor beside it drops; its resistance is to be negligible against that", Source.of(Documents.faaAc43131b(), "11-174"))
                .exact()
                .otherwise(Verdict.CAUTION, "Cut the joint out and make it again. Warm is a warning; hot is a stop.")
                .finding());
        working.finding(JointRule.heat("The heat in the joint at the design current", working.stated("joint-heat")).finding());
    }
}
