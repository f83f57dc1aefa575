package loomwright.generator.example;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import loomwright.generator.content.Article;
import loomwright.generator.content.Block;
import loomwright.generator.content.Content;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.PlainPage;
import loomwright.generator.content.Scalar;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.Span;
import loomwright.worked.Calculator;

/** Every worked example of the site, by key. */
public final class ExampleBook {
    /** The examples of a lesson that belong to its time; those after them can be passed over. */
    private static final int FIRST = 2;

    private final Map<String, Example> examples = new LinkedHashMap<>();
    private final Map<Span, Example> byPlace = new HashMap<>();
    private final Map<String, CheckedQuestion> questions = new LinkedHashMap<>();
    private final Map<String, Scalar> keys = new LinkedHashMap<>();
    private final Problems problems;

    private ExampleBook(Problems problems) {
        this.problems = problems;
    }

    /** Reads and runs the examples of all lessons and pages. */
    public static ExampleBook of(Content content, Map<String, Calculator> calculators, Problems problems) {
        ExampleBook book = new ExampleBook(problems);
        ExampleReader reader = new ExampleReader(calculators, content, problems);
        Stream<Reader> readers = Stream.concat(
                content.lessons().stream().map(lesson -> new Reader(lesson.article(), FIRST, reader)),
                content.pages().stream().map(page -> new Reader(page.article(), Integer.MAX_VALUE, reader)));
        // worked side by side, taken in their order
        List<Reader> all = readers.toList();
        all.parallelStream().map(Reader::readings).toList().forEach(book::add);
        all.parallelStream().map(Reader::questions).toList().forEach(
                each -> each.forEach(question -> book.questions.putIfAbsent(question.key(), question)));
        return book;
    }

    /** The examples of one article; those after the first ones can be passed over. */
    private record Reader(Article article, int first, ExampleReader reader) {
        Map<Block, ExampleReader.Reading> readings() {
            Map<Block, ExampleReader.Reading> readings = new LinkedHashMap<>();
            for (Block block : article.blocks()) {
                if (block.kind().equals("example")) {
                    readings.put(block, reader.read(article, block, readings.size() >= first));
                }
            }
            return readings;
        }

        List<CheckedQuestion> questions() {
            return article.blocks().stream()
                    .filter(block -> block.kind().equals("question"))
                    .map(block -> reader.question(article, block))
                    .filter(Objects::nonNull)
                    .toList();
        }
    }

    private void add(Map<Block, ExampleReader.Reading> readings) {
        readings.forEach((block, reading) -> {
            if (reading.key() != null) {
                add(reading.key(), reading.example());
                byPlace.put(block.info(), reading.example());
            }
        });
    }

    private void add(Scalar key, Example example) {
        Scalar earlier = keys.putIfAbsent(key.text(), key);
        if (earlier != null) {
            problems.add(key.problem(
                    "the key \"" + key.text() + "\" is taken by the example in " + earlier.at().file().name() + ":"
                            + earlier.at().line(),
                    "Choose another key."));
        } else if (example != null) {
            examples.put(key.text(), example);
        }
    }

    /** The example of that key, or null if there is none or it has a mistake. */
    public Example find(String key) {
        return examples.get(key);
    }

    /** The example whose block begins at a place, or null if it has a mistake. */
    public Example at(Span info) {
        return byPlace.get(info);
    }

    /** Whether an example of that key exists, sound or not. */
    public boolean knows(String key) {
        return keys.containsKey(key);
    }

    /** The keys, in the order of the lessons. */
    public List<String> keys() {
        return new ArrayList<>(keys.keySet());
    }

    /** The question of that key, or null if its answer is held against nothing. */
    public CheckedQuestion question(String key) {
        return questions.get(key);
    }

    /** The questions whose answers are held against figures from elsewhere, in the order of the lessons. */
    public List<CheckedQuestion> questions() {
        return new ArrayList<>(questions.values());
    }

    /** How many figures from elsewhere the examples and questions are held against. */
    public int pins() {
        return Stream.concat(all().stream().map(Example::pins), questions.values().stream().map(CheckedQuestion::pins)).mapToInt(List::size).sum();
    }

    /** The sound examples, in the order of the lessons. */
    public List<Example> all() {
        return new ArrayList<>(examples.values());
    }
}
