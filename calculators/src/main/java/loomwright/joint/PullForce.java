package loomwright.joint;

import java.util.List;
import loomwright.formula.Expression;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.table.Row;
import loomwright.worked.Calculator;
import loomwright.worked.Comparison;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Finding;
import loomwright.worked.MissingFigure;
import loomwright.worked.NamedFormula;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Refusal;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * The pull a crimped joint must hold, by conductor and rule set, and whether a tested one did.
 *
 * @source table crimp-pull-force; the rule sets differ and are never mixed
 */
public final class PullForce implements Calculator {
    private static final ChoiceField RULE_SET = ChoiceField.of(
            "rule-set",
            "Rule set",
            "The rule sets differ by up to three times. Take the one your work is held to; for a boat that is mostly the first. The military column asks for most.",
            new Option("abyc", "ABYC E-11, small craft: held for one minute"),
            new Option("ul-486a", "UL 486A, commercial terminals"),
            new Option("military", "military column of the same maker's table"),
            new Option("iec-60352-2", "IEC 60352-2, from memory only"))
            .usually("military");
    /** The gauge 4/0 as a number: the thicker the wire, the smaller the number. */
    private static final double OF_4_0 = -3;

    private static final QuantityField SIZE = QuantityField.of(
            "size", "Size of conductor", "As printed on the cable.", 40, OF_4_0, Units.AWG, Units.SQUARE_MILLIMETRE);
    private static final QuantityField PULLED = QuantityField.of(
                    "pulled", "Pull it held", "From a test piece on a spring balance. Leave it empty if you have not tested.", 0, 5000,
                    Units.NEWTON, Units.POUND_FORCE)
            .optional();

    private static final Symbol FORCE = Symbol.of("F", "least pull the joint must hold", Dimension.FORCE);
    private static final Symbol RATIO = Symbol.of("n", "pull it held, against the least", Dimension.NUMBER);
    private static final Symbol HELD = Symbol.of("F", "t", "pull the test piece held", Dimension.FORCE);
    private static final Formula MARGIN = new Formula(RATIO, HELD.over(FORCE));
    private static final Formula MARGIN_UPSIDE_DOWN = new Formula(RATIO, FORCE.over(HELD));
    private static final Expression ONE_NEWTON = Expression.fixed(Quantity.of(1, Units.NEWTON));
    private static final Expression ONE_POUND = Expression.fixed(Quantity.of(1, Units.POUND_FORCE));
    /** Weight of one kilogram, at standard gravity. */
    private static final Expression KILOGRAM_WEIGHT = Expression.fixed(Quantity.of(9.80665, Units.NEWTON));

    private static final Formula POUNDS_AS_NEWTONS = new Formula(FORCE, FORCE.over(ONE_POUND).times(ONE_NEWTON));
    private static final Formula NEWTONS_AS_POUNDS = new Formula(FORCE, FORCE.over(ONE_NEWTON).times(ONE_POUND));
    private static final Formula NEWTONS_AS_KILOGRAMS = new Formula(FORCE, FORCE.over(ONE_NEWTON).times(KILOGRAM_WEIGHT));

    /** More than the rounding of the printed newtons, which is 0.5 % at most. */
    private static final double ROUNDING = 0.01;

    private static final MissingFigure MISSING =
            new MissingFigure("", "least pull of the terminal", "the sheet of the terminal or of its crimp tool, \u201cpull-out force\u201d");

    private static final Description DESCRIPTION = new Description(
            "pull-force",
            "Pull on a crimped joint",
            "How hard must this crimp hold, and did my test piece hold?",
            List.of(
                    "Stranded copper in a terminal made for its size, crimped with the tool made for the terminal.",
                    "Test a piece made for testing, not the joint you will use."),
            List.of(RULE_SET, SIZE, PULLED),
            List.of(
                    new Output("least-pull", "Least pull it must hold", Units.NEWTON),
                    new Output("held-ratio", "Pull it held, against the least", Units.ONE)),
            List.of(new NamedFormula("margin", MARGIN)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        Row row = row(entries);
        Quantity printed = working.lookUp(
                "Read the least pull for " + row.text("conductor") + " from the table", FORCE, row, "force",
                "A crimp that holds less has not gripped the strands.");
        Quantity least = larger(working, row, printed);
        Values values = Values.of(FORCE, least);
        working.result("least-pull", least);
        if (!row.source().standing().mayPass()) {
            working.finding(Finding.notKnown("This figure is from memory, and two lists of it disagree.", least, row.source(), MISSING));
        }
        if (entries.has(PULLED.key())) {
            compare(working, entries.quantity(PULLED.key()), values, row);
        }
        working.slip(
                "pounds-for-newtons", "least-pull", "Pounds taken as newtons",
                "The table also has a column in pounds; one pound of force is 4.45 N.", POUNDS_AS_NEWTONS, values);
        working.slip(
                "newtons-for-pounds", "least-pull", "Newtons taken as pounds",
                "One pound of force is 4.45 N, so the number in newtons is the larger.", NEWTONS_AS_POUNDS, values);
        working.slip(
                "newtons-for-kilograms", "least-pull", "Newtons taken as kilograms",
                "A spring balance in kilograms reads about a tenth of the newtons.", NEWTONS_AS_KILOGRAMS, values);
    }

    /** A row whose newtons and pounds disagree has a misprint in one of them: the larger counts, so that no weak joint passes. */
    private static Quantity larger(WorkingBuilder working, Row row, Quantity printed) {
        if (!row.has("force-pounds") || row.quantity("force-pounds").base() <= printed.base() * (1 + ROUNDING)) {
            return printed;
        }
        Quantity pounds = row.quantity("force-pounds");
        Quantity larger = working.convert(
                "Turn the pounds of the same row into newtons", pounds, Units.NEWTON,
                "Its two columns disagree, so one is a misprint. The larger counts.");
        working.finding(new Finding(
                Verdict.CAUTION,
                "For " + row.text("conductor") + " the table prints " + printed.text() + " beside " + pounds.text() + ", which is "
                        + larger.text(4) + ". One of the two is a misprint; the larger is taken.",
                printed, larger, row.source(), "Ask the maker of the terminal which of the two holds."));
        return larger;
    }

    private static void compare(WorkingBuilder working, Quantity pulled, Values least, Row row) {
        Quantity held = working.convert("Turn the pull into newtons", pulled, Units.NEWTON, "The table is in newtons.");
        Values values = least.with(HELD, held);
        Quantity ratio = working.compute(
                "Compare it with the pull your test piece held", MARGIN, values, Units.ONE, "One or more means that it held.");
        working.result("held-ratio", ratio);
        working.slip(
                "ratio-upside-down", "held-ratio", "The two pulls the wrong way round",
                "Divide what it held by what it must hold.", MARGIN_UPSIDE_DOWN, values);
        working.finding(Comparison.of("The pull that the test piece held", held)
                .atLeast(least.of(FORCE), "what the rule set asks for", row.source())
                .exact()
                .settledBy(MISSING)
                .otherwise(
                        Verdict.STOP,
                        "Find out why before you crimp the real one: size of terminal, tool, die, strands cut or outside the barrel.")
                .finding());
    }

    private static Row row(Entries entries) {
        Quantity size = entries.quantity(SIZE.key());
        String ruleSet = entries.choice(RULE_SET.key());
        StringBuilder sizes = new StringBuilder();
        for (Row row : PublishedTables.crimpPullForce().rows()) {
            if (row.text("case").startsWith(ruleSet + "-") && !row.text("case").endsWith("friction")) {
                Quantity here = row.quantity("conductor", Units.AWG);
                boolean sameKind = (here.unit() == Units.AWG) == (size.unit() == Units.AWG);
                if (sameKind && Math.abs(here.base() - size.base()) <= 1e-6 * here.base()) {
                    return row;
                }
                sizes.append(sizes.length() == 0 ? "" : ", ").append(here.text());
            }
        }
        throw new Refusal(
                SIZE.key(), "Size of conductor " + size.text() + " is not in this rule set's list. It has " + sizes
                        + ". Choose one of these, or another rule set");
    }
}
