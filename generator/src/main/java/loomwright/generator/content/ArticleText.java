package loomwright.generator.content;

import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;

/** The Markdown of a file, below its front matter. */
record ArticleText(SourceFile file, int bodyStart, Problems problems) {

    Article article(String address, String title) {
        Span body = file.span(bodyStart, file.text().length());
        Fences.Found found = Fences.of(body, problems);
        return new Article(address, title, file, file.span(bodyStart, found.end()), found.blocks());
    }
}
