package loomwright.generator.example;

import java.util.Map;
import loomwright.generator.content.Lists;
import loomwright.generator.content.Scalar;
import loomwright.generator.content.YamlMap;
import loomwright.generator.problem.Nearest;
import loomwright.generator.problem.Problems;
import loomwright.source.Document;
import loomwright.source.Source;

/** Reads {@code source} and {@code locus} of a block. */
final class Citations {
    private final Map<String, Document> documents;
    private final Problems problems;

    Citations(Map<String, Document> documents, Problems problems) {
        this.documents = documents;
        this.problems = problems;
    }

    /** The source, or null with a problem if it is missing or not listed. */
    Source read(YamlMap block) {
        Scalar key = block.required("source");
        Scalar locus = block.text("locus");
        Document document = key == null ? null : documents.get(key.text());
        if (key != null && document == null) {
            String nearest = Nearest.to(key.text(), documents.keySet());
            problems.add(key.problem(
                    "no source is called \"" + key.text() + "\"",
                    nearest == null ? Lists.add(key.at().file(), "sources.csv") : "Did you mean \"" + nearest + "\"?"));
        }
        return document == null ? null : Source.of(document, locus == null ? "" : locus.text());
    }
}
