import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The yardstick: the Markdown library alone, parsing and rendering the same lessons and writing one page for each. */
public class BareMarkdown {
    public static void main(String[] arguments) throws IOException {
        Parser parser = Parser.builder().extensions(List.of(TablesExtension.create())).build();
        HtmlRenderer renderer = HtmlRenderer.builder().extensions(List.of(TablesExtension.create())).build();
        Path out = Path.of(arguments[0]);
        List<Path> lessons = new ArrayList<>();
        for (int i = 1; i < arguments.length; i++) {
            try (Stream<Path> folders = Files.list(Path.of(arguments[i], "lessons"))) {
                folders.map(each -> each.resolve("lesson.md")).filter(Files::exists).forEach(lessons::add);
            }
        }
        for (Path lesson : lessons) {
            String html = renderer.render(parser.parse(Files.readString(lesson)));
            Files.writeString(out.resolve(lesson.getParent().getFileName() + ".html"), html);
        }
        System.out.println(lessons.size());
    }
}
