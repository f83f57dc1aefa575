package loomwright.generator.page;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loomwright.generator.content.Content;
import loomwright.generator.example.ExampleBook;
import loomwright.generator.example.ValueFinder;
import loomwright.generator.problem.Problems;
import loomwright.handout.LessonQuestions;
import loomwright.worked.Calculator;

/** Writes every page of the site. */
public final class SitePages {
    private final Site site;
    private final Frames frames;
    private final Templates templates;
    private final SearchData search = new SearchData();
    private final LessonMemory memory;
    private final List<LessonQuestions> questions;

    public SitePages(
            Content content,
            Map<String, Calculator> calculators,
            ExampleBook book,
            Path templateFolder,
            Scripts scripts,
            LessonMemory memory,
            Problems problems) {
        ValueFinder values = new ValueFinder(book, content.scenario(), problems);
        this.site = new Site(content, calculators, memory.drawings(content, problems), book, values, new Reliance(), problems);
        this.frames = new Frames(site, scripts);
        this.templates = new Templates(templateFolder, problems);
        this.memory = memory;
        this.questions = WorkshopQuestions.of(site);
        memory.begin(site, templates, scripts);
    }

    /** What the sheets of a workshop day can ask, lesson by lesson. */
    public List<LessonQuestions> questions() {
        return questions;
    }

    /** Pages that show nothing of a lesson but its name. */
    private void writeOthers(SearchData search, PageSink sink) {
        PlainPages.write(site, frames, templates, search, sink);
        CalculatorList.write(site, frames, templates, sink);
        new CalculatorPages(site, frames, templates, search).write(sink);
        new TablePages(site, frames, templates, search).write(sink);
        GlossaryPage.write(site, frames, templates, search, sink);
        CircuitPage.write(site, frames, templates, search, sink);
    }

    /** Lessons and plain pages first: what they rely on is listed on the pages after them. */
    public void write(PageSink sink) {
        site.content().pictures().values().forEach(picture -> sink.file(Address.picture(picture.name()), picture.bytes()));
        site.content().schemas().forEach((key, schema) -> sink.file(Address.schema(key), schema.text().getBytes(StandardCharsets.UTF_8)));
        new LessonPages(site, frames, templates, search, memory).write(sink);
        memory.others(site, search, sink, this::writeOthers);
        LessonList.write(site, frames, templates, sink);
        StartPage.write(site, frames, templates, sink);
        FirstJobPage.write(site, frames, templates, search, sink);
        WorkshopPage.write(site, frames, templates, search, questions, sink);
        NumbersPage.write(site, frames, templates, search, sink);
        SearchPage.write(site, frames, templates, search, sink);
    }
}
