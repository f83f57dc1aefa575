package loomwright.generator.page;

import java.util.List;
import loomwright.generator.content.Block;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.content.YamlReader;
import loomwright.generator.example.Example;
import loomwright.markup.Html;

/** Puts the fenced blocks of a lesson on screens. */
final class ProjectedBlocks {
    private final Site site;
    private final Place page;
    private final String lesson;
    private final ArticleWriter article;
    private final Screens screens;
    private final ProjectorWriter text;
    private final ProjectedExample examples;
    private final FigureMarkup figures;
    private final QuestionMarkup questions;
    private final TableMarkup tables;
    private final BlockWriter others;

    ProjectedBlocks(Site site, Place page, String lesson, ArticleWriter article, Screens screens, ProjectorWriter text) {
        this.page = page;
        this.lesson = lesson;
        this.site = site;
        this.article = article;
        this.screens = screens;
        this.text = text;
        this.examples = new ProjectedExample(page, article, screens);
        this.figures = new FigureMarkup(site, page, article);
        this.questions = new QuestionMarkup(site, page, article);
        this.tables = new TableMarkup(site, page);
        this.others = new BlockWriter(site, page, article);
    }

    void write(Block block) {
        switch (block.kind()) {
            case "caution", "task" -> titled(block);
            case "example" -> example(block);
            case "formula" -> screens.beside("formula", "Formula", others.write(block));
            default -> fromYaml(block);
        }
    }

    /** A caution or a task: its label and title stand above each of its screens. */
    private void titled(Block block) {
        boolean caution = block.kind().equals("caution");
        String label = "<p class=\"label\">" + (caution ? "Caution" : "Do it") + "</p>\n";
        String above = label + "<p class=\"title\">" + Html.escape(block.title()) + "</p>\n";
        screens.parts(text.parts(block.body()), block.kind(), above, (caution ? "Caution: " : "Do it: ") + block.title());
    }

    private void example(Block block) {
        Example example = site.book().at(block.info());
        if (example != null) {
            article.places().id(example.key() + "-title", block.info());
            examples.write(example);
        }
    }

    private void fromYaml(Block block) {
        YamlMap map = YamlReader.read(block.kind() + " block", block.body(), site.problems());
        if (map == null) {
            return;
        }
        switch (block.kind()) {
            case "figure" -> {
                String figure = figures.write(map, false);
                Scalar title = map.text("title");
                String name = title == null ? "" : title.text();
                screens.figure(name, "<p class=\"title\">" + Html.escape(name) + "</p>\n" + figure);
            }
            case "question" -> {
                String question = questions.projected(map);
                if (!question.isEmpty()) {
                    screens.screen("question", "Question " + questions.count(), question);
                }
            }
            case "circuit" -> circuit();
            default -> tables.screens(map).forEach(html -> screens.below("table", "Table", html));
        }
    }

    /** A sheet of a circuit is a page of its own, too much for a screen: it is opened in the lesson. */
    private void circuit() {
        screens.beside("text", "A sheet of the circuit", "<p class=\"label\">A sheet of the circuit</p>\n<p><a href=\"" + Address.from(page.address(), lesson)
                + "\">Open it in the lesson</a>, and pass it round on paper.</p>\n");
    }
}
