import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** From saving a lesson in the preview to the page with the new text: words in one lesson after another, and the figures of an example. */
public class SavedToShown {
    private static final int SAVES = 20;

    public static void main(String[] arguments) throws Exception {
        Path content = Path.of(arguments[0]);
        String port = "18763";
        Process preview = new ProcessBuilder("java", "-jar", "generator/target/loomwright.jar", "show", "--content", content.toString(), "--port", port)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            BufferedReader said = new BufferedReader(new InputStreamReader(preview.getInputStream(), StandardCharsets.UTF_8));
            while (!said.readLine().startsWith("Open ")) {
                // the first build
            }
            Thread reader = new Thread(() -> skipAll(said));
            reader.setDaemon(true);
            reader.start();
            saves(content, "http://localhost:" + port + "/");
        } finally {
            preview.destroy();
        }
    }

    private static void saves(Path content, String site) throws IOException {
        List<Path> lessons;
        try (Stream<Path> folders = Files.list(content.resolve("lessons"))) {
            lessons = folders.sorted().toList();
        }
        BufferedReader events = new BufferedReader(new InputStreamReader(
                URI.create(site + ".preview/events").toURL().openStream(), StandardCharsets.UTF_8));
        List<Long> took = new ArrayList<>();
        for (int save = 0; save < SAVES; save++) {
            Path folder = lessons.get(save % lessons.size());
            Path lesson = folder.resolve("lesson.md");
            String words = "Saved for the time of number " + save + ".";
            String text = Files.readString(lesson);
            long start = System.nanoTime();
            Files.writeString(lesson, text + "\n" + words + "\n");
            String page = site + "lessons/" + folder.getFileName() + ".html";
            do {
                while (!events.readLine().equals("event: built")) {
                    // a sign of life
                }
            } while (!read(page).contains(words));
            took.add((System.nanoTime() - start) / 1_000_000);
        }
        Collections.sort(took);
        System.out.println(SAVES + " saves in the preview: " + took.get(SAVES / 2) + " ms in the middle, " + took.get(SAVES - 1)
                + " ms at worst (at most 500)");
    }

    /** What the preview says after each build. */
    private static void skipAll(BufferedReader said) {
        try {
            while (said.readLine() != null) {
                // not looked at
            }
        } catch (IOException ended) {
            // with the preview
        }
    }

    private static String read(String page) throws IOException {
        try (var in = URI.create(page).toURL().openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
