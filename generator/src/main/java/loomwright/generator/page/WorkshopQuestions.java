package loomwright.generator.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import loomwright.generator.content.Block;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.content.YamlReader;
import loomwright.generator.example.Example;
import loomwright.generator.example.SheetStory;
import loomwright.generator.example.Trial;
import loomwright.generator.example.ValueFinder;
import loomwright.generator.markdown.PlainText;
import loomwright.generator.problem.Problems;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Question;
import loomwright.handout.Scene;
import loomwright.worked.Calculator;
import loomwright.worked.Outcome;
import loomwright.worked.Output;
import loomwright.worked.Verdict;

/** The questions of the lessons: with numbers that vary first, the computed question blocks before the worked examples; then those that everyone gets alike. */
final class WorkshopQuestions {
    private static final List<String> ELSEWHERE =
            List.of(" the same ", " next page", "example", "lesson", "your sheet", " and the ", " that answer", "above", "compare", "table 5", "list", "quiet day", " wire 1 ");

    private final Site site;
    /** Mistakes in a block are reported where the lesson is written. */
    private final Problems unheard = new Problems();
    private final Problems heard;
    private final Map<String, Scalar> keys = new HashMap<>();
    private final List<String> day;

    private WorkshopQuestions(Site site) {
        this.heard = site.problems();
        this.day = ofTheDay(site);
        this.site = new Site(site.content(), site.calculators(), site.drawings(), site.book(), new ValueFinder(site.book(), site.content().scenario(), unheard), new Reliance(), unheard);
    }

    /** Every lesson, with or without such questions, in order. */
    static List<LessonQuestions> of(Site site) {
        WorkshopQuestions questions = new WorkshopQuestions(site);
        return site.content().lessons().stream().map(questions::of).toList();
    }

    private LessonQuestions of(Lesson lesson) {
        List<Question> varying = new ArrayList<>();
        List<Question> examples = new ArrayList<>();
        List<Question> inWords = new ArrayList<>();
        List<Question> asPrinted = new ArrayList<>();
        ArticleWriter writer = ArticleWriter.of(site, lesson.title(), lesson.article());
        for (Block block : lesson.article().blocks()) {
            if (block.kind().equals("example")) {
                Example example = site.book().at(block.info());
                Question question = example == null ? null : question(example, writer);
                // An example is worked in the lesson: with its own numbers it asks nothing.
                add(examples, question == null || !question.varies() ? null : question);
            } else if (block.kind().equals("question")) {
                YamlMap map = YamlReader.read("question block", block.body(), unheard);
                noteKey(map == null ? null : map.text("key"));
                Question question = map == null ? null : map.has("calculator") ? question(map, writer) : inWords(map, writer);
                add(question == null || question.varies() ? varying : question.isInWords() ? inWords : asPrinted, question);
            }
        }
        varying.addAll(examples);
        Stream.concat(inWords.stream(), asPrinted.stream()).filter(question -> standsAlone(question.words())).forEach(varying::add);
        return new LessonQuestions(lesson.key(), Site.numbered(lesson), day.contains(lesson.key()), List.copyOf(varying));
    }

    private Question inWords(YamlMap map, ArticleWriter writer) {
        Scalar key = map.text("key");
        Scalar ask = map.text("ask");
        Scalar answer = map.text("answer");
        return key == null || ask == null || answer == null
                ? null
                : Question.inWords(key.text(), "In your own words", PlainText.of(writer.write(ask)), PlainText.of(writer.write(answer)));
    }

    /** What a question points to must be on the sheet. */
    private static boolean standsAlone(String words) {
        String small = ' ' + words.toLowerCase(Locale.ROOT) + ' ';
        return ELSEWHERE.stream().noneMatch(small::contains);
    }

    /** The lessons of the path called {@code workshop-day}. */
    private static List<String> ofTheDay(Site site) {
        List<String> keys = new ArrayList<>();
        if (site.content().fronts().get("lessons") != null) {
            site.content().fronts().get("lessons").paths().stream()
                    .filter(path -> path.key().equals("workshop-day"))
                    .forEach(path -> path.lessons().forEach(lesson -> keys.add(lesson.text())));
        }
        return keys;
    }

    /** A key that two files give to a question would lead to one of the two. In one file the check of the page says so. */
    private void noteKey(Scalar key) {
        Scalar earlier = key == null ? null : keys.putIfAbsent(key.text(), key);
        if (earlier != null && earlier.at().file() != key.at().file()) {
            heard.add(key.problem(
                    "the key \"" + key.text() + "\" is taken by the question in " + earlier.at().file().name() + ":" + earlier.at().line(),
                    "Choose another key."));
        }
    }

    private static void add(List<Question> questions, Question question) {
        if (question != null) {
            questions.add(question);
        }
    }

    private Question question(Example example, ArticleWriter writer) {
        Output output = example.calculator().description().output(example.check());
        return output == null
                ? null
                : question(example.key(), example.title(), writer.write(example.story()), example.calculator(), example.given(), example.keep(), example.sheet(), output, "");
    }

    private Question question(YamlMap map, ArticleWriter writer) {
        Scalar key = map.text("key");
        Scalar ask = map.text("ask");
        Scalar result = map.text("result");
        Scalar because = map.text("because");
        Trial trial = Trial.of(map, site.calculators(), unheard);
        Output output = trial == null || result == null ? null : trial.output(result, unheard);
        if (key == null || ask == null || output == null) {
            return null;
        }
        return question(
                key.text(), "", writer.write(ask), trial.calculator(), trial.given(), trial.keep(), SheetStory.of(map, trial, unheard), output,
                because == null ? "" : PlainText.of(writer.write(because)));
    }

    /**
     * A story that links to a source tells what the source says, which other numbers would make untrue; one that ends in a stop is about the stop.
     * Both keep their numbers.
     */
    private static Question question(
            String key, String title, String story, Calculator calculator, Map<String, String> given, List<String> keep, SheetStory sheet, Output output,
            String because) {
        String scene = sheet.story();
        if (scene.isEmpty() && !story.contains("numbers.html#")) {
            scene = Scene.of(PlainText.of(story), calculator, given);
        }
        boolean varies = !scene.isEmpty() && Outcome.of(calculator, given).working().findings().stream().noneMatch(finding -> finding.verdict() == Verdict.STOP);
        List<Output> asked = sheet.boxes().isEmpty() ? List.of(output) : sheet.boxes();
        String name = varies ? Scene.of(title, calculator, given) : title;
        return new Question(
                key, name.isEmpty() ? asked.get(0).label() : name, varies ? scene : PlainText.of(story), varies, calculator, given, keep, asked,
                varies ? told(because, calculator, given) : because);
    }

    /** What a lesson says of an answer may hold for its own numbers alone. */
    private static String told(String because, Calculator calculator, Map<String, String> given) {
        String scene = because.isEmpty() ? "" : Scene.of(because, calculator, given);
        return because.isEmpty() || !scene.isEmpty() ? scene : "With the numbers of the lesson: " + because.replace('{', '(').replace('}', ')');
    }
}
