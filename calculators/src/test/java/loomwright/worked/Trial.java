package loomwright.worked;

import java.util.HashMap;
import java.util.Map;
import loomwright.catalogue.Catalogue;
import loomwright.practice.AnswerCheck;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;

/** One run of a calculator in a test: entries as a reader would type them, and what came of them. */
public final class Trial {
    private final String name;
    private final Outcome outcome;

    private Trial(String name, Outcome outcome) {
        this.name = name;
        this.outcome = outcome;
    }

    /** Runs the calculator of that key; each entry reads {@code field=text}. */
    public static Trial of(String calculatorKey, String... entries) {
        return of(calculatorKey, Typing.of(entries));
    }

    /** The same at the temperatures that tables are printed for, unless an entry says another: copper at 20 °C, 30 °C around it. */
    public static Trial asPrinted(String calculatorKey, String... entries) {
        Map<String, String> typed = new HashMap<>();
        Description description = Catalogue.find(calculatorKey).description();
        if (description.field("temperature") != null) {
            typed.put("temperature", "20 °C");
        }
        if (description.field("ambient") != null) {
            typed.put("ambient", "30 °C");
        }
        typed.putAll(Typing.of(entries));
        return of(calculatorKey, typed);
    }

    /** Runs the calculator of that key. */
    public static Trial of(String calculatorKey, Map<String, String> typed) {
        Calculator calculator = Catalogue.find(calculatorKey);
        for (String key : typed.keySet()) {
            if (calculator.description().field(key) == null) {
                throw new IllegalArgumentException(calculatorKey + " asks for no " + key);
            }
        }
        return new Trial(calculatorKey + " " + typed, Outcome.of(calculator, typed));
    }

    public Working working() {
        if (outcome.working() == null) {
            throw new AssertionError(name + " was refused: " + outcome.faults());
        }
        return outcome.working();
    }

    /** Whether there is an answer of that key. */
    public boolean answers(String resultKey) {
        return working().result(resultKey) != null;
    }

    /** The answer in the unit that the calculator shows it in. */
    public double value(String resultKey) {
        Result result = working().result(resultKey);
        if (result == null) {
            throw new AssertionError(name + " gives no " + resultKey);
        }
        return result.quantity().value();
    }

    /** How far the answer lies from a text such as {@code 6.31 h}, in the unit of that text. */
    public double away(String resultKey, String expected) {
        Quantity wanted = QuantityText.readPrinted(expected, null).quantity();
        Quantity got = working().result(resultKey).quantity().in(wanted.unit());
        return Math.abs(got.value() - wanted.value());
    }

    /** The one fault, written {@code field: message}. */
    public String refusal() {
        if (outcome.working() != null || outcome.faults().size() != 1) {
            throw new AssertionError(name + " should have been refused for one reason, but: " + outcome.faults());
        }
        EntryFault fault = outcome.faults().get(0);
        return fault.fieldKey() + ": " + fault.message();
    }

    /** The finding whose words contain {@code part}. */
    public Finding finding(String part) {
        for (Finding finding : working().findings()) {
            if (finding.words().contains(part)) {
                return finding;
            }
        }
        throw new AssertionError(name + " has no finding on " + part + ": " + working().findings());
    }

    public boolean hasFinding(String part) {
        return working().findings().stream().anyMatch(finding -> finding.words().contains(part));
    }

    /** The name of the slip that explains {@code answer}, or what else came of the comparison. */
    public String slipBehind(String resultKey, String answer) {
        AnswerCheck check = AnswerCheck.of(working(), resultKey, answer);
        return check.slip() == null ? check.kind().name() : check.slip().key();
    }

    /** The number in a text such as {@code 0.05 V}. */
    public static double number(String text) {
        return QuantityText.readPrinted(text, null).quantity().value();
    }
}
