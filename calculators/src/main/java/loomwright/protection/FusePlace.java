package loomwright.protection;

import java.util.ArrayList;
import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Dimension;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.quantity.Units;
import loomwright.table.PublishedTables;
import loomwright.worked.Calculator;
import loomwright.worked.Candidate;
import loomwright.worked.Description;
import loomwright.worked.Entries;
import loomwright.worked.Comparison;
import loomwright.worked.MissingFigure;
import loomwright.worked.NamedFormula;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;
import loomwright.worked.Verdict;
import loomwright.worked.WorkingBuilder;

/**
 * Whether a fuse-link or breaker sits near enough to its source, by the rule set named.
 *
 * <p>room left = distance allowed − distance measured along the conductor. The rule sets differ tenfold, and each says its own: no figure
 * holds without its name.
 *
 * @source table overcurrent-location, row by row
 */
public final class FusePlace implements Calculator {
    private static final Symbol DISTANCE = Symbol.of("l", "length of conductor between source and device", Dimension.LENGTH);
    private static final Symbol LIMIT = Symbol.of("l", "max", "length that the rule set allows", Dimension.LENGTH);
    private static final Symbol LEFT = Symbol.of("l", "left", "length that is left", Dimension.LENGTH);
    private static final Formula REMAINING = new Formula(LEFT, LIMIT.minus(DISTANCE));
    private static final Formula TURNED = new Formula(LEFT, DISTANCE.minus(LIMIT));
    private static final Formula TAKEN = new Formula(LEFT, LIMIT);

    private static final QuantityField LENGTH = QuantityField.of(
            "distance",
            "Length of conductor between source and device",
            "Along the conductor, from the terminal of the source to the fuse-link or breaker.",
            0, 20, Units.METRE, Units.CENTIMETRE, Units.MILLIMETRE, Units.INCHES, Units.FEET);

    private static final Description DESCRIPTION = new Description(
            "fuse-place",
            "Place of a fuse-link or breaker",
            "How far from the source may it sit?",
            List.of(
                    "Everything between the source and the device is without protection: no device ends a short circuit there.",
                    "Measured along the conductor.",
                    "Each rule set holds for its own kind of craft or vehicle. Your code and the maker of the vehicle decide."),
            List.of(LENGTH, LocationRule.field()),
            List.of(
                    new Output("limit", "Length that the rule set allows", Units.METRE),
                    new Output("remaining", "Length left", Units.METRE)),
            List.of(new NamedFormula("remaining", REMAINING)));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public void work(Entries entries, WorkingBuilder working) {
        LocationRule rule = LocationRule.of(entries.option("rule-set"));
        Quantity distance = entries.quantity("distance");
        working.choose(
                "See what each rule set says of this length, and keep to the one chosen", candidates(rule, distance), rule.limit(),
                "They were written for different craft, and they do not agree.", PublishedTables.overcurrentLocation().source());
        Unit unit = distance.unit();
        Quantity limit = working.convert("Turn the limit into " + unit.spoken(), rule.limit(), unit,
                "To hold it against the length entered.");
        Values values = Values.of(LIMIT, limit).with(DISTANCE, distance);
        Quantity left = working.compute("Take the length from the limit", REMAINING, values, unit, "Less than nothing means too far.",
                rule.row().source());
        working.result("limit", limit);
        working.result("remaining", left);
        addFindings(working, rule, distance);
        addSlips(working, rule, values);
    }

    private static List<Candidate> candidates(LocationRule chosen, Quantity distance) {
        List<Candidate> candidates = new ArrayList<>();
        for (LocationRule rule : LocationRule.values()) {
            String verdict = rule.allows(distance) ? "allows it" : "does not";
            candidates.add(new Candidate(rule.label(), rule == chosen, "up to " + rule.limit().text() + ": " + verdict));
        }
        return candidates;
    }

    private static void addFindings(WorkingBuilder working, LocationRule rule, Quantity distance) {
        working.finding(allows(rule, distance)
                .otherwise(Verdict.STOP, "Move the device nearer to the source. If that cannot be, put a device of its own at the source.")
                .finding());
        LocationRule strictest = LocationRule.strictest();
        Comparison strict = allows(strictest, distance)
                .otherwise(Verdict.CAUTION, "This is the strictest published rule here. Go nearer where you can, and sheathe the conductor up to the device.");
        if (rule != strictest && rule.allows(distance) && !strict.holds()) {
            working.finding(strict.finding());
        }
    }

    private static Comparison allows(LocationRule rule, Quantity distance) {
        return Comparison.of("The length of conductor", distance)
                .atMost(rule.limit(), "the limit of " + rule.label(), rule.row().source())
                .exact()
                .settledBy(new MissingFigure("", "length that the rule allows", "the rule itself, " + rule.label()));
    }

    private static void addSlips(WorkingBuilder working, LocationRule rule, Values values) {
        Quantity limit = rule.limit();
        if (limit.unit() == Units.INCHES) {
            limitSlip(
                    working, "inches-as-centimetres", "Inches taken as centimetres", "An inch is 2.54 cm.",
                    Quantity.of(limit.value(), Units.CENTIMETRE));
        }
        if (rule.otherSheath() != null) {
            limitSlip(
                    working, "other-situation", "The limit of the other situation",
                    "A sheath or enclosure all the way allows more than a conductor in the open.", rule.otherSheath().limit());
        }
        if (rule != LocationRule.ABYC_OLDER) {
            limitSlip(
                    working, "other-rule-set", "The limit of another rule set",
                    "72 in is an older rule for sheathed battery cable on boats.",
                    LocationRule.ABYC_OLDER.limit());
        }
        working.slip("turned-round", "remaining", "The limit taken from the length", "What is left is the limit less the length.", TURNED,
                values);
    }

    private static void limitSlip(WorkingBuilder working, String key, String name, String words, Quantity limit) {
        working.slip(key, "limit", name, words, TAKEN, Values.of(LIMIT, limit));
    }
}
