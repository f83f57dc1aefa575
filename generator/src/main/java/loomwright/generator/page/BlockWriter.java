package loomwright.generator.page;

import java.util.List;
import loomwright.formula.Formula;
import loomwright.formula.Symbol;
import loomwright.generator.content.Block;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.Slug;
import loomwright.generator.content.YamlMap;
import loomwright.generator.content.YamlReader;
import loomwright.generator.example.Example;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.markup.Html;
import loomwright.worked.Calculator;
import loomwright.worked.NamedFormula;

/** Writes the fenced blocks of a page. */
final class BlockWriter {
    private final Site site;
    private final ArticleWriter article;
    private final Problems problems;
    private final ExampleMarkup examples;
    private final FigureMarkup figures;
    private final QuestionMarkup questions;
    private final TableMarkup tables;
    private final CircuitBlockMarkup circuits;

    BlockWriter(Site site, Place page, ArticleWriter article) {
        this.site = site;
        this.article = article;
        this.problems = site.problems();
        this.examples = new ExampleMarkup(site, page, article);
        this.figures = new FigureMarkup(site, page, article);
        this.questions = new QuestionMarkup(site, page, article);
        this.tables = new TableMarkup(site, page);
        this.circuits = new CircuitBlockMarkup(site, page, article);
    }

    String write(Block block) {
        return switch (block.kind()) {
            case "caution" -> caution(block);
            case "task" -> task(block);
            case "example" -> example(block);
            default -> fromYaml(block);
        };
    }

    private String fromYaml(Block block) {
        YamlMap map = YamlReader.read(block.kind() + " block", block.body(), problems);
        if (map == null) {
            return "";
        }
        return switch (block.kind()) {
            case "figure" -> figures.write(map);
            case "formula" -> formula(map);
            case "question" -> questions.write(map);
            case "circuit" -> circuits.write(map);
            default -> tables.block(map);
        };
    }

    private String example(Block block) {
        Example example = site.book().at(block.info());
        return example == null ? "" : examples.write(example, block.info());
    }

    private String caution(Block block) {
        String id = article.unique("caution-" + Slug.of(title(block)));
        return "<div class=\"caution\" role=\"note\" aria-labelledby=\"" + id + "-title\">\n<p class=\"label\">Caution</p>\n"
                + "<p class=\"title\" id=\"" + id + "-title\">" + Html.escape(block.title()) + "</p>\n"
                + article.write(block.body()).html() + "</div>\n";
    }

    private String task(Block block) {
        String id = article.unique("task-" + Slug.of(title(block)));
        article.places().id(id + "-title", block.info());
        return "<section class=\"task\" id=\"" + id + "\" aria-labelledby=\"" + id + "-title\">\n<p class=\"label\">Do it</p>\n"
                + "<h3 class=\"title\" id=\"" + id + "-title\">" + Html.escape(block.title()) + "</h3>\n"
                + article.write(block.body()).html() + "</section>\n";
    }

    private String title(Block block) {
        if (block.title().isEmpty()) {
            problems.add(block.info().problem(
                    "the " + block.kind() + " has no title", "Write it as the first line of the block: title: ..."));
        }
        return block.title();
    }

    private String formula(YamlMap map) {
        Scalar key = map.required("key");
        map.finish();
        NamedFormula named = key == null ? null : find(key);
        if (named == null) {
            return "";
        }
        Formula formula = named.formula();
        String id = article.unique("formula-" + Slug.of(key.text()));
        StringBuilder out = new StringBuilder("<div class=\"formula\" id=\"" + id + "\">\n<p class=\"label\">Formula</p>\n");
        out.append("<div class=\"line\" role=\"group\" aria-label=\"Formula: ");
        out.append(Html.escape(formula.spoken())).append("\">").append(formula.symbolicMathMl()).append("</div>\n");
        out.append("<dl class=\"letters\">\n");
        for (Symbol symbol : formula.symbols()) {
            out.append("<div><dt>").append(symbol.mathMl()).append("</dt><dd>");
            out.append(Html.escape(symbol.meaning())).append("</dd></div>\n");
        }
        return out.append("</dl>\n</div>\n").toString();
    }

    private NamedFormula find(Scalar key) {
        int slash = key.text().indexOf('/');
        String owner = slash < 0 ? key.text() : key.text().substring(0, slash);
        Calculator calculator = site.calculators().get(owner);
        if (calculator == null) {
            problems.add(key.problem(
                    "no calculator is called \"" + owner + "\"", Nearest.remedy(owner, site.calculators().keySet())));
            return null;
        }
        String name = slash < 0 ? "" : key.text().substring(slash + 1);
        NamedFormula formula = calculator.description().formula(name);
        if (formula == null) {
            List<String> names = calculator.description().formulas().stream().map(NamedFormula::key).toList();
            problems.add(key.problem(
                    "the calculator \"" + owner + "\" has no formula \"" + name + "\"", Nearest.remedy(name, names)));
        }
        return formula;
    }
}
