package loomwright.generator.example;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.Article;
import loomwright.generator.content.Block;
import loomwright.generator.content.Content;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.Words;
import loomwright.generator.content.YamlMap;
import loomwright.generator.content.YamlReader;
import loomwright.generator.problem.Problems;
import loomwright.quantity.Quantity;
import loomwright.source.Source;
import loomwright.worked.Calculator;
import loomwright.worked.Output;
import loomwright.worked.Result;

/** Reads an example block, runs its calculator and holds the results against the pins. */
final class ExampleReader {
    private final Map<String, Calculator> calculators;
    private final Problems problems;
    private final PinReader pinReader;
    private final Citations citations;
    private final BuiltInRows builtInRows;

    ExampleReader(Map<String, Calculator> calculators, Content content, Problems problems) {
        this.calculators = calculators;
        this.problems = problems;
        this.pinReader = new PinReader(content.documents(), problems);
        this.citations = new Citations(content.documents(), problems);
        this.builtInRows = new BuiltInRows(content.tables(), problems);
    }

    /**
     * What came of reading a block.
     *
     * @param key its key and the place of it, or null if it has none
     * @param example the example, or null if it has a mistake
     */
    record Reading(Scalar key, Example example) {}

    /** @param passedOver whether the example can be passed over, unless its author says otherwise */
    Reading read(Article article, Block block, boolean passedOver) {
        YamlMap map = YamlReader.read("example block", block.body(), problems);
        if (map == null) {
            return new Reading(null, null);
        }
        Scalar key = map.required("key");
        Scalar title = map.required("title");
        Scalar story = map.required("story");
        List<Scalar> show = map.texts("show");
        Scalar check = map.text("check");
        List<YamlMap> pins = map.maps("pins");
        YamlMap misprint = map.map("misprint");
        boolean further = further(map.text("further"), passedOver);
        Trial trial = Trial.of(map, calculators, problems);
        SheetStory sheet = SheetStory.of(map, trial, problems);
        map.finish();
        if (pins.isEmpty()) {
            problems.add(map.at().problem(
                    "the example has no pin", "Add under \"pins\" a figure from elsewhere that one of its results is held against."));
        }
        if (trial == null || key == null || title == null || story == null) {
            return new Reading(key, null);
        }
        builtInRows.compare(trial.working());
        return new Reading(key, new Example(
                key.text(), article, title.text(), story, trial.calculator(), trial.given(), trial.keep(), sheet, outputs(show, trial),
                check(check, show, trial), results(trial), pins("example", key.text(), pins, trial), misprint(misprint, trial),
                Uses.of(trial.working()), further, Words.in(story.text()) + StepWords.of(trial.working())));
    }

    private boolean further(Scalar said, boolean passedOver) {
        if (said != null && !said.text().equals("yes") && !said.text().equals("no")) {
            problems.add(said.problem(
                    "\"further\" must be \"yes\" or \"no\" but is \"" + said.text() + "\"",
                    "Write further: \"yes\" for an example that can be passed over, further: \"no\" for one that cannot."));
        }
        return said == null ? passedOver : said.text().equals("yes");
    }

    /** A computed question with pins, or null if it has none or does not run. */
    CheckedQuestion question(Article article, Block block) {
        YamlMap map = YamlReader.read("question block", block.body(), problems);
        if (map == null || !map.has("pins") || !map.has("calculator")) {
            return null;
        }
        Scalar key = map.required("key");
        List<YamlMap> pins = map.maps("pins");
        Trial trial = Trial.of(map, calculators, problems);
        return trial == null || key == null
                ? null
                : new CheckedQuestion(key.text(), article, trial.calculator(), trial.given(), pins("question", key.text(), pins, trial));
    }

    private List<String> outputs(List<Scalar> names, Trial trial) {
        List<String> outputs = new ArrayList<>();
        for (Scalar name : names) {
            Output output = trial.output(name, problems);
            if (output != null) {
                outputs.add(output.key());
            }
        }
        return List.copyOf(outputs);
    }

    /** The result the reader is asked for: the one named, else the first shown, else the first of all. */
    private String check(Scalar check, List<Scalar> show, Trial trial) {
        if (check != null) {
            Output output = trial.output(check, problems);
            return output == null ? "" : output.key();
        }
        return show.isEmpty() ? trial.working().results().get(0).output().key() : show.get(0).text();
    }

    private static Map<String, Quantity> results(Trial trial) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (Result result : trial.working().results()) {
            results.put(result.output().key(), result.quantity());
        }
        return results;
    }

    private List<Pin> pins(String kind, String name, List<YamlMap> maps, Trial trial) {
        List<Pin> pins = new ArrayList<>();
        for (YamlMap map : maps) {
            Pin pin = pinReader.read(kind + " \"" + name + "\"", map, trial);
            if (pin != null) {
                pins.add(pin);
            }
        }
        return List.copyOf(pins);
    }

    private Misprint misprint(YamlMap map, Trial trial) {
        if (map == null) {
            return null;
        }
        Scalar result = map.required("result");
        Scalar printed = map.required("printed");
        Source source = citations.read(map);
        Scalar explain = map.required("explain");
        map.finish();
        Output output = result == null ? null : trial.output(result, problems);
        return output == null || printed == null || source == null || explain == null
                ? null
                : new Misprint(output.label(), printed.text().replace(' ', '\u00a0'), source, explain);
    }
}
