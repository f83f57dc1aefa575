package loomwright.generator.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.Block;
import loomwright.generator.content.Lesson;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.content.YamlReader;
import loomwright.generator.example.Example;
import loomwright.generator.example.Trial;
import loomwright.generator.example.ValueFinder;
import loomwright.generator.markdown.PlainText;
import loomwright.generator.problem.Problems;
import loomwright.handout.LessonQuestions;
import loomwright.handout.Question;
import loomwright.handout.Scene;
import loomwright.worked.Calculator;
import loomwright.worked.Output;

/** The questions of the lessons that have a number for an answer: the computed question blocks, then the worked examples. */
final class WorkshopQuestions {
    private final Site site;
    /** Mistakes in a block are reported where the lesson is written. */
    private final Problems unheard = new Problems();
    private final Problems heard;
    private final Map<String, Scalar> keys = new HashMap<>();

    private WorkshopQuestions(Site site) {
        this.heard = site.problems();
        this.site = new Site(site.content(), site.calculators(), site.drawings(), site.book(), new ValueFinder(site.book(), site.content().scenario(), unheard), new Reliance(), unheard);
    }

    /** Every lesson, with or without such questions, in order. */
    static List<LessonQuestions> of(Site site) {
        WorkshopQuestions questions = new WorkshopQuestions(site);
        return site.content().lessons().stream().map(questions::of).toList();
    }

    private LessonQuestions of(Lesson lesson) {
        List<Question> asked = new ArrayList<>();
        List<Question> examples = new ArrayList<>();
        int prose = 0;
        ArticleWriter writer = ArticleWriter.of(site, lesson.title(), lesson.article());
        for (Block block : lesson.article().blocks()) {
            if (block.kind().equals("example")) {
                Example example = site.book().at(block.info());
                add(examples, example == null ? null : question(example, writer));
            } else if (block.kind().equals("question")) {
                YamlMap map = YamlReader.read("question block", block.body(), unheard);
                noteKey(map == null ? null : map.text("key"));
                boolean computed = map != null && map.has("calculator");
                add(asked, computed ? question(map, writer) : null);
                prose += computed ? 0 : 1;
            }
        }
        asked.addAll(examples);
        return new LessonQuestions(lesson.key(), Site.numbered(lesson), List.copyOf(asked), prose);
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
                : question(example.key(), example.title(), writer.write(example.story()), example.calculator(), example.given(), example.keep(), output);
    }

    private Question question(YamlMap map, ArticleWriter writer) {
        Scalar key = map.text("key");
        Scalar ask = map.text("ask");
        Scalar result = map.text("result");
        Trial trial = Trial.of(map, site.calculators(), unheard);
        Output output = trial == null || result == null ? null : trial.output(result, unheard);
        if (key == null || ask == null || output == null) {
            return null;
        }
        return question(key.text(), "", writer.write(ask), trial.calculator(), trial.given(), trial.keep(), output);
    }

    /** A story that links to a source tells what the source says, which other numbers would make untrue. */
    private static Question question(
            String key, String title, String story, Calculator calculator, Map<String, String> given, List<String> keep, Output output) {
        String scene = story.contains("numbers.html#") ? "" : Scene.of(PlainText.of(story), calculator, given);
        String name = Scene.of(title, calculator, given);
        return new Question(key, name.isEmpty() ? calculator.description().title() : name, scene, calculator, given, keep, output);
    }
}
