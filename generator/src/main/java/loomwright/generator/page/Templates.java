package loomwright.generator.page;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.Mustache;
import com.github.mustachejava.MustacheException;
import com.github.mustachejava.MustacheNotFoundException;
import com.github.mustachejava.TemplateContext;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import loomwright.generator.problem.Problem;
import loomwright.generator.problem.Problems;
import loomwright.generator.problem.ShownPath;
import loomwright.generator.problem.SourceFile;

/** The page templates. A name in a template that the page does not have is a problem, never a blank. */
final class Templates {
    private static final String ENDING = ".mustache";

    private final Path folder;
    private final Problems problems;
    private final DefaultMustacheFactory factory;
    private final Map<String, Mustache> compiled = new ConcurrentHashMap<>();

    Templates(Path folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
        this.factory = new DefaultMustacheFactory(folder.toFile());
        // before the first template is compiled: compiled templates keep the handler they were made with
        factory.setObjectHandler(new StrictNames());
    }

    /** The page, or an empty text with a problem if the template has a mistake. */
    String fill(String template, Object page) {
        try {
            Mustache mustache = compiled.computeIfAbsent(template, name -> factory.compile(name + ENDING));
            StringWriter out = new StringWriter();
            mustache.execute(out, page);
            return out.toString();
        } catch (MustacheNotFoundException e) {
            problems.add(Problem.ofFile(shown(template + ENDING), "the template is missing", "Add it, or check how its name is spelt."));
        } catch (MustacheException e) {
            problems.add(problem(template, e));
        }
        return "";
    }

    /** What the template files hold, by name. */
    Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(each -> each.toString().endsWith(ENDING)).toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    private Problem problem(String template, MustacheException e) {
        Throwable cause = e;
        while (cause.getCause() instanceof MustacheException inner) {
            cause = inner;
        }
        TemplateContext context = ((MustacheException) cause).getContext();
        String name = context == null ? template + ENDING : context.file();
        String words = words(cause.getMessage());
        String remedy = words.startsWith(StrictNames.UNKNOWN) ? "See VARIABLES.md for the names of each page." : "Correct the template.";
        if (context == null) {
            return Problem.ofFile(shown(name), words, remedy);
        }
        try {
            SourceFile file = new SourceFile(shown(name), Files.readString(folder.resolve(name)));
            return file.lineSpan(Math.max(1, context.line())).problem(words, remedy);
        } catch (IOException io) {
            throw new UncheckedIOException(io);
        }
    }

    /** The message without the place, which Mustache writes at its end. */
    private static String words(String message) {
        int place = message.indexOf(" @[");
        return place < 0 ? message : message.substring(0, place);
    }

    private String shown(String name) {
        return ShownPath.of(folder.resolve(name));
    }
}
