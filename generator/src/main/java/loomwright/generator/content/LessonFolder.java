package loomwright.generator.content;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;

/** Reads {@code lessons/KEY/lesson.md}. */
final class LessonFolder {
    private final Folder folder;
    private final Problems problems;

    LessonFolder(Folder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /** Every lesson that can be read, in the order of the folder names. */
    List<Lesson> all() {
        return folder.keys("lessons", "").parallelStream().map(this::lesson).filter(Objects::nonNull).toList();
    }

    /** The lesson, or null if it cannot be read. */
    private Lesson lesson(String key) {
        SourceFile file = folder.read("lessons/" + key + "/lesson.md");
        folder.names("lessons/" + key).stream().filter(each -> !each.equals("lesson.md")).forEach(each -> folder.stray("lessons/" + key + "/" + each, "lesson.md alone"));
        if (file == null) {
            return null;
        }
        FrontMatter front = FrontMatter.of(file, "front matter", problems);
        ArticleText text = new ArticleText(file, front.bodyStart(), problems);
        String address = "lessons/" + key + ".html";
        if (front.map() == null) {
            return new Lesson(key, text.article(address, key), "", List.of(), 0, "", List.of());
        }
        YamlMap map = front.map();
        String title = text(map.required("title"));
        Article article = text.article(address, title);
        List<Scalar> card = new CardReader(problems).read(map);
        Lesson lesson = new Lesson(
                key,
                article,
                text(map.required("goal")),
                card,
                Words.of(article) + card.stream().mapToInt(line -> Words.in(line.text())).sum(),
                text(map.required("summary")),
                map.texts("needs"));
        map.finish();
        return lesson;
    }

    /** A lesson may need only lessons that come before it. */
    void checkNeeds(List<Lesson> lessons) {
        List<String> keys = lessons.stream().map(Lesson::key).toList();
        Set<String> before = new HashSet<>();
        for (Lesson lesson : lessons) {
            for (Scalar need : lesson.needs()) {
                if (!keys.contains(need.text())) {
                    problems.add(need.problem("no lesson is called \"" + need.text() + "\"", Nearest.remedy(need.text(), keys)));
                } else if (!before.contains(need.text())) {
                    problems.add(need.problem(
                            "the lesson \"" + need.text() + "\" does not come before this one", "Name an earlier lesson."));
                }
            }
            before.add(lesson.key());
        }
    }

    private static String text(Scalar scalar) {
        return scalar == null ? "" : scalar.text();
    }
}
