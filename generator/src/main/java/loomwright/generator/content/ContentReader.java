package loomwright.generator.content;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.source.Document;

/** Reads a content folder. What cannot be read is left out and reported. */
public final class ContentReader {
    private final Folder folder;
    private final Problems problems;

    private ContentReader(Path root, Problems problems) {
        this.folder = new Folder(root, problems);
        this.problems = problems;
    }

    public static Content read(Path root, Problems problems) {
        return new ContentReader(root, problems).content();
    }

    private Content content() {
        Map<String, Document> documents = new TableFolder(folder, problems).documents();
        Map<String, TableFile> tables = new TableFolder(folder, problems).tables(documents);
        PageFolder pages = new PageFolder(folder, problems).read();
        return new Content(
                folder.name(),
                documents,
                tables,
                Glossary.read(folder, problems),
                scenario(),
                new CircuitFolder(folder, problems).circuits(),
                lessons(),
                pages.pages(),
                pages.fronts(),
                pages.settings());
    }

    private List<Lesson> lessons() {
        LessonFolder lessonFolder = new LessonFolder(folder, problems);
        List<Lesson> lessons = new ArrayList<>();
        for (String key : folder.names("lessons")) {
            Lesson lesson = lessonFolder.lesson(key);
            if (lesson != null) {
                lessons.add(lesson);
            }
        }
        lessonFolder.checkNeeds(lessons);
        return List.copyOf(lessons);
    }

    private YamlMap yaml(String path, String what) {
        SourceFile file = folder.has(path) ? folder.read(path) : null;
        return file == null ? null : YamlReader.read(what, file.span(0, file.text().length()), problems);
    }

    private Map<String, Fact> scenario() {
        Map<String, Fact> facts = new LinkedHashMap<>();
        YamlMap map = yaml("scenario.yaml", "scenario");
        for (String key : map == null ? List.<String>of() : map.names()) {
            YamlMap fact = map.map(key);
            if (fact != null) {
                Scalar value = fact.required("value");
                Scalar says = fact.required("says");
                fact.finish();
                facts.put(key, new Fact(value == null ? "" : value.text(), says == null ? "" : says.text()));
            }
        }
        return facts;
    }
}
