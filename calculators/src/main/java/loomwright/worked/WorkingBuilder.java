package loomwright.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.formula.Values;
import loomwright.quantity.Quantity;
import loomwright.quantity.Unit;
import loomwright.source.Source;
import loomwright.table.Row;

/** Gathers a working while a calculator runs. What a step computes is what the step shows. */
public final class WorkingBuilder {
    private static final double LARGEST = 1e12;

    private final Description description;
    private final List<Step> steps = new ArrayList<>();
    private final List<Result> results = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Slip> slips = new ArrayList<>();
    private final List<NextQuestion> nextQuestions = new ArrayList<>();

    WorkingBuilder(Description description) {
        this.description = description;
    }

    /** A builder whose steps nobody reads, for a figure that a calculator works out and a whole circuit needs. */
    public static WorkingBuilder aside(Description description) {
        return new WorkingBuilder(description);
    }

    /** Adds a step that puts numbers into a formula, and gives its result in {@code unit}. */
    public Quantity compute(String words, Formula formula, Values values, Unit unit, String why) {
        return compute(words, formula, values, unit, why, null);
    }

    /**
     * Adds a step that puts numbers into a formula whose constant has a source of its own.
     *
     * @throws Refusal if the formula has no finite value for these numbers
     */
    public Quantity compute(String words, Formula formula, Values values, Unit unit, String why, Source source) {
        Quantity result = formula.value(values, unit);
        if (Double.isNaN(result.value()) || Math.abs(result.value()) > LARGEST) {
            throw new Refusal(
                    description.fields().get(0).key(),
                    "With these numbers the " + formula.subject().meaning() + " has no value we can show: change one of them");
        }
        steps.add(new FormulaStep(words, formula, values, result, why, source));
        return result;
    }

    /** Adds a step that reads {@code column} of a table row. */
    public Quantity lookUp(String words, Symbol symbol, Row row, String column, String why) {
        Quantity figure = row.quantity(column);
        steps.add(new TableStep(words, symbol, figure, why, row));
        return figure;
    }

    /** Adds a step that reads a figure of a table whose unit differs from row to row. */
    public Quantity lookUp(String words, Symbol symbol, Row row, String column, Unit unit, String why) {
        Quantity figure = row.quantity(column, unit);
        steps.add(new TableStep(words, symbol, figure, why, row));
        return figure;
    }

    /** Brings an entry to {@code unit}, with a step if it was in another. */
    public Quantity convert(String words, Quantity entry, Unit unit, String why) {
        if (entry.unit() == unit) {
            return entry;
        }
        Quantity result = entry.in(unit);
        steps.add(new ConversionStep(words, entry, result, why));
        return result;
    }

    /** Adds a step that chose one of a series of sizes; {@code chosen} is null if none fits. */
    public Quantity choose(String words, List<Candidate> candidates, Quantity chosen, String why, Source source) {
        steps.add(new ChoiceStep(words, List.copyOf(candidates), chosen, why, source));
        return chosen;
    }

    /** States an answer. */
    public void result(String outputKey, Quantity quantity) {
        Output output = output(outputKey);
        results.add(new Result(output, quantity.in(output.unit())));
    }

    /** An answer already stated, or null. */
    public Quantity stated(String outputKey) {
        for (Result result : results) {
            if (result.output().key().equals(outputKey)) {
                return result.quantity();
            }
        }
        return null;
    }

    /** Whether that answer was stated. */
    public boolean has(String outputKey) {
        for (Result result : results) {
            if (result.output().key().equals(outputKey)) {
                return true;
            }
        }
        return false;
    }

    public void finding(Finding finding) {
        findings.add(finding);
    }

    /** States a known mistake, worked out with the present numbers. One that has no finite value here is left out. */
    public void slip(String key, String outputKey, String name, String words, Formula formula, Values values) {
        Output output = output(outputKey);
        Quantity value = formula.value(values, output.unit());
        if (!Double.isNaN(value.value()) && Math.abs(value.value()) <= LARGEST) {
            slips.add(new Slip(key, output, name, words, formula, values, value));
        }
    }

    /**
     * Points to what to work out next.
     *
     * @param keysAndTexts the fields there that take a figure from here, each followed by the figure
     */
    public void next(String calculatorKey, String words, String... keysAndTexts) {
        next(calculatorKey, words, Pairs.of(keysAndTexts));
    }

    /** The same with what is carried gathered before. */
    public void next(String calculatorKey, String words, Map<String, String> carried) {
        nextQuestions.add(new NextQuestion(calculatorKey, words, carried));
    }

    Working finish(Entries entries) {
        slips.removeIf(this::givesTheRightNumber);
        return new Working(
                description,
                entries,
                List.copyOf(steps),
                List.copyOf(results),
                List.copyOf(findings),
                List.copyOf(slips),
                List.copyOf(nextQuestions));
    }

    /** With some numbers a mistake does no harm: then it is no mistake that gives another number. */
    private boolean givesTheRightNumber(Slip slip) {
        for (Result result : results) {
            if (result.output().equals(slip.output()) && !Agreement.isApart(slip.value(), result.quantity())) {
                return true;
            }
        }
        return false;
    }

    private Output output(String key) {
        Output output = description.output(key);
        if (output == null) {
            throw new IllegalStateException(description.key() + " has no output " + key);
        }
        return output;
    }
}
