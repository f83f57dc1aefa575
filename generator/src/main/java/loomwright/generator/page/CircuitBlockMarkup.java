package loomwright.generator.page;

import java.util.List;
import loomwright.circuit.Circuit;
import loomwright.circuit.Part;
import loomwright.circuit.check.Examination;
import loomwright.circuit.page.LessonSheet;
import loomwright.circuit.page.Sheet;
import loomwright.circuit.sheet.Designations;
import loomwright.circuit.sheet.Extent;
import loomwright.generator.content.CircuitText;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.markup.Html;
import loomwright.markup.Links;

/** Writes circuit blocks: one sheet of a circuit of the content folder, folded away until the reader opens it. */
final class CircuitBlockMarkup {
    private final Site site;
    private final Place page;
    private final ArticleWriter article;
    private final Problems problems;

    CircuitBlockMarkup(Site site, Place page, ArticleWriter article) {
        this.site = site;
        this.page = page;
        this.article = article;
        this.problems = site.problems();
    }

    String write(YamlMap map) {
        Scalar key = map.required("key");
        Scalar name = map.required("circuit");
        Scalar show = map.required("show");
        Scalar branch = map.text("branch");
        map.finish();
        if (key == null || name == null || show == null) {
            return "";
        }
        article.places().id(key.text(), key.at());
        CircuitText text = circuit(name);
        Sheet sheet = sheet(show);
        // A circuit with a mistake has been reported with its file.
        if (text == null || text.examination() == null || sheet == null) {
            return "";
        }
        Extent extent = extent(text, branch);
        return extent == null ? "" : written(key.text(), text, sheet, extent, branch);
    }

    private CircuitText circuit(Scalar name) {
        CircuitText text = site.content().circuits().get(name.text());
        if (text == null) {
            problems.add(name.problem(
                    "no circuit is called \"" + name.text() + "\"", Nearest.remedy(name.text(), site.content().circuits().keySet())));
        }
        return text;
    }

    private Sheet sheet(Scalar show) {
        Sheet sheet = LessonSheet.of(show.text());
        if (sheet == null) {
            List<String> known = LessonSheet.ALL.stream().map(Sheet::key).toList();
            problems.add(show.problem("a circuit has no sheet \"" + show.text() + "\"", Nearest.remedy(show.text(), known)));
        }
        return sheet;
    }

    private Extent extent(CircuitText text, Scalar branch) {
        if (branch == null) {
            return Extent.WHOLE;
        }
        Circuit circuit = text.examination().circuit();
        if (circuit.part(branch.text()) == null) {
            List<String> known = circuit.parts().stream().map(Part::id).toList();
            problems.add(branch.problem(
                    "the circuit \"" + text.key() + "\" has no part \"" + branch.text() + "\"", Nearest.remedy(branch.text(), known)));
            return null;
        }
        return Extent.branch(circuit, branch.text());
    }

    private String written(String key, CircuitText text, Sheet sheet, Extent extent, Scalar branch) {
        Examination examination = text.examination();
        String name = examination.circuit().name().isEmpty() ? text.key() : examination.circuit().name();
        String about = branch == null ? name : name + ", branch of " + Designations.of(examination.circuit()).titled(branch.text());
        // The sheets are written for a page of their own; on a lesson each takes the key of its block into its ids, and the circuit into the
        // names of its tables, so that two sheets of a kind can be told apart.
        String markup = LessonSheet.markup(sheet, new Links(Address.root(page.address())), examination, extent)
                .replace("id=\"circuit-", "id=\"" + key + "-")
                .replace("aria-label=\"Table: ", "aria-label=\"Table: " + Html.escape(about) + ": ");
        return "<details class=\"circuit-sheet\" id=\"" + Html.escape(key) + "\">\n<summary>" + Html.escape(sheet.title() + ": " + about)
                + "</summary>\n<section class=\"sheet-body\">\n" + markup + "\n</section>\n</details>\n";
    }
}
