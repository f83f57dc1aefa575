package loomwright.generator.page;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;
import loomwright.generator.content.Content;
import loomwright.generator.content.Lesson;
import loomwright.generator.drawing.Drawings;
import loomwright.generator.problem.Problems;

/**
 * Lessons written in an earlier run of the same program. One of them is taken again if neither its own text nor anything outside it that
 * a lesson can show has changed.
 */
public final class LessonMemory {
    private final boolean keeps;
    private final Map<String, Kept> lessons = new ConcurrentHashMap<>();
    private final OtherPages others = new OtherPages();
    private Drawings drawings;
    private List<String> drawingTexts;
    private Outside outside;
    private int forgotten;

    private record Kept(String text, LessonPages.Written written) {}

    private LessonMemory(boolean keeps) {
        this.keeps = keeps;
    }

    /** For a program that builds again and again. */
    public static LessonMemory keeping() {
        return new LessonMemory(true);
    }

    /** For a program that builds once. */
    public static LessonMemory none() {
        return new LessonMemory(false);
    }

    /** Begins a run: forgets everything if anything outside the lessons has changed. */
    void begin(Site site, Templates templates, Scripts scripts) {
        if (keeps) {
            Outside now = Outside.of(site, templates, scripts);
            if (!now.equals(outside)) {
                lessons.clear();
            }
            outside = now;
        }
    }

    /** Hands on the pages beside the lessons, anew if anything that they show has changed. */
    void others(Site site, SearchData search, PageSink sink, BiConsumer<SearchData, PageSink> writing) {
        if (!keeps) {
            writing.accept(search, sink);
            return;
        }
        List<Object> shown = List.of(
                outside,
                site.reliance().state(),
                site.content().pages().stream().map(each -> each.article().file().text()).toList(),
                site.content().fronts().values().stream().map(each -> each.article().file().text()).toList(),
                site.content().terms().values().stream().map(each -> each.meaning().file().text()).distinct().toList(),
                site.content().lessons().stream().map(each -> List.of(each.goal(), each.summary(), each.number())).toList());
        int before = site.problems().count();
        others.write(shown, site, search, sink, writing);
        others.forgetIf(site.problems().count() > before);
    }

    /** The drawings, read anew if a file of theirs has changed. */
    Drawings drawings(Content content, Problems problems) {
        List<String> texts = content.drawings().entrySet().stream().map(each -> each.getKey() + each.getValue().text()).toList();
        if (!keeps || !texts.equals(drawingTexts)) {
            int before = problems.count();
            drawings = Drawings.with(content.drawings(), problems);
            drawingTexts = problems.count() > before ? null : texts;
        }
        return drawings;
    }

    /** The lesson as it was written before, or null if it must be written anew. */
    LessonPages.Written find(Lesson lesson) {
        Kept kept = lessons.get(lesson.key());
        return kept != null && kept.text().equals(lesson.article().file().text()) ? kept.written() : null;
    }

    /** Forgets one lesson, each time the next of all. */
    public void forgetOne() {
        List<String> keys = lessons.keySet().stream().sorted().toList();
        if (!keys.isEmpty()) {
            lessons.remove(keys.get(forgotten++ % keys.size()));
        }
    }

    /** Keeps a lesson, unless it has a problem: that must be reported by each run. */
    void keep(LessonPages.Written written, Problems problems) {
        Lesson lesson = written.lesson();
        if (keeps && !written.html().isEmpty() && !problems.areIn(lesson.article().file().name())) {
            lessons.put(lesson.key(), new Kept(lesson.article().file().text(), written));
        }
    }
}
