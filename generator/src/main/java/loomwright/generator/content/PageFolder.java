package loomwright.generator.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;

/** Reads the plain pages, {@code pages/KEY.md}. */
final class PageFolder {
    private static final String ENDING = ".md";

    /** Pages the generator makes itself. */
    private static final Set<String> TAKEN =
            Set.of("index", "lessons", "calculators", "tables", "glossary", "numbers", "search");

    private final Folder folder;
    private final Problems problems;

    PageFolder(Folder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    List<PlainPage> pages() {
        List<PlainPage> pages = new ArrayList<>();
        for (String name : folder.names("pages")) {
            SourceFile file = name.endsWith(ENDING) ? folder.read("pages/" + name) : null;
            if (file != null) {
                pages.add(page(name.substring(0, name.length() - ENDING.length()), file));
            }
        }
        return List.copyOf(pages);
    }

    private PlainPage page(String key, SourceFile file) {
        if (TAKEN.contains(key)) {
            problems.add(Problem.ofFile(file.name(), "the site has a page of this name already", "Give the file another name."));
        }
        FrontMatter front = FrontMatter.of(file, "front matter", problems);
        ArticleText text = new ArticleText(file, front.bodyStart(), problems);
        if (front.map() == null) {
            return new PlainPage(key, text.article(key + ".html", key), "");
        }
        Scalar title = front.map().required("title");
        Scalar summary = front.map().required("summary");
        front.map().finish();
        return new PlainPage(
                key,
                text.article(key + ".html", title == null ? key : title.text()),
                summary == null ? "" : summary.text());
    }
}
