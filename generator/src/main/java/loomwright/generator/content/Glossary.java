package loomwright.generator.content;

import java.util.Map;
import java.util.TreeMap;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;

/** Reads {@code glossary.md}: a heading {@code ## word} for each term, its meaning below. */
final class Glossary {
    private static final String FILE = "glossary.md";
    private static final String HEADING = "## ";

    private final SourceFile file;
    private final Problems problems;
    private final Map<String, Term> terms = new TreeMap<>();

    private Glossary(SourceFile file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    static Map<String, Term> read(Folder folder, Problems problems) {
        SourceFile file = folder.has(FILE) ? folder.read(FILE) : null;
        if (file == null) {
            return Map.of();
        }
        Glossary glossary = new Glossary(file, problems);
        glossary.scan();
        return glossary.terms;
    }

    private void scan() {
        int heading = 0;
        int last = file.lineAt(file.text().length());
        for (int line = 1; line <= last; line++) {
            if (file.line(line).startsWith(HEADING)) {
                add(heading, line);
                heading = line;
            }
        }
        add(heading, last + 1);
    }

    /** Adds the term whose heading is on one line and whose meaning ends before another. */
    private void add(int heading, int next) {
        if (heading == 0) {
            return;
        }
        String words = file.line(heading).substring(HEADING.length()).strip();
        String key = Slug.of(words);
        Term term = new Term(key, words, file.span(file.lineStart(heading + 1), file.lineStart(next)));
        if (terms.putIfAbsent(key, term) != null) {
            problems.add(file.lineSpan(heading).problem("the term \"" + words + "\" is explained twice", "Keep one of the two."));
        } else if (term.meaning().text().isBlank()) {
            problems.add(file.lineSpan(heading).problem(
                    "the term \"" + words + "\" has no meaning below it", "Write one or two plain sentences."));
        }
    }
}
