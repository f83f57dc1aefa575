package loomwright.generator.content;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.TreeMap;
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

    /** Our folder with that of a club after it; {@code club} may be null. */
    public static Content read(Path root, Path club, Problems problems) {
        Content ours = read(root, problems);
        return club == null ? ours : new ClubFolder(club, problems).joinedTo(ours);
    }

    /** The files of drawings alone, of our folder and of that of a club; {@code club} may be null. */
    public static Map<String, SourceFile> drawings(Path root, Path club, Problems problems) {
        Map<String, SourceFile> files = new TreeMap<>(DrawingFolder.read(new Folder(root, problems), problems));
        if (club != null) {
            files.putAll(DrawingFolder.read(new Folder(club, problems), problems));
        }
        return files;
    }

    /** Circuits are worked out in full, so they are begun first, beside everything else. */
    private Content content() {
        ForkJoinTask<Map<String, CircuitText>> circuits =
                ForkJoinPool.commonPool().submit(() -> new CircuitFolder(folder, problems).circuits());
        Map<String, Document> documents = new TableFolder(folder, problems).documents();
        Map<String, TableFile> tables = new TableFolder(folder, problems).tables(documents);
        LessonFolder lessonFolder = new LessonFolder(folder, problems);
        List<Lesson> lessons = lessonFolder.all();
        lessonFolder.checkNeeds(lessons);
        PageFolder pages = new PageFolder(folder, problems).read();
        return new Content(
                folder.name(),
                documents,
                tables,
                Glossary.read(folder, problems),
                Scenario.read(folder, Map.of(), "", problems),
                circuits.join(),
                DrawingFolder.read(folder, problems),
                schemas(),
                new PictureFolder(folder, problems).pictures(),
                lessons,
                pages.pages(),
                pages.fronts(),
                pages.settings(),
                null);
    }

    private Map<String, SourceFile> schemas() {
        Map<String, SourceFile> schemas = new TreeMap<>();
        for (String key : folder.keys("", Content.SCHEMA)) {
            SourceFile schema = folder.read(key + Content.SCHEMA);
            if (schema != null) {
                schemas.put(key, schema);
            }
        }
        return schemas;
    }
}
