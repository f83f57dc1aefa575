import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * Makes the compiled page programs start by themselves, and holds each to its budget.
 *
 * <p>Run by the build: {@code java FinishPrograms.java COMPILED_FOLDER FINISHED_FOLDER BUDGET}, the budget in units of 1000 bytes,
 * compressed. A page may hold no script of its own, so the call that starts a program has to be in its file.
 */
final class FinishPrograms {
    public static void main(String[] arguments) throws IOException {
        Path finished = Path.of(arguments[1]);
        long budget = 1000L * Integer.parseInt(arguments[2]);
        Files.createDirectories(finished);
        boolean over = false;
        for (Path file : scripts(Path.of(arguments[0]))) {
            String program = "(function(){" + Files.readString(file) + "\nmain([]);})();\n";
            int compressed = compressedSize(program.getBytes(StandardCharsets.UTF_8));
            System.out.println("[page program] " + file.getFileName() + " " + program.length() + " bytes, " + compressed
                    + " compressed; the budget is " + budget);
            over |= compressed > budget;
            Files.writeString(finished.resolve(file.getFileName()), program);
        }
        if (over) {
            System.err.println("A page program is over its budget, compressed. String.format, regular expressions and printing a double "
                    + "are the usual causes; a subject that has grown too large can be cut in two. The limit is in site/pom.xml.");
            System.exit(1);
        }
    }

    private static List<Path> scripts(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".js")).sorted().toList();
        }
    }

    private static int compressedSize(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out) {
            {
                def.setLevel(Deflater.BEST_COMPRESSION);
            }
        }) {
            gzip.write(bytes);
        }
        return out.size();
    }
}
