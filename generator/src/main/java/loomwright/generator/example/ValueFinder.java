package loomwright.generator.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.Fact;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.Span;
import loomwright.quantity.Quantity;
import loomwright.quantity.QuantityText;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import loomwright.worked.QuantityField;

/** Finds values by the names the text uses: {@code example.result}, {@code example.given.input}, {@code scenario.fact}. */
public final class ValueFinder {
    private static final String SCENARIO = "scenario";
    private static final Shown NOTHING = new Shown("", null);

    private final ExampleBook book;
    private final Map<String, Fact> scenario;
    private final Problems problems;

    public ValueFinder(ExampleBook book, Map<String, Fact> scenario, Problems problems) {
        this.book = book;
        this.scenario = scenario;
        this.problems = problems;
    }

    /** The value of that name. An unknown name is reported at {@code place} and gives an empty text. */
    public Shown find(String name, Span place) {
        int dot = name.indexOf('.');
        String owner = dot < 0 ? name : name.substring(0, dot);
        String rest = dot < 0 ? "" : name.substring(dot + 1);
        if (owner.equals(SCENARIO)) {
            return fact(rest, place);
        }
        if (!book.knows(owner)) {
            List<String> owners = new ArrayList<>(book.keys());
            owners.add(SCENARIO);
            String nearest = Nearest.to(owner, owners);
            problems.add(place.find(owner).problem(
                    "no example is called \"" + owner + "\"",
                    nearest == null ? "Write the key of an example, a dot and a result." : "Did you mean \"" + nearest + "\"?"));
            return NOTHING;
        }
        Example example = book.find(owner);
        return example == null ? NOTHING : of(example, rest, place);
    }

    private Shown fact(String name, Span place) {
        Fact fact = scenario.get(name);
        if (fact == null) {
            problems.add(place.find(name).problem(
                    "no figure of the scenario is called \"" + name + "\"", Nearest.remedy(name, scenario.keySet())));
            return NOTHING;
        }
        return new Shown(fact.value().replace(' ', '\u00a0'), null);
    }

    private Shown of(Example example, String rest, Span place) {
        if (rest.startsWith("given.")) {
            return given(example, rest.substring("given.".length()), place);
        }
        int colon = rest.indexOf(':');
        String name = colon < 0 ? rest : rest.substring(0, colon);
        Quantity quantity = example.results().get(name);
        if (quantity == null) {
            problems.add(place.find(name.isEmpty() ? example.key() : name).problem(
                    "no value named \"" + name + "\" in example \"" + example.key() + "\"",
                    Nearest.remedy(name, example.results().keySet())));
            return NOTHING;
        }
        if (colon < 0) {
            return new Shown(quantity.text(), example);
        }
        int digits = digits(rest.substring(colon + 1), place);
        return new Shown(quantity.text(digits), example);
    }

    private int digits(String text, Span place) {
        boolean digit = text.length() == 1 && text.charAt(0) >= '1' && text.charAt(0) <= '9';
        if (!digit) {
            problems.add(place.find(":" + text).problem(
                    "the number of digits must be 1 to 9 but is \"" + text + "\"", "Write it after the colon, such as :3."));
        }
        return digit ? text.charAt(0) - '0' : 1;
    }

    private Shown given(Example example, String name, Span place) {
        Field field = example.calculator().description().field(name);
        String text = field == null ? null : example.given().getOrDefault(name, field.usual());
        if (text == null || text.isEmpty()) {
            problems.add(place.find(name).problem(
                    "example \"" + example.key() + "\" is given no \"" + name + "\"", Nearest.remedy(name, example.given().keySet())));
            return NOTHING;
        }
        if (field instanceof ChoiceField choice) {
            return new Shown(choice.option(text).label(), example);
        }
        QuantityText.Reading reading = QuantityText.read(text, ((QuantityField) field).units().get(0));
        return new Shown(reading.quantity().text(), example);
    }
}
