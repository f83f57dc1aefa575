package loomwright.generator.content;

import java.util.Optional;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.SourceFile;
import loomwright.generator.problem.Span;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a stretch of a file as a YAML mapping and keeps the place of every key and value. */
public final class YamlReader {
    private static final LoadSettings SETTINGS = LoadSettings.builder().setBufferSize(4096).build();

    private final Span at;
    private final Problems problems;

    private YamlReader(Span at, Problems problems) {
        this.at = at;
        this.problems = problems;
    }

    /**
     * Reads a mapping.
     *
     * @param what what it is, for messages: {@code example block}
     * @param at the lines that hold it
     * @return null if it is not YAML or not a mapping; the problem is reported
     */
    public static YamlMap read(String what, Span at, Problems problems) {
        return new YamlReader(at, problems).mapping(what);
    }

    private YamlMap mapping(String what) {
        Optional<Node> node;
        try {
            node = new Compose(SETTINGS).composeString(at.text());
        } catch (MarkedYamlEngineException e) {
            problems.add(unreadable(what, e));
            return null;
        } catch (YamlEngineException e) {
            problems.add(unreadable(what, e));
            return null;
        } catch (StackOverflowError e) {
            problems.add(deepest().problem("the " + what + " is nested too deeply here", "Write it with fewer brackets, one key: text a line."));
            return null;
        }
        if (node.isEmpty() || !(node.get() instanceof MappingNode map)) {
            problems.add(at.problem("the " + what + " holds no lines such as key: text", "Write one key: text a line."));
            return null;
        }
        return new YamlMap(what, map, this, problems);
    }

    private Problem unreadable(String what, YamlEngineException e) {
        return String.valueOf(e.getMessage()).contains("aliases")
                ? at.problem("the " + what + " repeats a part by its name (* and &) too often", "Write the texts out.")
                : at.problem("the " + what + " cannot be read as YAML", "Look for a character that does not belong in text.");
    }

    /** The line with most of the signs that open something. */
    private Span deepest() {
        SourceFile file = at.file();
        Span deepest = at;
        long most = 0;
        for (int line = at.line(); line <= file.lineAt(Math.max(at.start(), at.end() - 1)); line++) {
            long signs = file.line(line).chars().filter(c -> c == '[' || c == '{' || c == '-' || c == '?').count();
            if (signs > most) {
                most = signs;
                deepest = file.lineSpan(line);
            }
        }
        return deepest;
    }

    private Problem unreadable(String what, MarkedYamlEngineException e) {
        Span place = e.getProblemMark().map(mark -> at.file().span(offset(mark), offset(mark))).orElse(at);
        String said = e.getProblem().strip();
        String remedy = said.startsWith("mapping values")
                ? "Put a text that contains a colon and a space between double quotes."
                : "Check quotes, brackets and indentation here and in the line above.";
        return place.problem("the " + what + " cannot be read as YAML: " + said, remedy);
    }

    Span span(Node node) {
        int start = node.getStartMark().map(this::offset).orElse(at.start());
        int end = node.getEndMark().map(this::offset).orElse(at.end());
        return at.file().span(start, Math.max(start, end));
    }

    /** Marks count code points from the start of the stretch. */
    private int offset(Mark mark) {
        SourceFile file = at.file();
        int lineStart = Math.max(at.start(), file.lineStart(at.line() + mark.getLine()));
        int lineEnd = file.lineStart(at.line() + mark.getLine()) + file.line(at.line() + mark.getLine()).length();
        int columns = Math.min(mark.getColumn(), file.text().codePointCount(lineStart, Math.max(lineStart, lineEnd)));
        return file.text().offsetByCodePoints(lineStart, columns);
    }
}
