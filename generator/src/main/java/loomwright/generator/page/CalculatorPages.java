package loomwright.generator.page;

import java.util.List;
import loomwright.generator.example.Example;
import loomwright.worked.Calculator;
import loomwright.worked.ChoiceField;
import loomwright.worked.Description;
import loomwright.worked.Field;
import loomwright.worked.Option;
import loomwright.worked.Output;
import loomwright.worked.QuantityField;

/** Writes a page for each calculator. */
final class CalculatorPages {
    private static final int MOST_NAMED = 4;
    private static final int FIRST_NAMED = 3;

    /** The record of calculator.mustache. */
    record Page(
            Frame frame, String question, String summary, String example, List<Input> inputs, Links usedIn) {}

    /** What a calculator asks for. */
    record Input(String label, String help, String range) {}

    private final Site site;
    private final Frames frames;
    private final Templates templates;
    private final SearchData search;

    CalculatorPages(Site site, Frames frames, Templates templates, SearchData search) {
        this.site = site;
        this.frames = frames;
        this.templates = templates;
        this.search = search;
    }

    void write(PageSink sink) {
        for (Calculator calculator : site.calculators().values()) {
            page(calculator, Address.calculator(calculator.description().key()), sink);
        }
    }

    private void page(Calculator calculator, String address, PageSink sink) {
        Description description = calculator.description();
        ArticleWriter writer = new ArticleWriter(site, new Place(description.title(), address), List.of());
        Page page = new Page(
                frames.of(description.title(), description.question(), address),
                description.question(),
                summary(description),
                example(calculator, address, writer),
                description.fields().stream().map(CalculatorPages::input).toList(),
                Links.of(address, site.reliance().ofCalculator(description.key())));
        sink.page(address, templates.fill("calculator", page), writer.places());
        search.add(description.title(), address, "calculator", description.question(), words(description));
    }

    /** What search reads of a calculator: what it gives, and all that it asks for. */
    private static String words(Description description) {
        StringBuilder words = new StringBuilder(summary(description));
        description.fields().forEach(field -> words.append(' ').append(field.label()).append(". ").append(field.help()));
        return words.toString();
    }

    /** The most careful example of the lessons, the first of several; without one the usual entries of the calculator. */
    private String example(Calculator calculator, String address, ArticleWriter writer) {
        Description description = calculator.description();
        ExampleMarkup markup = new ExampleMarkup(site, new Place(description.title(), address), writer);
        Example careful = null;
        for (Example example : site.book().all()) {
            boolean ours = example.calculator().description().key().equals(description.key());
            careful = ours && (careful == null || ventures(example) < ventures(careful)) ? example : careful;
        }
        if (careful != null) {
            return markup.lent(careful);
        }
        String usual = markup.usual(calculator);
        return usual.isEmpty() ? "<p>No lesson works an example of this yet.</p>\n" : usual;
    }

    /** How many of its choices are others than the ones a careful person takes unasked. */
    private static long ventures(Example example) {
        return example.calculator().description().fields().stream()
                .filter(field -> field instanceof ChoiceField)
                .filter(field -> !field.usual().equals(example.given().getOrDefault(field.key(), field.usual())))
                .count();
    }

    /** What it gives; of many results the first few. */
    static String summary(Description description) {
        List<String> labels =
                description.outputs().stream().map(Output::label).map(ExampleMarkup::small).toList();
        if (labels.size() <= MOST_NAMED) {
            return "Gives " + String.join(", ", labels) + ".";
        }
        int more = labels.size() - FIRST_NAMED;
        return "Gives " + String.join(", ", labels.subList(0, FIRST_NAMED)) + ", and " + more + " figures more.";
    }

    private static Input input(Field field) {
        return new Input(field.label(), field.help().isEmpty() ? null : field.help(), range(field));
    }

    private static String range(Field field) {
        if (field instanceof ChoiceField choice) {
            List<String> labels = choice.options().stream().map(Option::label).toList();
            return "One of: " + String.join("; ", labels) + ".";
        }
        QuantityField quantity = (QuantityField) field;
        List<String> kinds = quantity.limits().stream()
                .map(each -> "from " + each.least().text() + " to " + each.greatest().text())
                .toList();
        String limits = "F" + String.join(", or ", kinds).substring(1) + ".";
        boolean optional = quantity.usual() != null && quantity.usual().isEmpty();
        return optional ? limits + " May be left empty." : limits;
    }
}
