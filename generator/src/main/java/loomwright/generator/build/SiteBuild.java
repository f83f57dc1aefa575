package loomwright.generator.build;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loomwright.generator.check.CheckMemory;
import loomwright.generator.check.SiteCheck;
import loomwright.generator.content.Content;
import loomwright.generator.content.ContentReader;
import loomwright.generator.example.Example;
import loomwright.generator.example.ExampleBook;
import loomwright.generator.offline.OfflineFiles;
import loomwright.generator.page.LessonMemory;
import loomwright.generator.page.PageSink;
import loomwright.generator.page.Scripts;
import loomwright.generator.page.SitePages;
import loomwright.generator.problem.Places;
import loomwright.generator.problem.Problems;
import loomwright.handout.LessonQuestions;
import loomwright.worked.Calculator;

/** Reads the content, writes every page, checks every page. */
public final class SiteBuild {
    private final Path content;
    private final Parts parts;
    private final Map<String, Calculator> calculators = new LinkedHashMap<>();
    private Path club;
    private LessonMemory lessons = LessonMemory.none();
    private CheckMemory checks = CheckMemory.none();
    private boolean keptOffline = true;

    public SiteBuild(Path content, Parts parts, List<Calculator> calculators) {
        this.content = content;
        this.parts = parts;
        for (Calculator calculator : calculators) {
            this.calculators.put(calculator.description().key(), calculator);
        }
    }

    /** Adds the folder of a club; null for none. */
    public SiteBuild withClub(Path folder) {
        club = folder;
        return this;
    }

    /**
     * Keeps lessons and checks from one run to the next, for a program that builds again and again. No browser is to keep such a site, so
     * it has no service worker.
     */
    public SiteBuild again() {
        keptOffline = false;
        lessons = LessonMemory.keeping();
        checks = CheckMemory.keeping();
        return this;
    }

    /** Lets the next run write one lesson anew that it could have kept. */
    public void forgetALesson() {
        lessons.forgetOne();
    }

    /** Runs once. Files go to {@code output} even if there are problems; it is for the caller to throw them away. */
    public Outcome run(Output output) {
        Problems problems = new Problems();
        Content read = ContentReader.read(content, club, problems);
        ExampleBook book = ExampleBook.of(read, calculators, problems);
        String worker = keptOffline ? parts.worker() : null;
        Checked checked = new Checked(output, new SiteCheck(problems, checks), worker == null ? null : new OfflineFiles());
        parts.files().forEach(checked::file);
        Scripts scripts = new Scripts(parts.scripts());
        SitePages pages = new SitePages(read, calculators, book, parts.templates(), scripts, lessons, problems);
        pages.write(checked);
        if (worker != null) {
            OfflineFiles.fixed().forEach(checked::file);
            checked.file(OfflineFiles.WORKER, checked.kept.worker(worker));
        }
        checked.check.finish(address -> problems.areIn(read.fileOf(address)));
        return new Outcome(problems, checked.pages, read.lessons().size(), book.all(), book.pins(), pages.questions(), read.house(), read.owner());
    }

    /**
     * What came of a run.
     *
     * @param problems every problem of the run
     * @param pages how many pages were written
     * @param lessons how many lessons there are
     * @param examples the worked examples
     * @param pins how many figures from elsewhere their results were held against
     * @param questions what the sheets of a workshop day can ask, lesson by lesson
     * @param house whose sheets they are
     * @param owner whose copy it is: the club, or an empty text
     */
    public record Outcome(
            Problems problems, int pages, int lessons, List<Example> examples, int pins, List<LessonQuestions> questions, String house, String owner) {}

    /** Checks each page on its way to the output. */
    private static final class Checked implements PageSink {
        private final Output output;
        private final SiteCheck check;
        /** The files a browser is to keep, or null if it is to keep none. */
        private final OfflineFiles kept;
        private int pages;

        Checked(Output output, SiteCheck check, OfflineFiles kept) {
            this.kept = kept;
            this.output = output;
            this.check = check;
        }

        @Override
        public void page(String address, String html, Places places) {
            if (html.isEmpty()) {
                check.missing(address);
                return;
            }
            pages++;
            check.page(address, html, places);
            put(address, html.getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public void file(String address, byte[] bytes) {
            check.file(address);
            put(address, bytes);
        }

        private void put(String address, byte[] bytes) {
            if (kept != null) {
                kept.add(address, bytes);
            }
            output.put(address, bytes);
        }
    }
}
